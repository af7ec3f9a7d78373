import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lacings, mostCrosses, tangentAngleDeg } from '../../../../src/mechanics/wheels/lacingUsable.ts';
import { spokeSpanMm } from '../../../../src/mechanics/wheels/spokeLength.ts';

test('384 mm rim and 45 mm circle, 18 holes: four crosses at most', () =>
  expect(mostCrosses({ erdMm: 384, pcdMm: 45 }, 18)).toBe(4));
test('a 120 mm hub gear in a 20-inch rim takes three where a ninth of the holes would say four', () =>
  expect(mostCrosses({ erdMm: 380, pcdMm: 120 }, 18)).toBe(3));

// [computed] regression rows.
test.each([
  [601, 45, 85.706],
  [384, 45, 83.27],
  [384, 38, 84.32],
  [380, 120, 71.592],
])('rim %s, circle %s mm: tangent at %s°', (erdMm, pcdMm, degrees) =>
  expect(tangentAngleDeg(erdMm, pcdMm)).toBeCloseTo(degrees, 2),
);

test.each([
  [601, 45, 16, 3, 4.3, 4.1, true, []],
  [601, 45, 16, 4, 1.1, 4.3, false, ['past-ninth', 'past-tangent', 'head-overlap']],
  [601, 45, 12, 3, 2.2, 4.3, false, ['past-ninth', 'past-tangent', 'head-overlap']],
  [601, 45, 18, 4, 2.1, 4.3, true, ['head-overlap']],
  [384, 45, 18, 3, 4.4, 6.2, true, []],
  [384, 45, 18, 4, 1.8, 6.7, true, ['head-overlap']],
  [384, 45, 16, 3, 4.0, 6.5, true, []],
  [380, 120, 18, 4, 0.65, 18.2, false, ['past-tangent', 'head-overlap', 'steep-entry']],
  [380, 120, 18, 3, 7.8, 18.0, true, ['steep-entry']],
  [380, 120, 18, 1, 19.7, 8.7, true, []],
])(
  'rim %s, circle %s, %s holes, %s crosses',
  (erdMm, pcdMm, holes, crosses, clearance, entry, usable, concerns) => {
    const row = lacings({ erdMm, pcdMm }, holes)[crosses]!;
    expect(row.crosses).toBe(crosses);
    expect(Math.abs(row.headClearanceMm - clearance)).toBeLessThan(0.06);
    expect(Math.abs(row.rimEntryDeg - entry)).toBeLessThan(0.06);
    expect(row.usable).toBe(usable);
    expect(row.concerns).toEqual(concerns);
  },
);

describe('properties', () => {
  const wheel = fc.record({
    erdMm: fc.double({ min: 300, max: 640, noNaN: true }),
    pcdMm: fc.double({ min: 20, max: 150, noNaN: true }),
  });
  const holes = fc.integer({ min: 8, max: 24 });
  test('at the tangent angle the spoke meets the hub radius square', () => {
    fc.assert(
      fc.property(wheel, (w) => {
        const flat = spokeSpanMm({ ...w, flangeMm: 0 }, tangentAngleDeg(w.erdMm, w.pcdMm));
        expect(flat ** 2 + (w.pcdMm / 2) ** 2).toBeCloseTo((w.erdMm / 2) ** 2, 6);
      }),
    );
  });
  test('clearance and entry angle agree with points laid out in a plane', () => {
    fc.assert(
      fc.property(wheel, holes, fc.integer({ min: 0, max: 3 }), (w, m, crosses) => {
        const row = lacings(w, m).find((one) => one.crosses === crosses);
        if (!row) return;
        const point = (mm: number, degrees: number) => {
          const rad = (degrees * Math.PI) / 180;
          return [(mm / 2) * Math.cos(rad), (mm / 2) * Math.sin(rad)] as const;
        };
        const hub = point(w.pcdMm, 0);
        const next = point(w.pcdMm, 360 / m);
        const rim = point(w.erdMm, row.angleDeg);
        const [dx, dy] = [rim[0] - hub[0], rim[1] - hub[1]];
        const beside = Math.abs(dx * (next[1] - hub[1]) - dy * (next[0] - hub[0])) / Math.hypot(dx, dy);
        expect(row.headClearanceMm).toBeCloseTo(beside, 8);
        const cosEntry = (dx * rim[0] + dy * rim[1]) / Math.hypot(dx, dy) / (w.erdMm / 2);
        expect(Math.cos((row.rimEntryDeg * Math.PI) / 180)).toBeCloseTo(cosEntry, 9);
      }),
    );
  });
  test('radial is always usable, and a larger hub never allows more crosses', () => {
    fc.assert(
      fc.property(wheel, holes, (w, m) => {
        const most = mostCrosses(w, m);
        expect(most).toBeGreaterThanOrEqual(0);
        expect(mostCrosses({ ...w, pcdMm: w.pcdMm + 30 }, m)).toBeLessThanOrEqual(most);
      }),
    );
  });
});

test.each([
  ['no rim', () => tangentAngleDeg(Number.NaN, 45)],
  ['a hub as large as the rim', () => lacings({ erdMm: 384, pcdMm: 384 }, 18)],
  ['no holes', () => mostCrosses({ erdMm: 384, pcdMm: 45 }, Number.NaN)],
])('%s is refused', (_, call) => expect(call).toThrow(RangeError));
