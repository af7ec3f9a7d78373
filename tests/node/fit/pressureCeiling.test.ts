import { expect, test } from 'vitest';
import { pressureCeiling } from '../../../src/fit/pressureCeiling.ts';
import { convert } from '../../../src/mechanics/units.ts';

const ask = (
  tyreMaxBar: number | null,
  rimMaxBar: number | null,
  straightWalls: boolean,
  unmarkedTubeless: boolean,
) => pressureCeiling({ tyreMaxBar, rimMaxBar, straightWalls, unmarkedTubeless });

test.each([
  [
    "the rim's limit is the lower (tyre maker's page: lowest maximum wins)",
    4.5,
    3.8,
    false,
    false,
    3.8,
    'rim',
  ],
  ["straight walls, marked higher (tyre maker's page: 5 bar)", 7, 8, true, false, 5, 'straight-walls'],
  [
    'tyre not marked tubeless (workshop page: 40 psi, rounded down)',
    4.5,
    5,
    false,
    true,
    2.75,
    'unmarked-tubeless',
  ],
  ['only the tyre says', 3.5, null, false, false, 3.5, 'tyre'],
] as const)('%s', (_, tyre, rim, straight, unmarked, bar, by) => {
  expect(ask(tyre, rim, straight, unmarked)).toEqual({ bar, by });
});

test('40 psi is 2.758 bar: the ceiling lies below it, by less than a hundredth', () => {
  const exact = convert(40, '[psi]', 'bar');
  expect(exact - (ask(null, null, false, true)?.bar ?? 0)).toBeGreaterThan(0);
  expect(exact - (ask(null, null, false, true)?.bar ?? 0)).toBeLessThan(0.01);
});

test('nothing printed, nothing known', () => {
  expect(ask(null, null, false, false)).toBeNull();
});

test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('a printed %f bar is refused', (bar) => {
  expect(() => ask(bar, null, false, false)).toThrow(RangeError);
});
