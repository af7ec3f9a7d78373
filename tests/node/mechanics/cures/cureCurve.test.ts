import { describe, expect, test } from 'vitest';
import { breakawayOnThreadNm, coldFactor, hoursToReach } from '../../../../src/mechanics/cures/cureCurve.ts';
import { gapFactor, rideTimeHours, temperatureFactor } from '../../../../src/mechanics/cures/cureFactors.ts';
import { cureGrid } from '../../../../src/standards/screws/cureGrid.ts';

const twoPoints = {
  atHours: [1, 3],
  percent: [
    [50, 50],
    [75, 75],
  ],
} as const;

describe('examples of the docstrings', () => {
  test('75 % after 3 h', () => expect(hoursToReach(twoPoints, 75)).toEqual({ lo: 3, mid: 3, hi: 3 }));
  test('rideable after 3 h', () => expect(rideTimeHours(twoPoints)).toBe(3));
  test('10 °C colder, twice as long', () => expect(coldFactor(12)).toBeCloseTo(2, 12));
  test('M4 2 N·m, M8 12 N·m', () => expect(breakawayOnThreadNm(2, 4, 8)).toBeCloseTo(12, 9));
  test('no slow-down at 22 °C', () =>
    expect(temperatureFactor(cureGrid, 22)).toEqual({ lo: 1, mid: 1, hi: 1 }));
  test('no slow-down in a tight gap', () => expect(gapFactor(cureGrid, 0.05)).toBe(1));
});

describe('reading a curve', () => {
  test('between two columns on a log scale of time', () =>
    expect(hoursToReach(twoPoints, 62.5)?.mid).toBeCloseTo(Math.sqrt(3), 12));
  test('nothing sooner than the first column', () => expect(hoursToReach(twoPoints, 10)?.lo).toBe(1));
  test('a level that is not reached', () => expect(hoursToReach(twoPoints, 76)).toBeNull());
  test('two reports span a band', () => {
    const reach = hoursToReach(cureGrid.surfaces.stainless.curve, 75);
    expect(reach?.lo).toBeLessThan(24);
    expect(reach?.hi).toBeGreaterThan(24);
  });
  test.each([0, -1, 101, Number.NaN])('%s %% is a programmer error', (percent) =>
    expect(() => hoursToReach(twoPoints, percent)).toThrow(RangeError),
  );
  test('a curve that never reaches riding strength cannot be a factor', () =>
    expect(() => rideTimeHours({ atHours: [1], percent: [[50, 50]] })).toThrow(RangeError));
});

// Regression rows: 24 h at 20 °C, carried to other temperatures by the rule of thumb; computed here, no outside witness.
test.each([
  [10, 48],
  [5, 67.9],
  [30, 12],
])('rule of thumb, 24 h at 20 °C is about %s °C → %s h', (temperatureC, hours) =>
  expect((24 * coldFactor(temperatureC)) / coldFactor(20)).toBeCloseTo(hours, 1),
);

// Regression rows from breakaway 26 N·m on M10, computed here.
test.each([
  [5, 4.3],
  [6, 6.9],
  [8, 14.6],
])('26 N·m on M10 scales to M%s: %s N·m', (threadMm, breakawayNm) =>
  expect(breakawayOnThreadNm(26, 10, threadMm)).toBeCloseTo(breakawayNm, 1),
);

test('the gap factor stops growing where the grid ends', () => {
  expect(gapFactor(cureGrid, 0.15)).toBeGreaterThan(gapFactor(cureGrid, 0.1));
  expect(gapFactor(cureGrid, 0.3)).toBe(gapFactor(cureGrid, 0.25));
});
test('a thread of no size is a programmer error', () =>
  expect(() => breakawayOnThreadNm(2, 4, 0)).toThrow(RangeError));
