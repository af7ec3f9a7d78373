import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { spokeStretchMm } from '../../../../src/mechanics/wheels/spokeLengthCorrections.ts';
import {
  NIPPLE_PITCH_MM,
  tensionPerTurnN,
  windupDeg,
} from '../../../../src/mechanics/wheels/spokeTensionNipple.ts';

// [computed] regression rows.
test.each([
  [2, 290, 948],
  [2, 184, 1495],
  [1.8, 290, 768],
])('a turn on a %s mm spoke of %s mm adds at most %s N', (diameterMm, lengthMm, newtons) =>
  expect(tensionPerTurnN([{ lengthMm, diameterMm }])).toBeCloseTo(newtons, 0),
);

test.each([
  [2, 290, 25, 40],
  [1.8, 290, 38, 61],
  [1.5, 290, 79, 126],
  [2, 184, 16, 25],
])('at 1000 N a %s mm spoke of %s mm winds up %s to %s° (estimate)', (diameterMm, lengthMm, lo, hi) => {
  const windup = windupDeg(1000, lengthMm, diameterMm);
  expect(Math.round(windup.lo)).toBe(lo);
  expect(Math.round(windup.hi)).toBe(hi);
});

describe('properties', () => {
  const mm = fc.double({ min: 1.4, max: 2.6, noNaN: true });
  const lengthMm = fc.double({ min: 100, max: 310, noNaN: true });
  test('tension of a tenth of a turn stretches the spoke by a tenth of the pitch', () => {
    fc.assert(
      fc.property(mm, lengthMm, (diameterMm, long) => {
        const spoke = [{ lengthMm: long, diameterMm }];
        const tenthN = Math.min(3000, tensionPerTurnN(spoke) / 10);
        expect(spokeStretchMm(tenthN, spoke)).toBeCloseTo(NIPPLE_PITCH_MM / 10, 9);
      }),
    );
  });
  test('a thinner spoke winds up further, and friction only adds', () => {
    fc.assert(
      fc.property(mm, lengthMm, (diameterMm, long) => {
        const windup = windupDeg(1000, long, diameterMm);
        expect(windupDeg(1000, long, diameterMm - 0.1).lo).toBeGreaterThan(windup.lo);
        expect(windup.hi).toBeGreaterThan(windup.lo);
      }),
    );
  });
});

test.each([
  ['no tension', () => windupDeg(Number.NaN, 290, 2)],
  ['a spoke of no thickness', () => windupDeg(1000, 290, 0)],
  ['a nipple without thread', () => tensionPerTurnN([{ lengthMm: 290, diameterMm: 2 }], 0)],
])('%s is refused', (_, call) => expect(call).toThrow(RangeError));
