import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chainPath, closestAxleMm, FARTHEST_AXLE_MM } from '../../../../src/mechanics/drive/chainDrive.ts';

const town = { ringTeeth: 36, sprocketTeeth: 15 };

test('36 × 15: the wheels touch at 103.4 mm', () => expect(closestAxleMm(town)).toBeCloseTo(103.4, 3));

// [computed] regression rows.
test.each([
  [341, 165.74, 6.906],
  [400, 167.85, 6.994],
  [469, 169.65, 7.069],
])('at %s mm the chain wraps %s° or %s teeth of the 15', (axleMm, degrees, teeth) => {
  const path = chainPath(town, axleMm);
  expect(path.sprocketWrapDeg).toBeCloseTo(degrees, 2);
  expect(path.sprocketWrapTeeth).toBeCloseTo(teeth, 3);
});

const drive = fc.record({
  ringTeeth: fc.integer({ min: 6, max: 120 }),
  sprocketTeeth: fc.integer({ min: 6, max: 120 }),
});

describe('properties', () => {
  test('both wraps make one full turn, and no run is longer than the distance', () => {
    fc.assert(
      fc.property(drive, fc.double({ min: 0, max: 1, noNaN: true }), (d, share) => {
        const nearMm = closestAxleMm(d);
        const axleMm = nearMm + share * (FARTHEST_AXLE_MM - nearMm);
        const path = chainPath(d, axleMm);
        expect(path.ringWrapDeg + path.sprocketWrapDeg).toBeCloseTo(360, 9);
        expect(path.spanMm).toBeGreaterThan(0);
        expect(path.spanMm).toBeLessThanOrEqual(axleMm);
        for (const value of Object.values(path)) expect(Number.isFinite(value)).toBe(true);
      }),
    );
  });
  test('swapping ring and sprocket mirrors the path', () => {
    fc.assert(
      fc.property(drive, (d) => {
        const there = chainPath(d, 1500);
        const back = chainPath({ ringTeeth: d.sprocketTeeth, sprocketTeeth: d.ringTeeth }, 1500);
        expect(back.spanMm).toBeCloseTo(there.spanMm, 9);
        expect(back.ringWrapTeeth).toBeCloseTo(there.sprocketWrapTeeth, 9);
      }),
    );
  });
});

test.each([103, 2001, Number.NaN, Number.POSITIVE_INFINITY])('an axle at %s mm is refused', (axleMm) =>
  expect(() => chainPath(town, axleMm)).toThrow(RangeError),
);
