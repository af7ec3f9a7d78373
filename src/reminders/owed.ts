import type { DueLine } from '../logbook.ts';
import { curesByClock } from '../planning/curesByClock.ts';

/**
 * Those of the overdue lines that ask for something, as the number on the icon counts them: not what has cured by the
 * clock, nor the checks of a bike put away.
 * @example owedOf([]) //=> []
 */
export function owedOf(overdue: readonly DueLine[]): DueLine[] {
  return overdue.filter(({ is, kind, away }) => (is === 'wait' ? !curesByClock(kind) : !away));
}
