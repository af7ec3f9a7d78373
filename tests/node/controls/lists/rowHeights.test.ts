import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { RowHeights } from '../../../../src/controls/lists/rowHeights.ts';

test('three rows of 72 px end at 216 px', () => expect(new RowHeights(72).topOf(3)).toBe(216));

test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('an estimate of %s is refused', (estimate) =>
  expect(() => new RowHeights(estimate)).toThrow(RangeError),
);

test('an empty list draws nothing', () =>
  expect(new RowHeights(72).inView(0, 800, 0, 6)).toEqual({ first: 0, end: 0 }));

test('ten thousand rows are drawn a screenful at a time', () => {
  const { first, end } = new RowHeights(72).inView(360_000, 844, 10_000, 6);
  expect(first).toBe(5000 - 6);
  expect(end - first).toBeLessThan(30);
});

const measured = fc.array(fc.record({ row: fc.nat(99), heightPx: fc.integer({ min: 1, max: 400 }) }), {
  maxLength: 60,
});

test('tops are the plain sums of the heights above, in whatever order rows are measured', () => {
  fc.assert(
    fc.property(measured, fc.integer({ min: 1, max: 200 }), (notes, estimatePx) => {
      const rows = new RowHeights(estimatePx);
      const plain = Array.from({ length: 100 }, () => estimatePx);
      for (const { row, heightPx } of notes) {
        expect(rows.measure(row, heightPx)).toBe(heightPx - plain[row]!);
        plain[row] = heightPx;
        expect(rows.topOf(row)).toBe(plain.slice(0, row).reduce((sum, one) => sum + one, 0));
      }
      expect(rows.topOf(100)).toBe(plain.reduce((sum, one) => sum + one, 0));
    }),
  );
});

test('every row that shows so much as a pixel is among those drawn', () => {
  fc.assert(
    fc.property(measured, fc.integer({ min: -500, max: 9000 }), fc.nat(5), (notes, topPx, spare) => {
      const rows = new RowHeights(50);
      for (const { row, heightPx } of notes) rows.measure(row, heightPx);
      const { first, end } = rows.inView(topPx, 800, 100, spare);
      for (let row = 0; row < 100; row++) {
        const shows = rows.topOf(row) < topPx + 800 && rows.topOf(row + 1) > topPx;
        if (shows) expect(row >= first && row < end).toBe(true);
      }
    }),
  );
});
