import { expect, test } from 'vitest';
import type { StepRow } from '../../../src/journal/rows.ts';
import { stepList } from '../../../src/journal/stepList.ts';

const step = (stepId: string, rank: number, more: Partial<StepRow> = {}): StepRow => ({
  ...{ key: `step/${stepId}`, is: 'step', stepId, bikeId: 'b1', lastMs: 0, lastId: '' },
  ...{ kind: 'fit', title: stepId, rank, addedAtMs: 0, state: 'open' },
  ...more,
});
const idsOf = (steps: StepRow[]) => stepList(steps).map(({ stepId }) => stepId);

test('in order: the example of its description', () =>
  expect(idsOf([step('s2', 2), step('s1', 1)])).toEqual(['s1', 's2']));

test('done and skipped ones stay in it, dropped ones do not', () => {
  const dropped = step('s2', 2, { state: 'dropped' });
  const over = [step('s3', 3, { state: 'done' }), step('s1', 1, { state: 'skipped' })];
  expect(idsOf([dropped, ...over])).toEqual(['s1', 's3']);
});
