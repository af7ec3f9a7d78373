import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { boltCircleMm, holeChordMm } from '../../../../src/mechanics/screws/boltCircle.ts';

test('examples of the docstrings', () => {
  expect(holeChordMm(110, 5)).toBeCloseTo(64.656, 3);
  expect(boltCircleMm(73.54, 4)).toBeCloseTo(104, 1);
});

test.each([
  [3, Math.sqrt(3) / 2],
  [4, Math.SQRT1_2],
  [6, 0.5],
])('%s holes: neighbours over circle (sides of regular polygons)', (holes, ratio) =>
  expect(holeChordMm(1, holes)).toBeCloseTo(ratio, 12),
);

test('six bolts: the neighbour is a radius away, the opposite bolt a diameter (Euclid IV.15)', () => {
  expect(holeChordMm(44, 6)).toBeCloseTo(22, 12);
  expect(holeChordMm(44, 6, 3)).toBeCloseTo(44, 12);
});

test('there and back', () => {
  const bolts = fc
    .integer({ min: 3, max: 12 })
    .chain((n) => fc.record({ n: fc.constant(n), steps: fc.integer({ min: 1, max: Math.floor(n / 2) }) }));
  fc.assert(
    fc.property(fc.double({ min: 1, max: 300, noNaN: true }), bolts, (circle, { n, steps }) => {
      expect(boltCircleMm(holeChordMm(circle, n, steps), n, steps)).toBeCloseTo(circle, 8);
    }),
  );
});

test.each([
  [0, 5, 1],
  [Number.NaN, 5, 1],
  [110, 2, 1],
  [110, 4.5, 1],
  [110, 5, 3],
])('a circle of %f with %f bolts, %f on, is refused', (circle, bolts, steps) => {
  expect(() => holeChordMm(circle, bolts, steps)).toThrow(RangeError);
  expect(() => boltCircleMm(circle, bolts, steps)).toThrow(RangeError);
});
