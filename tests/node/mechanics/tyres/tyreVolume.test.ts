import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  innerSurfaceM2,
  sealantDose,
  sealantFilmMm,
  tyreVolumeL,
} from '../../../../src/mechanics/tyres/tyreVolume.ts';

describe('examples of the docstrings', () => {
  test('volume', () => expect(tyreVolumeL(28, 622)).toBeCloseTo(1.257, 3));
  test('surface', () => expect(innerSurfaceM2(28, 622)).toBeCloseTo(0.1796, 4));
  test('dose', () => expect(sealantDose(28, 622, false).firstMl.mid).toBeCloseTo(50, 0));
  test('film', () => expect(sealantFilmMm(50, 25, 622, 10)).toBeCloseTo(2.37, 2));
});

// Regression rows, computed from the torus; no outside witness.
test.each([
  [23, 622, 0.842, 0.1464],
  [40, 622, 2.613, 0.2613],
  [60, 622, 6.058, 0.4039],
  [50, 406, 2.813, 0.225],
  [38, 584, 2.216, 0.2333],
])('%s-%s holds %s L on %s m² (computed)', (width, beadSeat, litres, surface) => {
  expect(tyreVolumeL(width, beadSeat)).toBeCloseTo(litres, 3);
  expect(innerSurfaceM2(width, beadSeat)).toBeCloseTo(surface, 4);
});

// Regression rows of the dose rule, computed.
test.each([
  [35, 622, 64],
  [60, 622, 113],
  [50, 406, 63],
  [47, 305, 46],
])('%s-%s: about %s mL (own rule, computed)', (width, beadSeat, ml) =>
  expect(Math.abs(sealantDose(width, beadSeat, false).firstMl.mid - ml)).toBeLessThanOrEqual(1),
);

test('volume is the integral of the surface over the width of thin shells (Pappus: V = S·W/4)', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 15, max: 130, noNaN: true }),
      fc.double({ min: 200, max: 640, noNaN: true }),
      (w, d) => {
        expect(tyreVolumeL(w, d) / ((innerSurfaceM2(w, d) * w) / 4)).toBeCloseTo(1, 9);
      },
    ),
  );
});

test('a porous wall drinks more, a top-up is half', () => {
  const plain = sealantDose(47, 584, false);
  const porous = sealantDose(47, 584, true);
  expect(porous.firstMl.lo).toBeGreaterThan(plain.firstMl.lo);
  expect(porous.firstMl.hi / plain.firstMl.hi).toBeCloseTo(1.5, 9);
  expect(plain.topUpMl.mid).toBeCloseTo(plain.firstMl.mid / 2, 9);
  expect(porous.working.result).toEqual(porous.firstMl);
});

test.each([
  () => tyreVolumeL(0, 622),
  () => innerSurfaceM2(28, -622),
  () => sealantDose(Number.NaN, 622, false),
  () => sealantFilmMm(50, 25, 622, 0),
])('programmer error %#', (call) => expect(call).toThrow(RangeError));
