import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  looseningRatio,
  looseningTorqueNm,
  meanBearingDiameterMm,
  torqueLongForm,
} from '../../../../src/mechanics/screws/torqueLongForm.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

const m5 = { diameterMm: 5, pitchMm: 0.8, form: 'iso' } as const;
const joint = { thread: m5, threadFriction: 0.14, bearingFriction: 0.14, bearingDiameterMm: 7 };

test('the printed coefficients of the VDI 2230 form: 0.159·P, 0.577·d2·µt, 0.5·Dkm·µb', () => {
  const { pitchNm, threadNm, bearingNm } = torqueLongForm(1000, joint);
  expect(pitchNm).toBeCloseTo(0.159 * 0.8, 3);
  expect(threadNm).toBeCloseTo(0.577 * 4.48 * 0.14, 3);
  expect(bearingNm).toBeCloseTo(0.5 * 7 * 0.14, 9);
});

// Regression rows, computed for this project: loosening over tightening with coarse socket heads.
describe('loosening ratio (regression)', () => {
  test.each([
    ['M5', 5, 0.8, 7, [0.65, 0.7, 0.74, 0.77, 0.81]],
    ['M6', 6, 1, 8.3, [0.63, 0.69, 0.72, 0.75, 0.8]],
    ['M8', 8, 1.25, 11, [0.65, 0.7, 0.74, 0.77, 0.81]],
    ['M10', 10, 1.5, 13.5, [0.66, 0.71, 0.75, 0.78, 0.82]],
  ])('%s', (_, diameterMm, pitchMm, bearingDiameterMm, ratios) => {
    [0.1, 0.12, 0.14, 0.16, 0.2].forEach((friction, at) => {
      const ratio = looseningRatio({
        thread: { diameterMm, pitchMm, form: 'iso' },
        threadFriction: friction,
        bearingFriction: friction,
        bearingDiameterMm,
      });
      expect(Math.abs(ratio - ratios[at]!)).toBeLessThan(0.01);
    });
  });
});

const friction = fc.double({ min: 0, max: 0.6, noNaN: true });
describe('properties', () => {
  test('a frictionless screw unwinds by itself', () => {
    const oiled = { ...joint, threadFriction: 0, bearingFriction: 0 };
    expect(looseningTorqueNm(5000, oiled)).toBeCloseTo(-torqueLongForm(5000, oiled).totalNm, 12);
  });
  test('more friction wants more torque', () => {
    fc.assert(
      fc.property(friction, (µ) => {
        const rougher = { ...joint, threadFriction: µ + 0.01, bearingFriction: µ };
        const smoother = { ...joint, threadFriction: µ, bearingFriction: µ };
        expect(torqueLongForm(1000, rougher).totalNm).toBeGreaterThan(torqueLongForm(1000, smoother).totalNm);
      }),
    );
  });
});

refusesBadNumbers(
  { threadFriction: 'or-zero', bearingFriction: 'or-zero', bearingDiameterMm: 'positive' },
  (name, value) => torqueLongForm(5000, { ...joint, [name]: value }),
);
refusesBadNumbers({ preloadN: 'positive' }, (_, value) => torqueLongForm(value, joint));
test('a head smaller than its hole is refused', () => {
  expect(() => meanBearingDiameterMm(5, 5.5)).toThrow(RangeError);
});
