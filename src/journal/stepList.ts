import type { StepRow } from './rows.ts';

/**
 * The steps of a bike as they stand in its list: in order, without those that were dropped.
 * @example stepList([{ stepId: 's2', rank: 2, … }, { stepId: 's1', rank: 1, … }]).map(({ stepId }) => stepId) //=> ['s1', 's2']
 */
export function stepList(steps: readonly StepRow[]): StepRow[] {
  return steps.filter(({ state }) => state !== 'dropped').sort((a, b) => a.rank - b.rank);
}
