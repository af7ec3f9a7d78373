import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Choice, cheapestChoices, type PairCost } from '../../../src/fit/cheapestChoices.ts';

/** Every choice there is, by trying them all. */
function everyChoice(singles: number[][], pairs: PairCost[]): Choice[] {
  const all = singles.reduce<number[][]>(
    (rows, costs) => rows.flatMap((row) => costs.map((_, option) => [...row, option])),
    [[]],
  );
  return all
    .map((options) => ({
      options,
      cost:
        options.reduce((sum, option, place) => sum + (singles[place]?.[option] ?? 0), 0) +
        pairs.reduce(
          (sum, { one, other, cost }) => sum + (cost[options[one] ?? 0]?.[options[other] ?? 0] ?? 0),
          0,
        ),
    }))
    .filter(({ cost }) => cost < Number.POSITIVE_INFINITY);
}

const cost = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 0, max: 9 }) },
  { weight: 1, arbitrary: fc.constant(Number.POSITIVE_INFINITY) },
);

const problem = fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 1, maxLength: 5 }).chain((sizes) =>
  fc.tuple(
    fc.tuple(...sizes.map((size) => fc.array(cost, { minLength: size, maxLength: size }))),
    fc
      .uniqueArray(fc.tuple(fc.nat(sizes.length - 1), fc.nat(sizes.length - 1)), { maxLength: 6 })
      .map((edges) => edges.filter(([one, other]) => one < other))
      .chain((edges) =>
        fc.tuple(
          ...edges.map(([one, other]) =>
            fc
              .array(fc.array(cost, { minLength: sizes[other] ?? 0, maxLength: sizes[other] ?? 0 }), {
                minLength: sizes[one] ?? 0,
                maxLength: sizes[one] ?? 0,
              })
              .map((table) => ({ one, other, cost: table })),
          ),
        ),
      ),
  ),
);

const words = ({ options, cost: of }: Choice): string => `${of}: ${options.join(' ')}`;

describe('cheapestChoices', () => {
  test('example of the docstring', () => {
    expect(
      [
        ...cheapestChoices(
          [
            [0, 5],
            [1, 0],
          ],
          [],
        ),
      ][0],
    ).toEqual({ options: [0, 1], cost: 0 });
  });

  test('lists every choice once, with its cost, cheapest first (oracle: trying them all)', () => {
    fc.assert(
      fc.property(problem, ([singles, pairs]) => {
        const ours = [...cheapestChoices(singles, pairs)];
        expect(ours.map(words).sort()).toEqual(everyChoice(singles, pairs).map(words).sort());
        for (const [index, { cost: of }] of ours.entries())
          expect(of).toBeGreaterThanOrEqual(ours[index - 1]?.cost ?? 0);
      }),
      { numRuns: 300 },
    );
  });

  test('thirty places in a chain with forty options each: the best is found without trying 40³⁰', () => {
    const singles = Array.from({ length: 30 }, () => Array.from({ length: 40 }, (_, option) => option));
    const pairs = Array.from({ length: 29 }, (_, one) => ({
      one,
      other: one + 1,
      // Two equal options next to each other are dear, so the best alternates between the two cheapest.
      cost: Array.from({ length: 40 }, (_, a) => Array.from({ length: 40 }, (__, b) => (a === b ? 7 : 0))),
    }));
    const { value } = cheapestChoices(singles, pairs).next();
    expect(value?.cost).toBe(15);
  });

  test.each([
    ['a place without options', [[]], []],
    ['a cost that is no number', [[Number.NaN]], []],
    ['a place beside itself', [[0]], [{ one: 0, other: 0, cost: [[0]] }]],
    ['a table of another shape', [[0], [0, 1]], [{ one: 0, other: 1, cost: [[0]] }]],
  ])('%s is refused', (_, singles, pairs) => {
    expect(() => cheapestChoices(singles, pairs).next()).toThrow(RangeError);
  });
});
