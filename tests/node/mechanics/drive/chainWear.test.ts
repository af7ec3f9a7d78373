import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { axleFromPitches } from '../../../../src/mechanics/drive/chainLength.ts';
import {
  axleWornMm,
  chainWearLimit,
  chainWearPercent,
  wearToReach,
  wornLengthMm,
} from '../../../../src/mechanics/drive/chainWear.ts';

const town = { ringTeeth: 36, sprocketTeeth: 15 };

test('306.324 mm over 24 pitches is half a percent', () =>
  expect(chainWearPercent(306.324, 24)).toBeCloseTo(0.5, 9));
test('one percent over 24 pitches reads 307.848 mm', () =>
  expect(wornLengthMm(24, 1)).toBeCloseTo(307.848, 9));

// [computed] regression rows: how far wear moves the axle.
test.each([
  [0.5, 1.9, 2.7],
  [0.75, 2.9, 4.1],
  [1, 3.8, 5.5],
])('%s %% of wear moves the axle %s to %s mm back', (percent, lo, hi) => {
  const worn = axleWornMm(town, 86, percent);
  const newMm = axleFromPitches(town, 86);
  expect(worn.lo - newMm).toBeCloseTo(lo, 1);
  expect(worn.hi - newMm).toBeCloseTo(hi, 1);
});

test('36 × 15, 86 pitches: a slot ending at 386 mm is used up between 0.76 and 1.10 %', () => {
  const used = wearToReach(town, 86, 386);
  expect(used.lo).toBeCloseTo(0.762, 3);
  expect(used.hi).toBeCloseTo(1.097, 3);
});
test('a place the new chain already stands beyond needs no wear', () =>
  expect(wearToReach(town, 86, 380)).toEqual({ lo: 0, mid: 0, hi: 0 }));

test.each([
  [1, 1],
  [7, 0.75],
  [11, 0.5],
])('with %s sprockets the customary limit is %s %%, and is marked as remembered', (sprockets, percent) =>
  expect(chainWearLimit(sprockets)).toEqual({ percent, known: 'memory' }),
);

describe('properties', () => {
  const drive = fc.record({
    ringTeeth: fc.integer({ min: 20, max: 60 }),
    sprocketTeeth: fc.integer({ min: 8, max: 30 }),
  });
  const pitches = fc.integer({ min: 80, max: 130 });
  const percent = fc.double({ min: 0, max: 4, noNaN: true });
  test('measuring a worn chain gives its wear back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), percent, (n, wear) => {
        expect(chainWearPercent(wornLengthMm(n, wear), n)).toBeCloseTo(wear, 8);
      }),
    );
  });
  test('wear never moves the axle forward, and more wear moves it further', () => {
    fc.assert(
      fc.property(drive, pitches, percent, (d, n, wear) => {
        const newMm = axleFromPitches(d, n);
        const worn = axleWornMm(d, n, wear);
        expect(worn.lo).toBeGreaterThanOrEqual(newMm - 1e-9);
        expect(axleWornMm(d, n, wear + 0.5).lo).toBeGreaterThan(worn.lo);
      }),
    );
  });
  test('the wear that reaches a place puts the axle there', () => {
    fc.assert(
      fc.property(drive, pitches, fc.double({ min: 0.5, max: 4, noNaN: true }), (d, n, backMm) => {
        const rearMm = axleFromPitches(d, n) + backMm;
        const used = wearToReach(d, n, rearMm);
        expect(axleWornMm(d, n, used.lo).hi).toBeCloseTo(rearMm, 5);
        expect(axleWornMm(d, n, used.hi).lo).toBeCloseTo(rearMm, 5);
      }),
    );
  });
});

test.each([
  ['half a pitch', () => chainWearPercent(306, 23.5)],
  ['a ruler read in inches', () => chainWearPercent(12.06, 24)],
  ['a chain of rubber', () => axleWornMm(town, 86, 50)],
  ['a chain that shrank', () => axleWornMm(town, 86, -1)],
  ['no wear', () => wornLengthMm(24, Number.NaN)],
  ['no sprockets', () => chainWearLimit(0)],
])('%s is refused', (_, call) => expect(call).toThrow(RangeError));
