import type { DueLine } from '../logbook.ts';

/**
 * What was announced and not seen yet, with what fell due since before it: a later line must not replace an
 * earlier one.
 * @param unseen told before
 * @param anew fell due just now
 * @example withAnew([], []) //=> []
 */
export function withAnew(unseen: readonly DueLine[], anew: readonly DueLine[]): DueLine[] {
  const again = new Set(anew.map(({ key }) => key));
  return [...anew, ...unseen.filter(({ key }) => !again.has(key))];
}

/**
 * What was announced and is still due; what was settled in the meantime is left out.
 * @param unseen told and not seen
 * @param overdue all that is due now
 * @example stillDue([], []) //=> []
 */
export function stillDue(unseen: readonly DueLine[], overdue: readonly DueLine[]): DueLine[] {
  const due = new Set(overdue.map(({ key }) => key));
  return unseen.filter(({ key }) => due.has(key));
}
