import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  crossingAngleDeg,
  holeAngleDeg,
  pairedCrossingAnglesDeg,
  twoToOne,
} from '../../../../src/mechanics/wheels/lacing.ts';

test.each([
  [3, 18, 60],
  [0, 16, 0],
  [3, 16, 67.5],
  [4, 18, 80],
  [1, 10, 36],
])('%s crosses of %s holes: %s°', (crosses, holes, degrees) =>
  expect(crossingAngleDeg(crosses, holes)).toBeCloseTo(degrees, 9),
);

test('pairs 15° apart in 12 holes shift two crosses by 7.5° either way', () =>
  expect(pairedCrossingAnglesDeg(2, 12, 15)).toEqual({ narrowDeg: 52.5, wideDeg: 67.5 }));
test('24 spokes two to one are 16 and 8, and two crosses shift by 3.75°', () => {
  expect(twoToOne(24)).toEqual({ many: 16, few: 8, pairGapDeg: 15 });
  expect(pairedCrossingAnglesDeg(2, 16, 15)).toEqual({ narrowDeg: 41.25, wideDeg: 48.75 });
});
test('actual holes at 350° and 50° are 60° apart', () => expect(holeAngleDeg(350, 50)).toBe(60));

type Point = [number, number];
const at = (radius: number, degrees: number): Point => {
  const rad = (degrees * Math.PI) / 180;
  return [radius * Math.cos(rad), radius * Math.sin(rad)];
};
/** Do two straight lines between points cut each other between their ends? */
function cut([a, b]: [Point, Point], [c, d]: [Point, Point]): boolean {
  const side = (o: Point, p: Point, q: Point) =>
    (p[0] - o[0]) * (q[1] - o[1]) - (p[1] - o[1]) * (q[0] - o[0]);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

describe('every spoke of one side laid out flat, crossings counted by cutting lines', () => {
  const rimMm = 300;
  const hubMm = 22.5;
  test.each([
    [18, 0],
    [18, 1],
    [18, 3],
    [18, 4],
    [16, 3],
    [14, 2],
    [12, 2],
    [10, 1],
  ])('%s holes, %s crosses: each spoke crosses so many, and no rim hole is used twice', (holes, crosses) => {
    const alpha = crossingAngleDeg(crosses, holes);
    const spacing = 360 / holes;
    const spokes = Array.from({ length: holes }, (_, hole) => {
      const hubDeg = hole * spacing;
      // Spokes of one flange lean forward and back in turn.
      const rimDeg = hole % 2 === 0 ? hubDeg + alpha : hubDeg - alpha;
      return { rimDeg, line: [at(hubMm, hubDeg), at(rimMm, rimDeg)] as [Point, Point] };
    });
    for (const one of spokes) {
      const met = spokes.filter((other) => other !== one && cut(one.line, other.line)).length;
      expect(met).toBe(crosses);
    }
    const rimHoles = spokes.map(({ rimDeg }) => Math.round(((rimDeg + 720) % 360) * 1000) / 1000);
    expect(new Set(rimHoles).size).toBe(holes);
  });
});

describe('properties', () => {
  const anyDeg = fc.double({ min: -720, max: 720, noNaN: true });
  test('the angle between holes is the same either way round and after a full turn', () => {
    fc.assert(
      fc.property(anyDeg, anyDeg, (rim, hub) => {
        const degrees = holeAngleDeg(rim, hub);
        expect(degrees).toBeGreaterThanOrEqual(0);
        expect(degrees).toBeLessThanOrEqual(180);
        expect(holeAngleDeg(hub, rim)).toBeCloseTo(degrees, 9);
        expect(holeAngleDeg(rim + 360, hub)).toBeCloseTo(degrees, 9);
      }),
    );
  });
  test('even pairs are no pairs', () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 24 }), fc.integer({ min: 1, max: 3 }), (holes, crosses) => {
        const { narrowDeg, wideDeg } = pairedCrossingAnglesDeg(crosses, holes, 360 / holes);
        expect(narrowDeg).toBeCloseTo(crossingAngleDeg(crosses, holes), 9);
        expect(wideDeg).toBeCloseTo(narrowDeg, 9);
      }),
    );
  });
});

test.each([
  ['half a cross', () => crossingAngleDeg(2.5, 18)],
  ['a flange of two holes', () => crossingAngleDeg(1, 2)],
  ['round past the far side', () => crossingAngleDeg(9, 10)],
  ['pairs wider than the spacing', () => pairedCrossingAnglesDeg(2, 12, 31)],
  ['two to one with 32 spokes', () => twoToOne(32)],
  ['no angle', () => holeAngleDeg(Number.NaN, 0)],
])('%s is refused', (_, call) => expect(call).toThrow(RangeError));
