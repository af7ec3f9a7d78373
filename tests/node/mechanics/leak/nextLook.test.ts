import { expect, test } from 'vitest';
import { leakState } from '../../../../src/mechanics/leak/leakState.ts';
import { nextLook, provableInHours } from '../../../../src/mechanics/leak/nextLook.ts';
import { holdingSet, sealingSet, steadySet } from '../../../fixtures/leaks.ts';

const lastOf = (set: typeof steadySet) => set.at(-1)!;

// Figures: the project's handbook of tyres, sections 2.5 and 2.7.
test('a steady leak after four readings: half the time to the early end of the band', () => {
  const set = steadySet.slice(0, 4);
  const look = nextLook({ judged: leakState(set), count: 4, last: lastOf(set), forecast: { from: 14.33 } });
  expect(look.inHours).toBeCloseTo(3.67, 2);
  expect(look.why).toBe('half-way');
});

test.each([
  [0.02, 57.2, 32.7],
  [0.05, 22.9, 13.1],
  [0.1, 11.4, 6.5],
  [0.2, 5.7, 3.3],
])('at %s of the pressure a day a drop from 2.5 bar shows after %s or %s h', (perDay, wide, narrow) => {
  expect(Math.abs(provableInHours(2.5, 0.05, perDay / 24) - wide)).toBeLessThan(0.06);
  expect(Math.abs(provableInHours(2.5, 0.05 / Math.sqrt(3), perDay / 24) - narrow)).toBeLessThan(0.06);
});

test.each([
  ['one reading', steadySet.slice(0, 1), 2, 'routine'],
  ['two readings', steadySet.slice(0, 2), 6, 'routine'],
  ['holding', holdingSet, 72, 'holds'],
] as const)('%s', (_, set, inHours, why) =>
  expect(nextLook({ judged: leakState(set), count: set.length, last: lastOf([...set]) })).toEqual({
    inHours,
    why,
  }),
);

test('a tyre that seals is looked at when the next drop would show, within half a day', () => {
  const look = nextLook({ judged: leakState(sealingSet), count: 7, last: lastOf(sealingSet) });
  expect(look).toEqual({ inHours: 12, why: 'settling' });
});

test('[S5] it is never later than half the time that is left, and at once when none is', () => {
  const judged = leakState(holdingSet);
  const last = lastOf(holdingSet);
  expect(nextLook({ judged, count: 5, last, forecast: { from: 68 } })).toEqual({
    inHours: 10,
    why: 'half-way',
  });
  expect(nextLook({ judged, count: 5, last, forecast: { from: 40 } })).toEqual({ inHours: 0, why: 'below' });
});
