import './UndoBar.css';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { Button } from '../Button.tsx';

/** As long as the logbook grants an undo. */
export const UNDO_SHOWN_MS = 10_000;

export interface UndoBarProps {
  /** What was just written: "5 N·m applied". A new text starts the span anew. */
  text: string;
  onUndo: () => void;
  /** The bar has nothing to offer any more. */
  onGone: () => void;
  /** Where the entry can be corrected once it is too late to undo it. */
  correctHref?: string | undefined;
  /** How long undo is offered, ms. */
  spanMs?: number;
  /** How much of it is over, asked whenever the bar is drawn anew: it goes along from screen to screen and keeps its time. */
  agoMs?: () => number;
}

/**
 * Ten seconds to take the last entry back, by the clock, as the logbook counts them. The button does not
 * vanish under a finger: when the time is over it becomes a link to the correction.
 */
export function UndoBar({
  text,
  onUndo,
  onGone,
  correctHref,
  spanMs = UNDO_SHOWN_MS,
  agoMs = () => 0,
}: UndoBarProps) {
  const [leftMs, setLeftMs] = useState(() => spanMs - agoMs());
  // A live region is read out when its text changes, so it starts empty.
  const [spoken, setSpoken] = useState('');
  const [late, setLate] = useState(false);
  const bar = useRef<HTMLDivElement>(null);
  const begun = useRef(leftMs);
  const over = useRef(() => {});
  const attended = () => bar.current?.contains(document.activeElement) ?? false;
  over.current = () => {
    if (correctHref === undefined || !attended()) return onGone();
    setLate(true);
    setSpoken(`Too late to undo: ${text}`);
  };

  useEffect(() => {
    const endMs = performance.now() + begun.current;
    setSpoken(text);
    const beat = setInterval(() => {
      const left = Math.max(0, endMs - performance.now());
      setLeftMs(left);
      if (left > 0) return;
      clearInterval(beat);
      over.current();
    }, 100);
    return () => clearInterval(beat);
    // Another text is another entry and gets its own ten seconds.
  }, [text, spanMs]);

  useLayoutEffect(() => {
    // The link stands where the button stood, and takes over its focus.
    if (late) bar.current?.querySelector('a')?.focus();
  }, [late]);

  const seconds = Math.ceil(leftMs / 1000);
  return (
    <div
      class="undo"
      ref={bar}
      style={{ '--left': String(leftMs / spanMs) }}
      onFocusOut={() => {
        // Asked once the focus has arrived.
        if (late) setTimeout(() => attended() || onGone());
      }}
    >
      <span role="status">{spoken}</span>
      {late && correctHref !== undefined ? (
        <Button key="correct" size="greasy" icon="pencil" href={correctHref} onPress={onGone}>
          Correct it
        </Button>
      ) : (
        <Button key="undo" size="greasy" icon="undo" onPress={onUndo}>
          Undo <span aria-hidden="true">{seconds} s</span>
        </Button>
      )}
      <span class="undo-run" aria-hidden="true" />
    </div>
  );
}
