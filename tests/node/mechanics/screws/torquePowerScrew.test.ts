import { expect, test } from 'vitest';
import { preloadLongFormN } from '../../../../src/mechanics/screws/torqueLongForm.ts';
import {
  powerScrewNutFactor,
  powerScrewTorqueNm,
} from '../../../../src/mechanics/screws/torquePowerScrew.ts';
import { convert, torqueFromNm } from '../../../../src/mechanics/units.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

const threeQuarter = {
  diameterMm: 19.05,
  meanDiameterMm: 0.7093 * 25.4,
  pitchMm: 25.4 / 16,
  threadFriction: 0.15,
  collarFriction: 0.15,
};

test('Mechanical Engineering Design, example 8-3 (from memory): ¾-16 at 25 000 lbf and friction 0.15 wants 3551 in·lbf, K 0.1894', () => {
  expect(powerScrewNutFactor(threeQuarter)).toBeCloseTo(0.1894, 4);
  const nm = powerScrewTorqueNm(convert(25000, '[lbf_av]', 'N'), threeQuarter);
  expect(Math.abs(torqueFromNm(nm, '[in_i].[lbf_av]') - 3551)).toBeLessThan(1);
});

test('the short-cut of the long form differs from it by less than 2 % on a small screw', () => {
  const thread = { diameterMm: 5, pitchMm: 0.8, form: 'iso' } as const;
  const screw = {
    diameterMm: 5,
    meanDiameterMm: 4.48,
    pitchMm: 0.8,
    threadFriction: 0.14,
    collarFriction: 0.14,
  };
  const joint = { thread, threadFriction: 0.14, bearingFriction: 0.14, bearingDiameterMm: 1.25 * 5 };
  expect(Math.abs(preloadLongFormN(powerScrewTorqueNm(5000, screw), joint) / 5000 - 1)).toBeLessThan(0.02);
});

test('a thread so rough that it cannot be turned is refused', () => {
  expect(() => powerScrewNutFactor({ ...threeQuarter, pitchMm: 40, threadFriction: 1.5 })).toThrow(/locks/);
});
refusesBadNumbers(
  {
    diameterMm: 'positive',
    meanDiameterMm: 'positive',
    pitchMm: 'positive',
    threadFriction: 'or-zero',
    collarFriction: 'or-zero',
  },
  (name, value) => powerScrewNutFactor({ ...threeQuarter, [name]: value }),
);
refusesBadNumbers({ preloadN: 'positive' }, (_, value) => powerScrewTorqueNm(value, threeQuarter));
