import './UndoBar.css';
import { useEffect, useRef, useState } from 'preact/hooks';
import { Button } from './Button.tsx';

export interface UndoBarProps {
  /** What was just written: "5 N·m applied". A new text starts the span anew. */
  text: string;
  onUndo: () => void;
  /** The span is over. */
  onGone: () => void;
  /** How long it stays, ms. */
  spanMs?: number;
  /** How much of it is over when the bar appears: it goes along from screen to screen and keeps its time. */
  agoMs?: number;
}

/** Ten seconds to take the last entry back. The clock stops while the button has the focus, so no reader is hurried. */
export function UndoBar({ text, onUndo, onGone, spanMs = 10_000, agoMs = 0 }: UndoBarProps) {
  const [leftMs, setLeftMs] = useState(spanMs - agoMs);
  // A live region is read out when its text changes, so it starts empty.
  const [told, setTold] = useState('');
  const paused = useRef(false);
  const begun = useRef(spanMs - agoMs);
  const gone = useRef(onGone);
  gone.current = onGone;

  useEffect(() => {
    let left = begun.current;
    let seen = performance.now();
    setLeftMs(left);
    setTold(text);
    const beat = setInterval(() => {
      const now = performance.now();
      if (!paused.current) left -= now - seen;
      seen = now;
      setLeftMs(Math.max(0, left));
      if (left > 0) return;
      clearInterval(beat);
      gone.current();
    }, 100);
    return () => clearInterval(beat);
    // Another text is another entry and gets its own ten seconds.
  }, [text, spanMs]);

  const seconds = Math.ceil(leftMs / 1000);
  return (
    <div
      class="undo"
      style={{ '--left': String(leftMs / spanMs) }}
      onFocusIn={() => {
        paused.current = true;
      }}
      onFocusOut={() => {
        paused.current = false;
      }}
    >
      <span role="status">{told}</span>
      <Button size="greasy" icon="undo" onPress={onUndo}>
        Undo <span aria-hidden="true">{seconds} s</span>
      </Button>
      <span class="undo-run" aria-hidden="true" />
    </div>
  );
}
