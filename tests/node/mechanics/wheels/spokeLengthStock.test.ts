import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stockedSpoke } from '../../../../src/mechanics/wheels/spokeLengthStock.ts';

test.each([
  [183.649, 2, 182],
  [183.649, 1, 183],
  [183.75, 2, 184],
  [183.75, 1, 184],
  [184, 2, 184],
])('%s mm in steps of %s: take %s', (exactMm, step, stockedMm) =>
  expect(stockedSpoke(exactMm, step)?.stockedMm).toBe(stockedMm),
);

test('from the drawer: the longest that is not too long, with the difference told', () => {
  expect(stockedSpoke(183.6, [180, 182, 184, 186])).toEqual({
    stockedMm: 182,
    exactMm: 183.6,
    differenceMm: expect.closeTo(-1.6, 9),
    acceptable: true,
  });
  expect(stockedSpoke(183.6, [178, 190])?.acceptable).toBe(false);
  expect(stockedSpoke(183.6, [186, 190])).toBeNull();
  expect(stockedSpoke(183.6, [])).toBeNull();
});

describe('properties', () => {
  const exact = fc.double({ min: 60, max: 390, noNaN: true });
  test('steps of 1 or 2 mm never end 0.3 mm too long, nor a whole step short', () => {
    fc.assert(
      fc.property(exact, fc.constantFrom(1, 2), (exactMm, step) => {
        const { differenceMm, acceptable } = stockedSpoke(exactMm, step)!;
        expect(differenceMm).toBeLessThanOrEqual(0.3 + 1e-6);
        expect(differenceMm).toBeGreaterThan(0.3 - step - 1e-6);
        expect(acceptable).toBe(true);
      }),
    );
  });
});

test.each([
  ['no length', () => stockedSpoke(Number.NaN, 2)],
  ['no step', () => stockedSpoke(183, 0)],
  ['a size in inches', () => stockedSpoke(183, [7.25])],
])('%s is refused', (_, call) => expect(call).toThrow(RangeError));
