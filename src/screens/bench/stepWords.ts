import type { IconName } from '../../controls/Icon.tsx';
import type { StepKind } from '../../journal/entries.ts';
import type { StepState } from '../../journal/rows.ts';

export interface StepWords {
  icon: IconName;
  /** What the work is called in a list. */
  work: string;
  /** The order given before the title at the bench. */
  order: string;
}

const stepWordsOf: Record<StepKind, StepWords> = {
  fit: { icon: 'part', work: 'Fit', order: 'Fit' },
  torque: { icon: 'spanner', work: 'Torque', order: 'Tighten' },
  press: { icon: 'press', work: 'Press', order: 'Press in' },
  lock: { icon: 'drop', work: 'Threadlocker', order: 'Threadlocker' },
  seat: { icon: 'tyre', work: 'Seat the tyre', order: 'Seat' },
  measure: { icon: 'ruler', work: 'Measure', order: 'Measure' },
  cut: { icon: 'saw', work: 'Cut or file', order: 'Cut' },
  adjust: { icon: 'settings', work: 'Adjust', order: 'Adjust' },
  check: { icon: 'lookup', work: 'Check', order: 'Check' },
};

/** Every kind of step, in the order they are offered. */
export const stepKinds = Object.keys(stepWordsOf) as StepKind[];

/** Drawing and words for a kind of step. @example stepWords('torque').order //=> 'Tighten' */
export function stepWords(kind: StepKind): StepWords {
  return stepWordsOf[kind];
}

/** The grease-pencil mark for the state of a step. A skipped step stays as loud as an open one. */
export const stepMark: Record<StepState, { state: 'open' | 'held' | 'done' | 'void'; word: string }> = {
  open: { state: 'open', word: 'Not done' },
  skipped: { state: 'held', word: 'Skipped' },
  done: { state: 'done', word: 'Done' },
  dropped: { state: 'void', word: 'Dropped' },
};
