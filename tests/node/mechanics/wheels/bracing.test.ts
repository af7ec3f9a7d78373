import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bracingAngleDeg,
  type LacedSide,
  sideTensions,
  tensionRatio,
} from '../../../../src/mechanics/wheels/bracing.ts';

const laced = (
  erdMm: number,
  pcdMm: number,
  flangeMm: number,
  spokes: number,
  crossingDeg: number,
): LacedSide => ({ erdMm, pcdMm, flangeMm, spokes, crossingDeg });

// [computed] regression rows.
test.each([
  [
    '20-inch, 34/20',
    laced(384, 45, 34, 18, 60),
    laced(384, 45, 20, 18, 60),
    10.593,
    6.278,
    0.5948,
    714,
    1200,
  ],
  [
    '20-inch, 21.5/32.5',
    laced(384, 45, 21.5, 18, 60),
    laced(384, 45, 32.5, 18, 60),
    6.745,
    10.136,
    1.4984,
    1200,
    801,
  ],
  [
    '20-inch without dish',
    laced(384, 45, 27, 18, 60),
    laced(384, 45, 27, 18, 60),
    8.448,
    8.448,
    1,
    1200,
    1200,
  ],
  [
    '29-inch rear disc',
    laced(601, 58, 35, 16, 67.5),
    laced(601, 58, 21, 16, 67.5),
    6.867,
    4.133,
    0.6028,
    723,
    1200,
  ],
  [
    '29-inch front disc',
    laced(601, 58, 24, 16, 67.5),
    laced(601, 45, 36, 16, 67.5),
    4.721,
    7.013,
    1.4837,
    1200,
    809,
  ],
  [
    '28 holes, 37/18',
    laced(595, 45, 37, 14, 360 / 7),
    laced(595, 45, 18, 14, 360 / 7),
    7.422,
    3.626,
    0.4896,
    588,
    1200,
  ],
])('%s', (_, left, drive, leftDeg, driveDeg, ratio, leftN, driveN) => {
  expect(bracingAngleDeg(left, left.crossingDeg)).toBeCloseTo(leftDeg, 3);
  expect(bracingAngleDeg(drive, drive.crossingDeg)).toBeCloseTo(driveDeg, 3);
  expect(tensionRatio(left, drive)).toBeCloseTo(ratio, 4);
  const tensions = sideTensions(1200, left, drive);
  expect(tensions.ok && Math.round(tensions.leftN)).toBe(leftN);
  expect(tensions.ok && Math.round(tensions.driveN)).toBe(driveN);
});

test('two to one: 16 spokes at 18 mm against 8 radial ones at 37 mm', () => {
  const many = laced(595, 45, 18, 16, 48.75);
  const few = laced(595, 45, 37, 8, 0);
  expect(tensionRatio(few, many)).toBeCloseTo(0.9515, 4);
});

test('the side with the target is named', () => {
  const wide = laced(384, 45, 34, 18, 60);
  const narrow = laced(384, 45, 20, 18, 60);
  expect(sideTensions(1200, wide, narrow)).toMatchObject({ tighter: 'drive' });
  expect(sideTensions(1200, narrow, wide)).toMatchObject({ tighter: 'left' });
  expect(sideTensions(1200, wide, wide)).toMatchObject({ tighter: 'even' });
});

test('a flange cut past the rim’s plane holds no rim', () =>
  expect(sideTensions(1200, laced(384, 45, 40, 18, 60), laced(384, 45, -1, 18, 60))).toEqual({
    ok: false,
    reason: 'flange-beyond-rim',
  }));

const side = fc.record({
  erdMm: fc.double({ min: 300, max: 640, noNaN: true }),
  pcdMm: fc.double({ min: 20, max: 120, noNaN: true }),
  flangeMm: fc.double({ min: 5, max: 60, noNaN: true }),
  spokes: fc.constantFrom(8, 10, 12, 14, 16, 18),
  crossingDeg: fc.double({ min: 0, max: 90, noNaN: true }),
});

describe('properties', () => {
  test('with those tensions the pulls of all spokes, as vectors, leave the rim no side force', () => {
    fc.assert(
      fc.property(side, side, (left, drive) => {
        // Both sides end in the same rim.
        const other = { ...drive, erdMm: left.erdMm };
        const answer = sideTensions(1000, left, other);
        if (!answer.ok) throw new Error(answer.reason);
        const sideForce = (laces: LacedSide, tensionN: number) => {
          let sumN = 0;
          for (let k = 0; k < laces.spokes; k++) {
            const rim = (2 * Math.PI * k) / laces.spokes;
            const hub = rim + ((k % 2 === 0 ? 1 : -1) * laces.crossingDeg * Math.PI) / 180;
            const dx = (laces.pcdMm * Math.cos(hub) - laces.erdMm * Math.cos(rim)) / 2;
            const dy = (laces.pcdMm * Math.sin(hub) - laces.erdMm * Math.sin(rim)) / 2;
            sumN += (tensionN * laces.flangeMm) / Math.hypot(dx, dy, laces.flangeMm);
          }
          return sumN;
        };
        expect(sideForce(left, answer.leftN)).toBeCloseTo(sideForce(other, answer.driveN), 6);
        expect(Math.max(answer.leftN, answer.driveN)).toBeCloseTo(1000, 9);
      }),
    );
  });
  test('swapping the sides turns the ratio over', () => {
    fc.assert(
      fc.property(side, side, (left, drive) => {
        expect(tensionRatio(left, drive) * tensionRatio(drive, left)).toBeCloseTo(1, 9);
      }),
    );
  });
  test('a flange further out leans its spokes more', () => {
    fc.assert(
      fc.property(side, (one) => {
        const further = { ...one, flangeMm: one.flangeMm + 1 };
        expect(bracingAngleDeg(further, one.crossingDeg)).toBeGreaterThan(
          bracingAngleDeg(one, one.crossingDeg),
        );
      }),
    );
  });
});

test.each([
  ['no target', () => sideTensions(Number.NaN, laced(384, 45, 34, 18, 60), laced(384, 45, 20, 18, 60))],
  ['a flange in the rim’s plane', () => tensionRatio(laced(384, 45, 0, 18, 60), laced(384, 45, 20, 18, 60))],
  ['half a spoke', () => tensionRatio(laced(384, 45, 34, 17.5, 60), laced(384, 45, 20, 18, 60))],
])('%s is refused', (_, call) => expect(call).toThrow(RangeError));
