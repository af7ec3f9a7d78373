import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type CheapestSet,
  cheapestChoices,
  type JointCost,
} from '../../../../src/fit/sets/cheapestChoices.ts';

/** Every choice there is, by trying them all. */
function everyChoice(singles: number[][], joint: JointCost[]): CheapestSet[] {
  const all = singles.reduce<number[][]>(
    (rows, costs) => rows.flatMap((row) => costs.map((_, option) => [...row, option])),
    [[]],
  );
  return all
    .map((options) => ({
      options,
      cost:
        options.reduce((sum, option, place) => sum + (singles[place]?.[option] ?? 0), 0) +
        joint.reduce((sum, { places, costs }) => {
          // The last place runs fastest.
          const index = places.reduce(
            (at, place) => at * (singles[place]?.length ?? 0) + (options[place] ?? 0),
            0,
          );
          return sum + (costs[index] ?? 0);
        }, 0),
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
      .uniqueArray(
        fc.subarray([...sizes.keys()], {
          minLength: 1,
          maxLength: Math.min(3, sizes.length),
        }),
        {
          maxLength: 6,
          selector: (places) => places.join(),
        },
      )
      .chain((groups) =>
        fc.tuple(
          ...groups.map((places) => {
            const length = places.reduce((count, place) => count * (sizes[place] ?? 0), 1);
            return fc
              .array(cost, { minLength: length, maxLength: length })
              .map((costs) => ({ places, costs }));
          }),
        ),
      ),
  ),
);

const words = ({ options, cost: of }: CheapestSet): string => `${of}: ${options.join(' ')}`;

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
      fc.property(problem, ([singles, joint]) => {
        const ours = [...cheapestChoices(singles, joint)];
        expect(ours.map(words).sort()).toEqual(everyChoice(singles, joint).map(words).sort());
        for (const [index, { cost: of }] of ours.entries())
          expect(of).toBeGreaterThanOrEqual(ours[index - 1]?.cost ?? 0);
      }),
      { numRuns: 300 },
    );
  });

  test('thirty places in a chain with forty options each: the best is found without trying 40³⁰', () => {
    const singles = Array.from({ length: 30 }, () => Array.from({ length: 40 }, (_, option) => option));
    const joint = Array.from({ length: 29 }, (_, one) => ({
      places: [one, one + 1],
      // Two equal options next to each other are dear, so the best alternates between the two cheapest.
      costs: Array.from({ length: 1600 }, (__, index) => (index % 41 === 0 ? 7 : 0)),
    }));
    const { value } = cheapestChoices(singles, joint).next();
    expect(value?.cost).toBe(15);
  });

  test.each([
    ['a place without options', [[]], []],
    ['a cost that is no number', [[Number.NaN]], []],
    ['a place beside itself', [[0]], [{ places: [0, 0], costs: [0] }]],
    ['a table of another shape', [[0], [0, 1]], [{ places: [0, 1], costs: [0] }]],
  ])('%s is refused', (_, singles, joint) => {
    expect(() => cheapestChoices(singles, joint).next()).toThrow(RangeError);
  });
});
