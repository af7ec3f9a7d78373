import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { ticks } from '../../../../src/controls/figures/ticks.ts';

test('0 to 5.4 in about four steps', () => expect(ticks(0, 5.4, 4)).toEqual([0, 2, 4, 6]));

// Steps of 1, 2 and 5 times a power of ten: common practice of graduated rules, no source.
test.each([
  [0, 1, 5, [0, 0.2, 0.4, 0.6, 0.8, 1]],
  [3.9, 5.5, 4, [3.5, 4, 4.5, 5, 5.5]],
  [-1, 1, 4, [-1, -0.5, 0, 0.5, 1]],
  [0, 90, 6, [0, 20, 40, 60, 80, 100]],
])('%s to %s in about %s', (low, high, about, expected) => expect(ticks(low, high, about)).toEqual(expected));

test.each([
  [1, 1, 4],
  [2, 1, 4],
  [0, Number.NaN, 4],
  [0, 1, 0],
])('%s to %s in %s steps is refused', (low, high, about) =>
  expect(() => ticks(low, high, about)).toThrow(RangeError),
);

test('the ends are covered, no step is wasted, the spacing is even', () => {
  const end = fc.double({ min: -1e6, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(
      end,
      fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
      fc.integer({ min: 2, max: 8 }),
      (low, span, about) => {
        const made = ticks(low, low + span, about);
        const step = made[1]! - made[0]!;
        const slack = step * 1e-6;
        expect(made[0]!).toBeLessThanOrEqual(low + slack);
        expect(made[0]!).toBeGreaterThan(low - step - slack);
        expect(made.at(-1)!).toBeGreaterThanOrEqual(low + span - slack);
        expect(made.length - 1).toBeLessThanOrEqual(about + 2);
        for (let index = 1; index < made.length; index++)
          expect(Math.abs(made[index]! - made[index - 1]! - step)).toBeLessThanOrEqual(slack);
      },
    ),
  );
});
