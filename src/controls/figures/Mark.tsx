import './Mark.css';
import { Icon, type IconName } from '../Icon.tsx';

/** What the grease pencil says about a line of the card. */
export type MarkState = 'open' | 'due' | 'waits' | 'held' | 'noted' | 'done' | 'void';

const marks: Record<MarkState, { icon: IconName; word: string }> = {
  open: { icon: 'ring', word: 'Not done' },
  due: { icon: 'bell', word: 'Due' },
  waits: { icon: 'hourglass', word: 'Waits' },
  held: { icon: 'stop', word: 'Held' },
  noted: { icon: 'note', word: 'Noted' },
  done: { icon: 'check', word: 'Done' },
  void: { icon: 'cross', word: 'Void' },
};

export interface MarkProps {
  state: MarkState;
  /** A closer word than the usual one: "Done 14:02", "Due Saturday". */
  word?: string | undefined;
}

/** A state as drawing and word. What is open, due or held is set larger and heavier than what is done. */
export function Mark({ state, word }: MarkProps) {
  const mark = marks[state];
  return (
    <span class={`mark mark-${state}`}>
      <Icon name={mark.icon} sizePx={20} />
      {word ?? mark.word}
    </span>
  );
}

/** The waxy stroke beside a line; it repeats what the word says, so it is not spoken. */
export function Stroke({ state }: { state: MarkState }) {
  return <span class={`stroke stroke-${state}`} aria-hidden="true" />;
}
