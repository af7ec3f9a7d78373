import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactly } from '../../../../src/mechanics/band.ts';
import {
  contactPressureMpa,
  holdingTorqueNm,
  innerHoopMpa,
  outerHoopMpa,
  type PressJoint,
  pressFit,
  pressForceN,
} from '../../../../src/mechanics/clamps/pressFit.ts';
import { elasticMaterials } from '../../../../src/standards/interfaces/elasticMaterials.ts';

const steel = { modulusGpa: 200, poisson: 0.3 };
const textbookJoint: PressJoint = {
  interfaceMm: 50,
  innerBoreMm: 0,
  outerMm: 80,
  lengthMm: 40,
  inner: steel,
  outer: steel,
};
const sleeve: PressJoint = {
  interfaceMm: 37,
  innerBoreMm: 30,
  outerMm: 41,
  lengthMm: 8,
  inner: elasticMaterials.aluminium,
  outer: elasticMaterials.steel,
};

describe('examples of the docstrings', () => {
  test('pressure', () => expect(contactPressureMpa(textbookJoint, 0.04)).toBeCloseTo(48.75, 9));
  test('force', () => expect(pressForceN(textbookJoint, 48.75, 0.15)).toBeCloseTo(45945.8, 0));
  test('torque', () => expect(holdingTorqueNm(textbookJoint, 48.75, 0.15)).toBeCloseTo(1148.6, 1));
  test('hoop outside', () => expect(outerHoopMpa(textbookJoint, 48.75)).toBeCloseTo(111.25, 9));
  test('hoop inside', () => expect(innerHoopMpa(textbookJoint, 48.75)).toBe(-48.75));
});

// Regression: aluminium sleeve in a thin steel shell, computed here, no outside witness.
describe('aluminium sleeve 37/30 × 8 in a steel shell of 41, 0.03 interference (computed)', () => {
  const pressure = contactPressureMpa(sleeve, 0.03);
  test.each([
    ['pressure', () => pressure, 7.14, 0.01],
    ['force', () => pressForceN(sleeve, pressure, 0.12), 797, 1],
    ['torque', () => holdingTorqueNm(sleeve, pressure, 0.12), 14.7, 0.1],
    ['shell hoop', () => outerHoopMpa(sleeve, pressure), 69.8, 0.1],
    ['sleeve hoop', () => innerHoopMpa(sleeve, pressure), -41.7, 0.1],
  ])('%s', (_, ours, expected, tolerance) =>
    expect(Math.abs(ours() - expected)).toBeLessThanOrEqual(tolerance),
  );
});

describe('bands', () => {
  const result = pressFit(sleeve, { lo: -0.01, mid: 0.03, hi: 0.05 }, { lo: 0.08, mid: 0.12, hi: 0.15 });
  test('play presses on nothing', () => {
    expect(result.pressureMpa.lo).toBe(0);
    expect(result.torqueNm.lo).toBe(0);
  });
  test('the middle is the single computation', () => {
    expect(result.pressureMpa.mid).toBe(contactPressureMpa(sleeve, 0.03));
    expect(result.innerHoopMpa.mid).toBeCloseTo(41.7, 1);
  });
  test('the working carries the pressure', () => expect(result.working.result).toEqual(result.pressureMpa));
});

const anyJoint = fc
  .record({
    innerBoreMm: fc.double({ min: 0, max: 30, noNaN: true }),
    wall: fc.double({ min: 0.5, max: 20, noNaN: true }),
    shell: fc.double({ min: 0.5, max: 20, noNaN: true }),
    lengthMm: fc.double({ min: 1, max: 80, noNaN: true }),
    inner: fc.constantFrom(...Object.values(elasticMaterials)),
    outer: fc.constantFrom(...Object.values(elasticMaterials)),
  })
  .map(({ innerBoreMm, wall, shell, ...rest }) => ({
    ...rest,
    innerBoreMm,
    interfaceMm: innerBoreMm + 2 * wall,
    outerMm: innerBoreMm + 2 * wall + 2 * shell,
  }));

describe('properties', () => {
  test('one material, solid shaft: Poisson cancels (identity of the formula)', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.5, noNaN: true }), (poisson) => {
        const same = { modulusGpa: 200, poisson };
        const pressure = contactPressureMpa({ ...textbookJoint, inner: same, outer: same }, 0.04);
        expect(pressure).toBeCloseTo(((200000 * 0.04) / (2 * 50)) * (1 - (50 / 80) ** 2), 9);
      }),
    );
  });
  test('pressure grows in step with the interference and never below zero', () => {
    fc.assert(
      fc.property(anyJoint, fc.double({ min: 0.001, max: 0.2, noNaN: true }), (joint, interferenceMm) => {
        const once = contactPressureMpa(joint, interferenceMm);
        expect(once).toBeGreaterThan(0);
        expect(contactPressureMpa(joint, 2 * interferenceMm) / once).toBeCloseTo(2, 9);
        expect(contactPressureMpa(joint, -interferenceMm)).toBe(0);
      }),
    );
  });
  test('equilibrium: hoop tension of a shell carries the pressure across its diameter (thin-wall limit)', () => {
    const thin: PressJoint = { ...textbookJoint, outerMm: 50.02 };
    const pressure = contactPressureMpa(thin, 0.01);
    expect(outerHoopMpa(thin, pressure) / ((pressure * 50) / (2 * 0.01))).toBeCloseTo(1, 2);
  });
  test('a solid shaft is pressed evenly throughout', () =>
    expect(innerHoopMpa(textbookJoint, 48.75)).toBe(-48.75));
});

test.each<[string, Partial<PressJoint>]>([
  ['the sleeve is bored away', { innerBoreMm: 50 }],
  ['the shell is bored away', { outerMm: 50 }],
  ['no length', { lengthMm: 0 }],
  ['no stiffness', { inner: { modulusGpa: 0, poisson: 0.3 } }],
  ['no such Poisson ratio', { outer: { modulusGpa: 200, poisson: 0.6 } }],
])('programmer error: %s', (_, change) =>
  expect(() => pressFit({ ...textbookJoint, ...change }, exactly(0.04), exactly(0.15))).toThrow(RangeError),
);
