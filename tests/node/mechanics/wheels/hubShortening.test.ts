import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  dishlessCut,
  type HubSeat,
  shortenHub,
  splitCut,
} from '../../../../src/mechanics/wheels/hubShortening.ts';

const wide: HubSeat = {
  overLocknutMm: 135,
  chainlineMm: 30,
  rotorGapMm: 15.3,
  leftFlangeMm: 34,
  driveFlangeMm: 20,
};

// [computed] regression rows: 135 to 120 mm. The starting chainline and rotor gap are from memory.
test.each([
  [0, 15, 37.5, 15.3, 26.5, 27.5],
  [7.5, 7.5, 30, 7.8, 34, 20],
  [15, 0, 22.5, 0.3, 41.5, 12.5],
  [0.5, 14.5, 37, 14.8, 27, 27],
])('%s mm off the left, %s off the drive end', (leftMm, driveMm, chainline, gap, left, drive) => {
  const hub = shortenHub(wide, { leftMm, driveMm });
  expect(hub.overLocknutMm).toBe(120);
  expect(hub.chainlineMm).toBeCloseTo(chainline, 9);
  expect(hub.rotorGapMm).toBeCloseTo(gap, 9);
  expect(hub.leftFlangeMm).toBeCloseTo(left, 9);
  expect(hub.driveFlangeMm).toBeCloseTo(drive, 9);
});

test('the split without dish of 15 mm is 0.5 and 14.5', () =>
  expect(dishlessCut(wide, 15)).toEqual({ leftMm: 0.5, driveMm: 14.5 }));
test('a split for 7 mm of shift is the same', () =>
  expect(splitCut(15, 7)).toEqual({ leftMm: 0.5, driveMm: 14.5 }));

test('the rotor meets the frame when the left end loses its gap', () => {
  expect(shortenHub(wide, { leftMm: 15, driveMm: 0 }).rotorTouches).toBe(false);
  expect(shortenHub(wide, { leftMm: 15.3, driveMm: 0 }).rotorTouches).toBe(true);
  expect(shortenHub({ ...wide, rotorGapMm: null }, { leftMm: 15, driveMm: 0 }).rotorTouches).toBeNull();
});

test('the rim goes back half the difference of the cuts', () => {
  expect(shortenHub(wide, { leftMm: 0, driveMm: 15 }).rimToDriveMm).toBe(-7.5);
  expect(shortenHub(wide, { leftMm: 5, driveMm: 5 }).rimToDriveMm).toBe(0);
});

describe('properties', () => {
  const cutMm = fc.double({ min: -10, max: 10, noNaN: true });
  /** Places along the axle seen from the left locknut: the witness knows no middle plane until the very end. */
  test('measuring from the left locknut, cutting there, and halving the rest gives the same hub', () => {
    fc.assert(
      fc.property(cutMm, cutMm, (leftMm, driveMm) => {
        const flange = { left: 135 / 2 - 34, drive: 135 / 2 + 20 };
        const sprocket = 135 / 2 + 30;
        const middle = (135 - leftMm - driveMm) / 2;
        const hub = shortenHub(wide, { leftMm, driveMm });
        expect(hub.leftFlangeMm).toBeCloseTo(middle - (flange.left - leftMm), 9);
        expect(hub.driveFlangeMm).toBeCloseTo(flange.drive - leftMm - middle, 9);
        expect(hub.chainlineMm).toBeCloseTo(sprocket - leftMm - middle, 9);
        expect(hub.leftFlangeMm + hub.driveFlangeMm).toBeCloseTo(54, 9);
      }),
    );
  });
  test('the dishless split leaves equal flanges, whatever is cut in all', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 40, noNaN: true }), (totalMm) => {
        const hub = shortenHub(wide, dishlessCut(wide, totalMm));
        expect(hub.leftFlangeMm).toBeCloseTo(hub.driveFlangeMm, 9);
        expect(hub.overLocknutMm).toBeCloseTo(135 - totalMm, 9);
      }),
    );
  });
});

test.each([
  ['a cut of no size', () => shortenHub(wide, { leftMm: Number.NaN, driveMm: 0 })],
  ['cutting the hub away', () => shortenHub(wide, { leftMm: 50, driveMm: 50 })],
  ['a flange out in the frame', () => shortenHub({ ...wide, leftFlangeMm: 500 }, { leftMm: 0, driveMm: 0 })],
])('%s is refused', (_, call) => expect(call).toThrow(RangeError));
