import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { torqueAtScrewNm, wrenchSettingNm } from '../../../../src/mechanics/screws/wrenchExtension.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

const wrench = { wrenchMm: 100, extensionMm: 15, angleDeg: 45 };

test('examples', () => {
  expect(wrenchSettingNm(10, wrench)).toBeCloseTo(9.041, 3);
  expect(torqueAtScrewNm(60, { wrenchMm: 12, extensionMm: 2, angleDeg: 0 })).toBeCloseTo(70, 9);
});

// Regression row, computed for this project; 90° needs no correction by geometry.
test.each([
  [90, 10],
  [-90, 10],
  [135, 11.187],
])('at %d° set %d', (angleDeg, settingNm) => {
  expect(wrenchSettingNm(10, { ...wrench, angleDeg })).toBeCloseTo(settingNm, 3);
});

const length = fc.double({ min: 100, max: 600, noNaN: true });
const arm = fc.double({ min: 0, max: 90, noNaN: true });
const angle = fc.double({ min: -360, max: 360, noNaN: true });
test('setting and torque at the screw are inverse to each other', () => {
  fc.assert(
    fc.property(length, arm, angle, (wrenchMm, extensionMm, angleDeg) => {
      const tool = { wrenchMm, extensionMm, angleDeg };
      expect(torqueAtScrewNm(wrenchSettingNm(10, tool), tool)).toBeCloseTo(10, 9);
      expect(wrenchSettingNm(10, tool)).toBeCloseTo(wrenchSettingNm(10, { ...tool, angleDeg: -angleDeg }), 9);
    }),
  );
});
test('folding an extension back only raises the setting', () => {
  fc.assert(
    fc.property(length, arm, fc.integer({ min: 0, max: 179 }), (wrenchMm, extensionMm, angleDeg) => {
      const setting = (at: number) => wrenchSettingNm(10, { wrenchMm, extensionMm, angleDeg: at });
      expect(setting(angleDeg + 1)).toBeGreaterThanOrEqual(setting(angleDeg));
    }),
  );
});

test('a screw at or behind the hand is refused', () => {
  expect(() => wrenchSettingNm(10, { wrenchMm: 100, extensionMm: 100, angleDeg: 180 })).toThrow(/hand/);
  expect(() => torqueAtScrewNm(10, { wrenchMm: 100, extensionMm: 300, angleDeg: 180 })).toThrow(/hand/);
});
refusesBadNumbers({ wrenchMm: 'positive', extensionMm: 'or-zero' }, (name, value) =>
  wrenchSettingNm(10, { ...wrench, [name]: value }),
);
refusesBadNumbers({ wantedNm: 'positive' }, (_, value) => wrenchSettingNm(value, wrench));
refusesBadNumbers({ settingNm: 'positive' }, (_, value) => torqueAtScrewNm(value, wrench));
test('an angle must be finite', () => {
  expect(() => wrenchSettingNm(10, { ...wrench, angleDeg: Number.NaN })).toThrow('angleDeg');
});
