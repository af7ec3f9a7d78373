import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  chainAngleDeg,
  frontChainlineMm,
  judgeChainline,
  rearChainlineMm,
} from '../../../../src/mechanics/drive/chainline.ts';

test('135 mm hub, 16.5 mm to the tooth: chainline 51 mm (cycling forum, worked example)', () =>
  expect(rearChainlineMm(135, 16.5)).toBe(51));
test('seat tube of radius 15 mm, gap 27.5 mm: chainline 42.5 mm (cycling forum, worked example)', () =>
  expect(frontChainlineMm(30, 27.5)).toBe(42.5));

// [computed] regression rows; the run is that of 36 × 15 at 380 and 400 mm.
test.each([
  [1, 377.637, 0.152],
  [3, 377.637, 0.455],
  [5, 377.637, 0.759],
  [8, 377.637, 1.214],
  [3, 397.755, 0.432],
])('%s mm out of line over %s mm is %s°', (offsetMm, spanMm, degrees) =>
  expect(chainAngleDeg(offsetMm, spanMm)).toBeCloseTo(degrees, 3),
);

test.each([
  [0, 'straight'],
  [-2, 'usable'],
  [3, 'usable'],
  [-4, 'noticeable'],
  [12, 'too-far'],
])('%s mm is %s, limits from memory and marked so', (offsetMm, judgement) =>
  expect(judgeChainline(offsetMm)).toEqual({ judgement, known: 'memory' }),
);

describe('properties', () => {
  const offset = fc.double({ min: -99, max: 99, noNaN: true });
  const span = fc.double({ min: 50, max: 2000, noNaN: true });
  test('the tangent of the angle gives the offset back, and the sign is kept', () => {
    fc.assert(
      fc.property(offset, span, (mm, spanMm) => {
        const degrees = chainAngleDeg(mm, spanMm);
        expect(Math.tan((degrees * Math.PI) / 180) * spanMm).toBeCloseTo(mm, 8);
        expect(chainAngleDeg(-mm, spanMm)).toBeCloseTo(-degrees, 12);
      }),
    );
  });
  test('further out of line is steeper', () => {
    fc.assert(
      fc.property(offset, span, (mm, spanMm) => {
        expect(chainAngleDeg(mm + 0.5, spanMm)).toBeGreaterThan(chainAngleDeg(mm, spanMm));
      }),
    );
  });
});

test.each([
  ['no run', () => chainAngleDeg(3, 0)],
  ['no offset', () => judgeChainline(Number.NaN)],
  ['a hub of no width', () => rearChainlineMm(0, 10)],
  ['a ring inside the tube', () => frontChainlineMm(30, -5)],
])('%s is refused', (_, call) => expect(call).toThrow(RangeError));
