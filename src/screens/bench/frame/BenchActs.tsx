import './acts.css';
import type { ComponentChildren } from 'preact';
import type { SaveState } from '../../door.tsx';
import { SaveLine } from './SaveLine.tsx';

export interface ActsProps {
  save: SaveState;
  /** The one thing to do, over the whole width. */
  main: ComponentChildren;
  /** Up to two more, side by side below it. */
  children?: ComponentChildren;
}

/** What the thumb does on a screen that is no step of the list: the main action, and what else there is. */
export function BenchActs({ save, main, children }: ActsProps) {
  return (
    <div class="acts">
      <SaveLine save={save} />
      {main}
      {children && <div class="acts-more acts-two">{children}</div>}
    </div>
  );
}
