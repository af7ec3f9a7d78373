import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { clampGrowth, shimGrowth } from '../../../../src/mechanics/clamps/clampGrowth.ts';
import { clampPressureMPa, slipTorqueNm } from '../../../../src/mechanics/clamps/clampSlip.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

test('examples: 22.2 to 25.4 gains 14.4 % in the clamp and nothing through a loose shim', () => {
  expect(clampGrowth(22.2, 25.4).slipTorque).toBeCloseTo(0.144, 3);
  expect(clampGrowth(22.2, 25.4).pressure).toBeCloseTo(-0.126, 3);
  expect(shimGrowth(22.2, 25.4, false).joint).toBe(0);
  expect(shimGrowth(22.2, 25.4, true).joint).toBeCloseTo(0.144, 3);
});

const tube = fc.double({ min: 15, max: 40, noNaN: true });
test('growth is what the slip and pressure formulas say', () => {
  fc.assert(
    fc.property(tube, tube, (from, to) => {
      const growth = clampGrowth(from, to);
      const slip = (d: number) => slipTorqueNm(20000, 0.2, d).lo;
      const pressure = (d: number) => clampPressureMPa(20000, d, 45);
      expect(slip(to) / slip(from) - 1).toBeCloseTo(growth.slipTorque, 9);
      expect(pressure(to) / pressure(from) - 1).toBeCloseTo(growth.pressure, 9);
      expect(growth.normalForce).toBe(0);
    }),
  );
});

test('a tube thicker than its clamp is refused', () => {
  expect(() => shimGrowth(25.4, 22.2, false)).toThrow(RangeError);
});
refusesBadNumbers({ fromMm: 'positive', toMm: 'positive' }, (name, value) =>
  name === 'fromMm' ? clampGrowth(value, 25.4) : clampGrowth(22.2, value),
);
