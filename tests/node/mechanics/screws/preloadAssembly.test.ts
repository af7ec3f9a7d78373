import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assemblyPreloadN, assemblyTorqueNm } from '../../../../src/mechanics/screws/preloadAssembly.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

const size = (diameterMm: number, pitchMm: number) => ({ diameterMm, pitchMm, form: 'iso' }) as const;
const m6 = { thread: size(6, 1), threadFriction: 0.12, bearingFriction: 0.12, bearingDiameterMm: 8.3 };

test('examples: M12 in 8.8 at friction 0.14 holds 41.98 kN, M6 at 0.12 takes 10.5 N·m', () => {
  expect(assemblyPreloadN(size(12, 1.75), 640, 0.14, 0.9)).toBeCloseTo(41980, -2);
  expect(assemblyTorqueNm(m6, 640)).toBeCloseTo(10.46, 1);
});

// VDI 2230 table A1 (from memory), class 8.8, kN at friction 0.08, 0.10, 0.12, 0.14, 0.16, 0.20.
describe('VDI 2230 assembly preloads (from memory)', () => {
  test.each([
    [4, 0.7, [4.6, 4.5, 4.4, 4.3, 4.2, 3.9]],
    [5, 0.8, [7.6, 7.4, 7.2, 7.0, 6.8, 6.4]],
    [6, 1, [10.7, 10.4, 10.2, 9.9, 9.6, 9.0]],
    [8, 1.25, [19.5, 19.1, 18.6, 18.1, 17.6, 16.5]],
    [10, 1.5, [31.0, 30.3, 29.6, 28.8, 27.9, 26.3]],
  ])('M%d × %d', (diameterMm, pitchMm, kilonewtons) => {
    [0.08, 0.1, 0.12, 0.14, 0.16, 0.2].forEach((friction, at) => {
      const ours = assemblyPreloadN(size(diameterMm, pitchMm), 640, friction, 0.9) / 1000;
      expect(Math.abs(ours / kilonewtons[at]! - 1)).toBeLessThan(0.015);
    });
  });
});

test('a rougher thread leaves less for the preload', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 0.5, noNaN: true }), (friction) => {
      expect(assemblyPreloadN(m6.thread, 640, friction + 0.01)).toBeLessThan(
        assemblyPreloadN(m6.thread, 640, friction),
      );
    }),
  );
});

refusesBadNumbers(
  { yieldMPa: 'positive', threadFriction: 'or-zero', utilisation: 'positive' },
  (name, value) => {
    const args = { yieldMPa: 640, threadFriction: 0.12, utilisation: 0.9, [name]: value };
    return assemblyPreloadN(m6.thread, args.yieldMPa, args.threadFriction, args.utilisation);
  },
);
test('more than all of the yield strength is refused', () => {
  expect(() => assemblyPreloadN(m6.thread, 640, 0.12, 1.01)).toThrow(RangeError);
});
