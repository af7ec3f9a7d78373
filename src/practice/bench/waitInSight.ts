import { overWord } from '../../words/waitWords.ts';

const DAY_MS = 86_400_000;

/**
 * Whether a timer is still shown: one that runs, one that asks for a look, and one that ended by itself within the last day.
 * After that its end is in the history.
 * @example waitInSight('cure', 0, 2 * 86_400_000) //=> false
 */
export const waitInSight = (kind: string, dueAtMs: number, nowMs: number): boolean =>
  overWord(kind) === undefined || nowMs < dueAtMs + DAY_MS;
