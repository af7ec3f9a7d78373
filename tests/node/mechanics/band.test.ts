import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { around, band, exactly, scaled } from '../../../src/mechanics/band.ts';

describe('examples of the docstrings', () => {
  test('a band from its parts', () =>
    expect(band(0.18, 0.2, 0.27)).toEqual({ lo: 0.18, mid: 0.2, hi: 0.27 }));
  test('an exact value', () => expect(exactly(5)).toEqual({ lo: 5, mid: 5, hi: 5 }));
  test('±30 % about 5000 N', () => expect(around(5000, 0.3)).toEqual({ lo: 3500, mid: 5000, hi: 6500 }));
  test('twice as much', () => expect(scaled(exactly(5), 2)).toEqual(exactly(10)));
});

test('a band widens with its spread and always holds its middle', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
      fc.double({ min: 0, max: 0.9, noNaN: true }),
      (mid, u) => {
        const { lo, hi } = around(mid, u);
        expect(lo).toBeLessThanOrEqual(mid);
        expect(hi).toBeGreaterThanOrEqual(mid);
        expect(hi - lo).toBeCloseTo(2 * u * mid, 5);
      },
    ),
  );
});

describe('programmer errors', () => {
  test.each([
    [2, 1, 3],
    [1, 3, 2],
    [Number.NaN, 1, 2],
    [1, 2, Number.POSITIVE_INFINITY],
  ])('%d, %d, %d is no band', (lo, mid, hi) => expect(() => band(lo, mid, hi)).toThrow(RangeError));
  test.each([-0.1, 1, Number.NaN])('a spread of %d', (u) => expect(() => around(1, u)).toThrow(RangeError));
  test.each([0, -1, Number.NaN])('a factor of %d', (f) =>
    expect(() => scaled(exactly(1), f)).toThrow(RangeError),
  );
});
