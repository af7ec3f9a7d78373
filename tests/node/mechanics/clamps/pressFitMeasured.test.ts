import { describe, expect, test } from 'vitest';
import { exactly } from '../../../../src/mechanics/band.ts';
import {
  BOND_SHARE,
  bondAreaMm2,
  bondedForceN,
  bondedTorqueNm,
  pressedAndBonded,
} from '../../../../src/mechanics/clamps/pressFitBonded.ts';
import {
  effectiveInterferenceMm,
  interferenceVerdict,
  measuredInterferenceMm,
} from '../../../../src/mechanics/clamps/pressFitMeasured.ts';
import { interferenceAtMm, slideTogetherK } from '../../../../src/mechanics/clamps/pressFitThermal.ts';

describe('examples of the docstrings', () => {
  test('measured interference', () => {
    const { lo, mid, hi } = measuredInterferenceMm(36.97, 37, 0.01);
    expect(lo).toBeCloseTo(0.01, 12);
    expect(mid).toBeCloseTo(0.03, 12);
    expect(hi).toBeCloseTo(0.05, 12);
  });
  test('a caliper cannot tell', () =>
    expect(interferenceVerdict({ lo: -0.01, mid: 0.02, hi: 0.05 })).toBe('cannot-tell'));
  test('roughness', () => expect(effectiveInterferenceMm(0.04, 6.3, 6.3)).toBeCloseTo(0.02992, 12));
  test('cooling', () => expect(slideTogetherK(0.03, 0.03, 23e-6, 37)).toBeCloseTo(70.5, 1));
  test('a cold night', () =>
    expect(interferenceAtMm(0.03, { inner: 23e-6, outer: 11.7e-6 }, 37, -20)).toBeCloseTo(0.0216, 4));
  test('bond area', () => expect(bondAreaMm2(12.7, 11.1)).toBeCloseTo(442.9, 1));
  test('bonded force', () => expect(bondedForceN(25, 37, 8).mid).toBeCloseTo(9299.1, 1));
  test('bonded torque', () => expect(bondedTorqueNm(25, 37, 8).mid).toBeCloseTo(172.03, 2));
  test('both', () =>
    expect(pressedAndBonded({ lo: 1, mid: 2, hi: 3 }, exactly(1))).toEqual({ lo: 2, mid: 3, hi: 4 }));
});

describe('verdicts', () => {
  test('clear of zero', () =>
    expect(interferenceVerdict(measuredInterferenceMm(36.9, 37, 0.03))).toBe('holds-by-press'));
  test('play', () => expect(interferenceVerdict(measuredInterferenceMm(37.1, 37, 0.03))).toBe('slips-in'));
  test('exactly nothing left is not a press fit', () =>
    expect(interferenceVerdict(exactly(0))).toBe('slips-in'));
});

// Regression: 0.06 mm at 37 mm, computed from the definition of expansion with coefficients from memory.
test.each([
  [11.7e-6, 139],
  [23e-6, 71],
])('0.03 + 0.03 mm at 37 mm with %s /K: %s K (computed)', (expansionPerK, kelvin) =>
  expect(Math.abs(slideTogetherK(0.03, 0.03, expansionPerK, 37) - kelvin)).toBeLessThanOrEqual(0.5),
);

test('an aluminium cup in steel gains 0.42 µm per kelvin at 37 mm (computed)', () =>
  expect(interferenceAtMm(0, { inner: 23e-6, outer: 11.7e-6 }, 37, 1) * 1000).toBeCloseTo(0.418, 3));

test('torque is force at the radius', () => {
  const force = bondedForceN(25, 37, 8);
  const torque = bondedTorqueNm(25, 37, 8);
  for (const side of ['lo', 'mid', 'hi'] as const)
    expect(torque[side]).toBeCloseTo((force[side] * 37) / 2000, 9);
  expect(force.lo / force.hi).toBeCloseTo(BOND_SHARE.lo / BOND_SHARE.hi, 12);
});

test.each([
  () => measuredInterferenceMm(0, 37, 0.02),
  () => measuredInterferenceMm(37, 37, -0.02),
  () => effectiveInterferenceMm(0.03, -1, 3),
  () => slideTogetherK(0.03, 0.03, 0, 37),
  () => slideTogetherK(-0.03, 0.03, 1e-5, 37),
  () => interferenceAtMm(Number.NaN, { inner: 1e-5, outer: 1e-5 }, 37, 1),
  () => bondedForceN(0, 37, 8),
  () => bondAreaMm2(37, 0),
])('programmer error %#', (call) => expect(call).toThrow(RangeError));
