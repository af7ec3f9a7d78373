import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  engagementForAreaMm,
  engagementForFullStrengthMm,
  engagementVerdict,
  strippingFactor,
  strippingLoadN,
} from '../../../../src/mechanics/screws/engagement.ts';
import { ultimateLoadN } from '../../../../src/mechanics/screws/preloadUse.ts';
import { stressAreaMm2 } from '../../../../src/mechanics/screws/threadGeometry.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

const size = (diameterMm: number, pitchMm: number) => ({ diameterMm, pitchMm, form: 'iso' }) as const;
const m5 = size(5, 0.8);

test('examples', () => {
  expect(strippingFactor(m5, { screwMPa: 800, femaleMPa: 250 })).toBeCloseTo(2.268, 3);
  expect(engagementForFullStrengthMm(m5)).toBeCloseTo(4.03, 2);
  expect(engagementForAreaMm(64.516, 0.435048 * 25.4)).toBeCloseTo(0.2927 * 25.4, 2);
  expect(strippingLoadN(m5, 8, 250)).toBeCloseTo(15861, -1);
  expect(engagementVerdict(8, 5, 2)).toBe('short');
});

// Regression rows: 0.80 to 0.82 diameters for equal strength.
test.each([
  [5, 0.8, 4.04],
  [6, 1, 4.78],
  [8, 1.25, 6.48],
  [10, 1.5, 8.18],
])('M%d × %d breaks before it strips from %d mm', (d, pitch, mm) => {
  expect(Math.abs(engagementForFullStrengthMm(size(d, pitch)) - mm)).toBeLessThan(0.02);
});

describe('the female material', () => {
  test('a stronger female thread than the screw asks for no less', () => {
    expect(engagementForFullStrengthMm(m5, { screwMPa: 800, femaleMPa: 2000 })).toBe(
      engagementForFullStrengthMm(m5),
    );
  });
  test('8.8 in soft aluminium wants about the two diameters of the shop rule', () => {
    const diameters = engagementForFullStrengthMm(m5, { screwMPa: 800, femaleMPa: 250 }) / 5;
    expect(diameters).toBeGreaterThan(1.6);
    expect(diameters).toBeLessThan(2.1);
  });
  test('at that depth the thread holds at least what breaks the screw', () => {
    fc.assert(
      fc.property(fc.double({ min: 100, max: 800, noNaN: true }), (femaleMPa) => {
        const depth = engagementForFullStrengthMm(m5, { screwMPa: 800, femaleMPa });
        expect(strippingLoadN(m5, depth, femaleMPa)).toBeGreaterThan(ultimateLoadN(stressAreaMm2(m5), 800));
      }),
    );
  });
  test('a weaker material never wants less depth', () => {
    fc.assert(
      fc.property(fc.double({ min: 100, max: 800, noNaN: true }), (femaleMPa) => {
        const at = (mpa: number) => engagementForFullStrengthMm(m5, { screwMPa: 800, femaleMPa: mpa });
        expect(at(femaleMPa)).toBeGreaterThanOrEqual(at(femaleMPa + 10));
      }),
    );
  });
});

test.each([
  [10, 'enough'],
  [12, 'enough'],
  [9.9, 'short'],
  [6.7, 'short'],
  [6.6, 'too-short'],
  [0, 'too-short'],
] as const)('%d mm of M5 where two diameters are asked for: %s', (mm, verdict) => {
  expect(engagementVerdict(mm, 5, 2)).toBe(verdict);
});

refusesBadNumbers({ screwMPa: 'positive', femaleMPa: 'positive' }, (name, value) =>
  engagementForFullStrengthMm(m5, { screwMPa: 800, femaleMPa: 250, [name]: value }),
);
refusesBadNumbers({ engagedMm: 'positive' }, (_, value) => strippingLoadN(m5, value, 250));
refusesBadNumbers({ areaMm2: 'positive', pitchDiameter: 'positive' }, (name, value) =>
  name === 'areaMm2' ? engagementForAreaMm(value, 11) : engagementForAreaMm(64, value),
);
refusesBadNumbers(
  { engagedMm: 'or-zero', diameterMm: 'positive', ruleDiameters: 'positive' },
  (name, value) => {
    const args = { engagedMm: 8, diameterMm: 5, ruleDiameters: 2, [name]: value };
    return engagementVerdict(args.engagedMm, args.diameterMm, args.ruleDiameters);
  },
);
