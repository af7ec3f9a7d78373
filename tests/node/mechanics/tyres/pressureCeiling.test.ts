import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  lowestPressureBar,
  NOT_MARKED_TUBELESS_BAR,
  type PressureParts,
  pressureCeiling,
  STRAIGHT_SIDE_BAR,
  straightSideWidthBreaks,
} from '../../../../src/mechanics/tyres/pressureCeiling.ts';
import { pressureBar } from '../../../../src/mechanics/units.ts';

const hooked: PressureParts = {
  tyreMaxBar: 4.5,
  rimMax: 3.8,
  tyreWidthMm: 47,
  straightSide: false,
  markedTubeless: true,
  withoutTube: true,
};
const ceiling = (change: Partial<PressureParts> = {}) => pressureCeiling({ ...hooked, ...change });

describe('examples of the docstrings', () => {
  test('the rim decides', () =>
    expect(ceiling()).toMatchObject({ ok: true, ceilingBar: 3.8, decidedBy: 'rim' }));
  test('lowest', () => expect(lowestPressureBar(47, true)).toBe(1.5));
  test('28 on 25 without a hook', () => expect(straightSideWidthBreaks(28, 25)).toEqual(['under-29-on-25']));
});

describe('the lowest limit wins', () => {
  test.each<[string, Partial<PressureParts>, number, string]>([
    [
      'tyre 7, rim 8, no hook (tyre maker: 5 bar)',
      { tyreMaxBar: 7, rimMax: 8, straightSide: true },
      5,
      'straight-side',
    ],
    [
      'not marked tubeless (workshop page: 40 psi)',
      { rimMax: 5, markedTubeless: false },
      2.75,
      'not-marked-tubeless',
    ],
    [
      'with a tube the marking does not matter',
      { rimMax: 5, markedTubeless: false, withoutTube: false },
      4.5,
      'tyre',
    ],
    ['no rim figure', { rimMax: undefined }, 4.5, 'tyre'],
    ['no hook, but a low rim', { straightSide: true, rimMax: 3 }, 3, 'rim'],
  ])('%s', (_, change, ceilingBar, decidedBy) =>
    expect(ceiling(change)).toMatchObject({ ceilingBar, decidedBy }),
  );

  test('printed figures above 40 psi do not lift it: tyre 3.5, rim 4.0, not marked', () =>
    expect(ceiling({ tyreMaxBar: 3.5, rimMax: 4, markedTubeless: false })).toMatchObject({
      ceilingBar: 2.75,
      decidedBy: 'not-marked-tubeless',
    }));
});

describe('a rim maker’s table (letter in a cycling magazine: 116 psi at 23 mm, 45 psi at 32 mm)', () => {
  const rimMax = [
    { tyreMm: 32, maxBar: pressureBar(45, '[psi]') },
    { tyreMm: 23, maxBar: pressureBar(116, '[psi]') },
  ];
  test.each([
    [23, 7.99],
    [24, 3.1],
    [32, 3.1],
  ])('%s mm: %s bar; between the rows the wider one counts', (tyreWidthMm, ceilingBar) =>
    expect(ceiling({ tyreMaxBar: 9, tyreWidthMm, rimMax })).toMatchObject({ ceilingBar, decidedBy: 'rim' }),
  );
  test('wider than the table is not guessed', () =>
    expect(ceiling({ tyreWidthMm: 33, rimMax })).toEqual({
      ok: false,
      reason: 'tyre-wider-than-the-rim-table',
    }));
});

describe('refusals', () => {
  test('no figure on the tyre', () =>
    expect(ceiling({ tyreMaxBar: undefined })).toEqual({ ok: false, reason: 'no-limit-printed' }));
  test.each([true, false])(
    'no hook and no tubeless marking, without tube %s (ISO 5775-2:2015)',
    (withoutTube) =>
      expect(ceiling({ straightSide: true, markedTubeless: false, withoutTube })).toEqual({
        ok: false,
        reason: 'straight-side-needs-a-tubeless-tyre',
      }),
  );
});

describe('properties', () => {
  const bar = fc.double({ min: 0.5, max: 12, noNaN: true });
  test('never above any limit, and at most a hundredth below the lowest', () => {
    fc.assert(
      fc.property(
        bar,
        bar,
        fc.boolean(),
        fc.boolean(),
        (tyreMaxBar, rimMax, straightSide, markedTubeless) => {
          const result = ceiling({ tyreMaxBar, rimMax, straightSide, markedTubeless });
          if (!result.ok) return;
          const lowest = Math.min(
            tyreMaxBar,
            rimMax,
            straightSide ? STRAIGHT_SIDE_BAR : 99,
            markedTubeless ? 99 : NOT_MARKED_TUBELESS_BAR,
          );
          expect(result.ceilingBar).toBeLessThanOrEqual(lowest + 1e-9);
          expect(result.ceilingBar).toBeGreaterThan(lowest - 0.0101);
        },
      ),
    );
  });
});

describe('lowest pressure (encyclopedia text on ISO 5775)', () => {
  test.each([
    [25, false, 3],
    [26, false, 2],
    [47, true, 1.5],
    [23, true, 3],
  ])('%s mm, off road %s: %s bar', (width, offRoad, bar) =>
    expect(lowestPressureBar(width, offRoad)).toBe(bar),
  );
});

test.each([
  [27, 21, ['under-28']],
  [28, 23, []],
  [29, 25, []],
  [27, 25, ['under-28', 'under-29-on-25']],
])('%s on %s without a hook: %o (tyre maker, press report)', (tyre, rim, breaks) =>
  expect(straightSideWidthBreaks(tyre, rim)).toEqual(breaks),
);

test.each([
  () => ceiling({ tyreMaxBar: 0 }),
  () => ceiling({ rimMax: -1 }),
  () => ceiling({ tyreWidthMm: Number.NaN }),
  () => lowestPressureBar(0, false),
])('programmer error %#', (call) => expect(call).toThrow(RangeError));
