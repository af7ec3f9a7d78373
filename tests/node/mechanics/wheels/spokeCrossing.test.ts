import { describe, expect, test } from 'vitest';
import {
  buttedPieces,
  crossingShare,
  outermostCrossing,
  outerPieces,
} from '../../../../src/mechanics/wheels/spokeCrossing.ts';

test('20-inch, 18 holes a side, 3-cross: the last crossing lies at 0.3408 of the spoke', () => {
  const circles = { pcdMm: 45, erdMm: 384 };
  expect(crossingShare(circles, { hubDeg: 0, rimDeg: 60 }, { hubDeg: 100, rimDeg: 40 })).toBeCloseTo(
    0.3408,
    4,
  );
});

/** A side of a wheel, laced conventionally: every second hole leads, every second trails. */
function sideOf(holes: number, crosses: number) {
  const stepDeg = 360 / holes;
  return Array.from({ length: holes }, (_, at) => ({
    hubDeg: at * stepDeg,
    rimDeg: at * stepDeg + (at % 2 === 0 ? 1 : -1) * crosses * stepDeg,
  }));
}

describe('handbook: share of the outermost crossing', () => {
  test.each([
    ['case 1', 384, 45, 18, 3, 0.3408],
    ['case 3', 390, 38, 18, 3, 0.3006],
    ['case 4', 601, 58, 16, 3, 0.2914],
    ['case 7', 540, 90, 16, 2, 0.3219],
    ['case 8', 595, 45, 14, 2, 0.1749],
    ['case 9', 605, 45, 18, 4, 0.287],
    ['case 10', 380, 30, 10, 1, 0.0732],
  ])('%s: %d/%d, %d holes, %d-cross: %d', (_case, erdMm, pcdMm, holes, crosses, share) => {
    const side = sideOf(holes, crosses);
    const shares = side.map((own) => outermostCrossing({ pcdMm, erdMm }, own, side)?.share);
    for (const found of shares) expect(found).toBeCloseTo(share, 4);
    // As many crossings as it is laced with.
    const crossed = side.filter(
      (other) => other !== side[0] && crossingShare({ pcdMm, erdMm }, side[0]!, other),
    );
    expect(crossed).toHaveLength(crosses);
  });
  test('outer segment of case 1: 121.9 of 184.95 mm', () => {
    const [piece] = outerPieces([{ lengthMm: 184.95, diameterMm: 2 }], 0.3408);
    expect(piece?.lengthMm).toBeCloseTo(121.9, 1);
  });
});

test('each of a pair names the other', () => {
  const side = sideOf(18, 3);
  const circles = { pcdMm: 45, erdMm: 384 };
  for (const own of side) {
    const { partner } = outermostCrossing(circles, own, side)!;
    expect(outermostCrossing(circles, partner, side)!.partner).toBe(own);
  }
});

test('radial spokes cross nothing', () => {
  const side = sideOf(18, 0);
  expect(outermostCrossing({ pcdMm: 45, erdMm: 384 }, side[0]!, side)).toBeNull();
});

test('180 mm beyond 0.3408 is 118.7 mm; of a butted spoke the hub end goes first', () => {
  expect(outerPieces([{ lengthMm: 180, diameterMm: 2 }], 0.3408)[0]!.lengthMm).toBeCloseTo(118.656, 3);
  const outer = outerPieces(buttedPieces(180, 1.8, 2), 0.3408);
  expect(outer.map(({ diameterMm }) => diameterMm)).toEqual([1.8, 2]);
  expect(outer.reduce((sum, { lengthMm }) => sum + lengthMm, 0)).toBeCloseTo(118.656, 3);
  expect(outerPieces(buttedPieces(180, 1.8, 2), 0)).toEqual(buttedPieces(180, 1.8, 2));
});

test('184 mm, 1.8 between ends of 2: 30, 113 and 41 mm', () => {
  expect(buttedPieces(184, 1.8, 2)).toEqual([
    { lengthMm: 30, diameterMm: 2 },
    { lengthMm: 113, diameterMm: 1.8 },
    { lengthMm: 41, diameterMm: 2 },
  ]);
  expect(buttedPieces(184, 2)).toEqual([{ lengthMm: 184, diameterMm: 2 }]);
});

test('what cannot be is refused', () => {
  expect(() =>
    crossingShare({ pcdMm: 450, erdMm: 400 }, { hubDeg: 0, rimDeg: 1 }, { hubDeg: 1, rimDeg: 0 }),
  ).toThrow('pcdMm');
  expect(() => outerPieces([{ lengthMm: 180, diameterMm: 2 }], 1)).toThrow('share');
  expect(() => buttedPieces(70, 1.8, 2)).toThrow('lengthMm');
});
