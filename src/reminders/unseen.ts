import type { DueLine } from '../logbook.ts';

/**
 * What was told and nobody has seen yet, with what fell due anew before it: a later word must not push out an earlier one.
 * @param unseen told before
 * @param anew fell due just now
 * @example withAnew([], []) //=> []
 */
export function withAnew(unseen: readonly DueLine[], anew: readonly DueLine[]): DueLine[] {
  const again = new Set(anew.map(({ key }) => key));
  return [...anew, ...unseen.filter(({ key }) => !again.has(key))];
}

/**
 * What was told and still is due: what has been settled in the meantime needs nobody's eye.
 * @param unseen told and not seen
 * @param overdue all that is due now
 * @example stillDue([], []) //=> []
 */
export function stillDue(unseen: readonly DueLine[], overdue: readonly DueLine[]): DueLine[] {
  const due = new Set(overdue.map(({ key }) => key));
  return unseen.filter(({ key }) => due.has(key));
}
