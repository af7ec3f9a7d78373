import { expect, test } from 'vitest';
import type { StepRow } from '../../../../src/journal/rows.ts';
import { orderedJoints } from '../../../../src/planning/orderedJoints.ts';
import { movePlaces } from '../../../../src/practice/bench/movePlaces.ts';

const step = (stepId: string, jointId: string, kind: StepRow['kind'], state: StepRow['state'] = 'open') =>
  ({ stepId, jointId, kind, title: stepId, state }) as StepRow;
const joint = (jointId: string, kind: 'headset' | 'fork' | 'seatpost') =>
  ({ jointId, kind, partIds: [], between: [], state: 'open' }) as const;
const joints = orderedJoints(
  [joint('h', 'headset'), joint('f', 'fork'), joint('p', 'seatpost')].map((one) => ({
    ...one,
    partIds: [],
    between: [],
  })),
  [],
);

test('the example of the description', () => expect(movePlaces([], 's1', new Map())).toEqual([]));

test('[B5] every place is offered but those that the order forbids, with the reason', () => {
  const steps = [step('cups', 'h', 'press'), step('post', 'p', 'fit'), step('fork', 'f', 'fit')];
  expect(movePlaces(steps, 'cups', joints)).toEqual([
    { afterStepId: null, here: true },
    { afterStepId: 'post' },
    { afterStepId: 'fork', refused: '“fork” comes after “cups”. The cups go into an empty head tube.' },
  ]);
  expect(movePlaces(steps, 'post', joints).map(({ refused }) => refused)).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
});

test('[B5] behind what is done every place is free', () => {
  const steps = [step('cups', 'h', 'press'), step('fork', 'f', 'fit', 'done')];
  expect(movePlaces(steps, 'cups', joints)[1]).toEqual({ afterStepId: 'fork' });
});
