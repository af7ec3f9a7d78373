import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  estimatedNutFactor,
  frictionFromNutFactor,
  nutFactorFromFriction,
} from '../../../../src/mechanics/screws/frictionNutFactor.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

const m5 = { diameterMm: 5, pitchMm: 0.8, form: 'iso' } as const;
const jointOf = (
  friction: number,
  thread = m5 as { diameterMm: number; pitchMm: number; form: 'iso' },
  dkm = 7,
) => ({
  thread,
  threadFriction: friction,
  bearingFriction: friction,
  bearingDiameterMm: dkm,
});

test('examples: friction 0.15 on M5 is K 0.208, K 0.2 is friction 0.144', () => {
  expect(nutFactorFromFriction(jointOf(0.15))).toBeCloseTo(0.208, 3);
  expect(frictionFromNutFactor(0.2, m5, 7)).toBeCloseTo(0.1435, 3);
  expect(estimatedNutFactor(0.15)).toBeCloseTo(0.2035, 9);
});

test('the two are inverse to each other', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 0.6, noNaN: true }), (friction) => {
      expect(frictionFromNutFactor(nutFactorFromFriction(jointOf(friction)), m5, 7)).toBeCloseTo(friction, 9);
    }),
  );
});

// Regression of our own fit, M6 to M10 coarse socket heads.
test.each([
  [6, 1, 8.3],
  [8, 1.25, 11],
  [10, 1.5, 13.5],
])('the rule of thumb is within 3 %% on M%d × %d', (diameterMm, pitchMm, dkm) => {
  for (const friction of [0.08, 0.12, 0.16, 0.2]) {
    const exact = nutFactorFromFriction(jointOf(friction, { diameterMm, pitchMm, form: 'iso' }, dkm));
    expect(Math.abs(estimatedNutFactor(friction) / exact - 1)).toBeLessThan(0.03);
  }
});

test('a nut factor below that of a frictionless screw is refused', () => {
  expect(() => frictionFromNutFactor(0.01, m5, 7)).toThrow(/frictionless/);
});
refusesBadNumbers({ nutFactor: 'positive', bearingDiameterMm: 'positive' }, (name, value) =>
  name === 'nutFactor' ? frictionFromNutFactor(value, m5, 7) : frictionFromNutFactor(0.2, m5, value),
);
refusesBadNumbers({ friction: 'positive' }, (_, value) => estimatedNutFactor(value));
