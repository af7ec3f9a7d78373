import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { tensionRatio } from '../../../../src/mechanics/wheels/bracing.ts';
import { flangesFromRimHoles } from '../../../../src/mechanics/wheels/spokeLengthRimHoles.ts';

const flanges = { leftMm: 35, driveMm: 21 };

test('holes 3 mm toward the left bring 35 and 21 to 32 and 24', () =>
  expect(flangesFromRimHoles(flanges, { holes: 'offset', toDriveMm: -3 })).toEqual({
    leftMm: 32,
    driveMm: 24,
  }));
test('a plain rim changes nothing', () =>
  expect(flangesFromRimHoles(flanges, { holes: 'middle' })).toEqual(flanges));
test('stagger toward the own flange shortens both, crossed lengthens both', () => {
  const stagger = { holes: 'staggered', eachSideMm: 2 } as const;
  expect(flangesFromRimHoles(flanges, { ...stagger, toward: 'own-flange' })).toEqual({
    leftMm: 33,
    driveMm: 19,
  });
  expect(flangesFromRimHoles(flanges, { ...stagger, toward: 'other-flange' })).toEqual({
    leftMm: 37,
    driveMm: 23,
  });
});

// [computed] regression rows: left over drive tension, near w drive / w left.
test.each([
  [0, 0.6],
  [-2, 0.697],
  [-3, 0.75],
  [-4.5, 0.836],
  [3, 0.474],
])('an offset of %s mm takes 35/21 to a tension ratio near %s', (toDriveMm, ratio) => {
  const { leftMm, driveMm } = flangesFromRimHoles(flanges, { holes: 'offset', toDriveMm });
  expect(driveMm / leftMm).toBeCloseTo(ratio, 3);
  const side = { erdMm: 601, pcdMm: 58, spokes: 16, crossingDeg: 67.5 };
  const exact = tensionRatio({ ...side, flangeMm: leftMm }, { ...side, flangeMm: driveMm });
  expect(Math.abs(exact - ratio)).toBeLessThan(0.01);
});

test('an offset moves the rim between the flanges and leaves their distance', () => {
  fc.assert(
    fc.property(fc.double({ min: -20, max: 20, noNaN: true }), (toDriveMm) => {
      const { leftMm, driveMm } = flangesFromRimHoles(flanges, { holes: 'offset', toDriveMm });
      expect(leftMm + driveMm).toBeCloseTo(56, 9);
    }),
  );
});

test('an offset that was not measured is refused', () =>
  expect(() => flangesFromRimHoles(flanges, { holes: 'offset', toDriveMm: Number.NaN })).toThrow(RangeError));
