import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  evenDiameterMm,
  intoNippleMm,
  rimCompressionN,
  rimShrinkMm,
  spokeStiffnessN,
  spokeStretchMm,
} from '../../../../src/mechanics/wheels/spokeLengthCorrections.ts';

const butted = [
  { lengthMm: 205, diameterMm: 1.72 },
  { lengthMm: 71, diameterMm: 1.99 },
];

test('dissertation on bicycle wheels: a measured butted spoke has 521 kN and 1.78 mm', () => {
  const stiffnessN = spokeStiffnessN(butted, 210);
  expect(Math.abs(stiffnessN - 521_000)).toBeLessThan(1000);
  expect(evenDiameterMm(stiffnessN, 210)).toBeCloseTo(1.78, 2);
});

// [computed] regression rows: stretch at 1000 N.
test.each([
  [2, 184, 0.303],
  [2, 290, 0.478],
  [1.8, 290, 0.59],
  [1.5, 290, 0.85],
])('a plain %s mm spoke of %s mm stretches %s mm', (diameterMm, lengthMm, mm) =>
  expect(spokeStretchMm(1000, [{ lengthMm, diameterMm }])).toBeCloseTo(mm, 3),
);

test.each([
  [304, 0.243],
  [217, 0.173],
])('36 spokes at 1000 N shrink a rim of radius %s mm by %s mm', (radiusMm, mm) =>
  expect(rimShrinkMm(36, 1000, { radiusMm, areaMm2: 104 })).toBeCloseTo(mm, 3),
);

test('36 spokes at 100 kgf squeeze the rim with 5619 N', () =>
  expect(rimCompressionN(36, 980.665)).toBeCloseTo(5619, 0));

test('stretch and rim together: 0.72 mm on a 29-inch wheel', () =>
  expect(
    intoNippleMm(36, 1000, [{ lengthMm: 290, diameterMm: 2 }], { radiusMm: 304, areaMm2: 104 }),
  ).toBeCloseTo(0.72, 2));

test('a polygon of straight bars between 36 spokes shrinks nearly as the ring does', () => {
  const [spokes, tensionN, radiusMm, areaMm2] = [36, 1000, 304, 104];
  const half = Math.PI / spokes;
  // Each corner balances two bars against one spoke; the bars shorten and the corner moves in.
  const barN = tensionN / (2 * Math.sin(half));
  const barMm = 2 * radiusMm * Math.sin(half);
  const shorterMm = (barN * barMm) / (69_000 * areaMm2);
  const inMm = shorterMm / (2 * Math.sin(half));
  const ringMm = rimShrinkMm(spokes, tensionN, { radiusMm, areaMm2 });
  expect(Math.abs(inMm / ringMm - 1)).toBeLessThan(0.002);
});

describe('properties', () => {
  const piece = fc.record({
    lengthMm: fc.double({ min: 10, max: 200, noNaN: true }),
    diameterMm: fc.double({ min: 1.4, max: 2.6, noNaN: true }),
  });
  test('cutting a spoke in two on paper changes nothing', () => {
    fc.assert(
      fc.property(piece, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (whole, share) => {
        const parts = [share, 1 - share].map((part) => ({ ...whole, lengthMm: whole.lengthMm * part }));
        expect(spokeStiffnessN(parts) / spokeStiffnessN([whole])).toBeCloseTo(1, 9);
      }),
    );
  });
  test('pieces stretch each by its own share', () => {
    fc.assert(
      fc.property(piece, piece, fc.double({ min: 0, max: 2000, noNaN: true }), (one, other, tensionN) => {
        expect(spokeStretchMm(tensionN, [one, other])).toBeCloseTo(
          spokeStretchMm(tensionN, [one]) + spokeStretchMm(tensionN, [other]),
          9,
        );
      }),
    );
  });
  test('the even diameter lies between the pieces’ own', () => {
    fc.assert(
      fc.property(piece, piece, (one, other) => {
        const mm = evenDiameterMm(spokeStiffnessN([one, other]));
        expect(mm).toBeGreaterThanOrEqual(Math.min(one.diameterMm, other.diameterMm) - 1e-9);
        expect(mm).toBeLessThanOrEqual(Math.max(one.diameterMm, other.diameterMm) + 1e-9);
      }),
    );
  });
});

test.each([
  ['a spoke of nothing', () => spokeStiffnessN([])],
  ['a spoke of no thickness', () => spokeStretchMm(1000, [{ lengthMm: 290, diameterMm: 0 }])],
  ['pushing a spoke', () => spokeStretchMm(-1, butted)],
  ['a rim of air', () => rimShrinkMm(36, 1000, { radiusMm: 304, areaMm2: 0 })],
  ['no spokes', () => rimCompressionN(Number.NaN, 1000)],
])('%s is refused', (_, call) => expect(call).toThrow(RangeError));
