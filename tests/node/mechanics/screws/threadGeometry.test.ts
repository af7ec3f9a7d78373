import { describe, expect, test } from 'vitest';
import {
  minorDiameterMm,
  pitchDiameterMm,
  rootDiameterMm,
  stressAreaMm2,
} from '../../../../src/mechanics/screws/threadGeometry.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

const m5 = { diameterMm: 5, pitchMm: 0.8, form: 'iso' } as const;
const inch = (d: number, n: number) => ({ diameterMm: d * 25.4, pitchMm: 25.4 / n, form: 'un' }) as const;

test('examples: M5 has a pitch diameter of 4.480 mm and a stress area of 14.18 mm²', () => {
  expect(pitchDiameterMm(m5)).toBeCloseTo(4.48, 3);
  expect(stressAreaMm2(m5)).toBeCloseTo(14.18, 2);
});

describe('ISO 724 basic diameters (from memory)', () => {
  test.each([
    [5, 0.8, 4.48, 4.134, 4.019],
    [6, 1, 5.35, 4.917, 4.773],
    [8, 1.25, 7.188, 6.647, 6.466],
    [10, 1.5, 9.026, 8.376, 8.16],
  ])('M%d × %d', (diameterMm, pitchMm, pitch, minor, root) => {
    const thread = { diameterMm, pitchMm, form: 'iso' } as const;
    expect(pitchDiameterMm(thread)).toBeCloseTo(pitch, 3);
    expect(minorDiameterMm(thread)).toBeCloseTo(minor, 3);
    expect(rootDiameterMm(thread)).toBeCloseTo(root, 3);
  });
});

describe('stress areas', () => {
  // ISO 898-1 fine threads (from memory).
  test.each([
    [8, 1, 39.2],
    [10, 1.25, 61.2],
    [10, 1, 64.5],
  ])('M%d × %d is %d mm²', (diameterMm, pitchMm, mm2) => {
    expect(stressAreaMm2({ diameterMm, pitchMm, form: 'iso' })).toBeCloseTo(mm2, 1);
  });
  // Mechanical Engineering Design, table of unified threads (from memory), in².
  test.each([
    [3 / 8, 24, 0.0878],
    [5 / 16, 24, 0.058],
    [1 / 2, 20, 0.1599],
  ])('%d in × %d is %d in²', (d, n, in2) => {
    expect(stressAreaMm2(inch(d, n)) / 25.4 ** 2).toBeCloseTo(in2, 3);
  });
  test('the inch constant is not the metric one: 3/8 in × 26 by both', () => {
    const thread = inch(3 / 8, 26);
    expect(stressAreaMm2(thread)).toBeLessThan(stressAreaMm2({ ...thread, form: 'iso' }));
    expect(stressAreaMm2(thread)).toBeCloseTo(57.7, 1);
  });
});

refusesBadNumbers({ diameterMm: 'positive', pitchMm: 'positive' }, (name, value) =>
  stressAreaMm2({ ...m5, [name]: value }),
);
test('a pitch as coarse as the screw is refused', () => {
  expect(() => stressAreaMm2({ diameterMm: 5, pitchMm: 4, form: 'iso' })).toThrow(/core/);
});
