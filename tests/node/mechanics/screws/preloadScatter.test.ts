import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  preloadBelowMaximumN,
  scatterOfFactor,
  tighteningFactor,
} from '../../../../src/mechanics/screws/preloadScatter.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

test('examples: ±25 % is a factor of 1.67, a factor of 1.6 is ±23 %', () => {
  expect(tighteningFactor(0.25)).toBeCloseTo(1.667, 3);
  expect(scatterOfFactor(1.6)).toBeCloseTo(0.2308, 4);
  expect(scatterOfFactor(2.5)).toBeCloseTo(0.43, 2);
  expect(preloadBelowMaximumN(41900, 1.8).lo).toBeCloseTo(23278, 0);
});

test('the two are inverse to each other', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 0.95, noNaN: true }), (u) => {
      expect(scatterOfFactor(tighteningFactor(u))).toBeCloseTo(u, 9);
    }),
  );
});

test.each([-0.1, 1, Number.NaN])('a scatter of %d is refused', (u) => {
  expect(() => tighteningFactor(u)).toThrow(RangeError);
});
test.each([0.9, Number.NaN, Number.POSITIVE_INFINITY])('a factor of %d is refused', (factor) => {
  expect(() => scatterOfFactor(factor)).toThrow(RangeError);
  expect(() => preloadBelowMaximumN(1000, factor)).toThrow(RangeError);
});
refusesBadNumbers({ maximumN: 'positive' }, (_, value) => preloadBelowMaximumN(value, 1.8));
