import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { straightPullLengthMm } from '../../../../src/mechanics/wheels/spokeLengthStraightPull.ts';

const side = { erdMm: 601, headCircleMm: 50, lineOffsetMm: 21, flangeMm: 30 } as const;

// [computed] regression rows.
test.each([
  ['rim-side', 287.769],
  ['far-side', 314.763],
] as const)('head on the %s: %s mm', (head, mm) =>
  expect(straightPullLengthMm({ ...side, head })).toBeCloseTo(mm, 3),
);

describe('properties', () => {
  const anySide = fc.record({
    erdMm: fc.double({ min: 300, max: 640, noNaN: true }),
    headCircleMm: fc.double({ min: 30, max: 120, noNaN: true }),
    flangeMm: fc.double({ min: 0, max: 60, noNaN: true }),
    share: fc.double({ min: 0, max: 1, noNaN: true }),
  });
  test('the law of cosines with the angle between both ends gives the same length', () => {
    fc.assert(
      fc.property(anySide, fc.boolean(), ({ share, ...rest }, rimSide) => {
        const [rim, seat] = [rest.erdMm / 2, rest.headCircleMm / 2];
        const off = share * seat;
        const angle = Math.acos(off / rim) + (rimSide ? -1 : 1) * Math.acos(off / seat);
        const flat2 = rim ** 2 + seat ** 2 - 2 * rim * seat * Math.cos(angle);
        const head = rimSide ? 'rim-side' : 'far-side';
        expect(straightPullLengthMm({ ...rest, lineOffsetMm: off, head })).toBeCloseTo(
          Math.sqrt(flat2 + rest.flangeMm ** 2),
          6,
        );
      }),
    );
  });
  test('a head on the far side wants the longer spoke', () => {
    fc.assert(
      fc.property(anySide, ({ share, ...rest }) => {
        const both = { ...rest, lineOffsetMm: (share * rest.headCircleMm) / 2 };
        expect(straightPullLengthMm({ ...both, head: 'far-side' })).toBeGreaterThanOrEqual(
          straightPullLengthMm({ ...both, head: 'rim-side' }),
        );
      }),
    );
  });
});

test.each([
  ['a line that misses the head circle', { ...side, lineOffsetMm: 26, head: 'rim-side' }],
  ['no rim', { ...side, erdMm: Number.NaN, head: 'rim-side' }],
] as const)('%s is refused', (_, wrong) => expect(() => straightPullLengthMm(wrong)).toThrow(RangeError));
