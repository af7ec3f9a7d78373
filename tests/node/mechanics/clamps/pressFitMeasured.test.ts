import { describe, expect, test } from 'vitest';
import { exactly } from '../../../../src/mechanics/band.ts';
import {
  BOND_SHARE,
  bondAreaMm2,
  bondedForceN,
  bondedTorqueNm,
} from '../../../../src/mechanics/clamps/pressFitBonded.ts';
import {
  interferenceVerdict,
  measuredInterferenceMm,
} from '../../../../src/mechanics/clamps/pressFitMeasured.ts';
import { slideTogetherK } from '../../../../src/mechanics/clamps/pressFitThermal.ts';

describe('examples of the docstrings', () => {
  test('measured interference', () => {
    const { lo, mid, hi } = measuredInterferenceMm(36.97, 37, 0.01);
    expect(lo).toBeCloseTo(0.01, 12);
    expect(mid).toBeCloseTo(0.03, 12);
    expect(hi).toBeCloseTo(0.05, 12);
  });
  test('a caliper cannot tell', () =>
    expect(interferenceVerdict({ lo: -0.01, mid: 0.02, hi: 0.05 })).toBe('cannot-tell'));

  test('cooling', () => expect(slideTogetherK(0.03, 0.03, 23e-6, 37)).toBeCloseTo(70.5, 1));

  test('bond area', () => expect(bondAreaMm2(12.7, 11.1)).toBeCloseTo(442.9, 1));
  test('bonded force', () => expect(bondedForceN(25, 37, 8).mid).toBeCloseTo(9299.1, 1));
  test('bonded torque', () => expect(bondedTorqueNm(25, 37, 8).mid).toBeCloseTo(172.03, 2));
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

test('torque is force at the radius', () => {
  const force = bondedForceN(25, 37, 8);
  const torque = bondedTorqueNm(25, 37, 8);
  for (const side of ['lo', 'mid', 'hi'] as const)
    expect(torque[side]).toBeCloseTo((force[side] * 37) / 2000, 9);
  expect(force.lo / force.hi).toBeCloseTo(BOND_SHARE.lo / BOND_SHARE.hi, 12);
});
