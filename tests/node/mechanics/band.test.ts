import { describe, expect, test } from 'vitest';
import { band, exactly, scaled } from '../../../src/mechanics/band.ts';

describe('examples of the docstrings', () => {
  test('a band from its parts', () =>
    expect(band(0.18, 0.2, 0.27)).toEqual({ lo: 0.18, mid: 0.2, hi: 0.27 }));
  test('an exact value', () => expect(exactly(5)).toEqual({ lo: 5, mid: 5, hi: 5 }));
  test('twice as much', () => expect(scaled(exactly(5), 2)).toEqual(exactly(10)));
});

describe('programmer errors', () => {
  test.each([
    [2, 1, 3],
    [1, 3, 2],
    [Number.NaN, 1, 2],
    [1, 2, Number.POSITIVE_INFINITY],
  ])('%d, %d, %d is no band', (lo, mid, hi) => expect(() => band(lo, mid, hi)).toThrow(RangeError));
  test.each([0, -1, Number.NaN])('a factor of %d', (f) =>
    expect(() => scaled(exactly(1), f)).toThrow(RangeError),
  );
});
