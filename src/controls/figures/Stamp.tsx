import './Stamp.css';
import { Icon, type IconName } from '../Icon.tsx';

/** The rubber stamps on the bench. */
export type StampKind = 'build' | 'released' | 'held' | 'applied' | 'void';

const stamps: Record<StampKind, { icon: IconName; word: string }> = {
  build: { icon: 'spanner', word: 'In build' },
  released: { icon: 'check', word: 'Released' },
  held: { icon: 'stop', word: 'Held' },
  applied: { icon: 'spanner', word: 'Applied' },
  void: { icon: 'cross', word: 'Void' },
};

export interface StampProps {
  kind: StampKind;
  /** Another word than the stamp's own. */
  word?: string;
  /** The date line, or how much was applied. */
  line?: string | undefined;
}

/** A rubber stamp: slightly turned, double edge, ink not quite even. */
export function Stamp({ kind, word, line }: StampProps) {
  const stamp = stamps[kind];
  return (
    <div class={`stamp stamp-${kind}`}>
      <span class="stamp-word">
        <Icon name={stamp.icon} sizePx={30} />
        {word ?? stamp.word}
      </span>
      {line && <span class="stamp-line">{line}</span>}
    </div>
  );
}
