import { expect, test } from 'vitest';
import { type JointToBuild, stepsFor } from '../../../src/planning/stepOrder.ts';

const joint = (jointId: string, order: number, more: Partial<JointToBuild> = {}): JointToBuild => ({
  ...{
    jointId,
    name: jointId,
    order,
    way: 'fit',
    partNames: ['A', 'B'],
    between: [],
    locker: false,
    torqued: true,
  },
  ...more,
});

test('no joints, no steps: the example of its description', () => expect(stepsFor([])).toEqual([]));

test('bearings come before what hangs on them, and equal orders keep their place', () => {
  const steps = stepsFor([joint('bar', 170), joint('headset', 60), joint('second bar', 170)]);
  expect(steps.map(({ jointId, kind }) => `${jointId} ${kind}`)).toEqual([
    'headset fit',
    'headset torque',
    'bar fit',
    'bar torque',
    'second bar fit',
    'second bar torque',
  ]);
});

test('threadlocker goes on before the torque', () => {
  const steps = stepsFor([joint('rotor', 30, { locker: true })]);
  expect(steps.map(({ kind }) => kind)).toEqual(['fit', 'lock', 'torque']);
});

test('a tyre is seated, a race is pressed, and neither wants a wrench of itself', () => {
  const steps = stepsFor([
    joint('tyre', 20, { way: 'seat', torqued: false }),
    joint('race', 50, { way: 'press', torqued: false }),
  ]);
  expect(steps.map(({ kind }) => kind)).toEqual(['seat', 'press']);
});

test('the step says what comes together and what goes between', () => {
  expect(stepsFor([joint('stem', 82, { between: ['shim', 'grease'] })])[0]?.detail).toBe(
    'A + B; between: shim, grease',
  );
});
