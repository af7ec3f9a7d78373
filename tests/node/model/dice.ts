import fc from 'fast-check';

/** Throws that a seed decides, so that a sequence can be thrown again. */
export interface Dice {
  /** A whole number from 0 up to, not including, `end`. */
  below(end: number): number;
  chance(share: number): boolean;
  /** One of several, or nothing of none. */
  pick<T>(from: readonly T[]): T | undefined;
  /** One of several, each with its weight. */
  weighed<T>(from: readonly (readonly [weight: number, one: T])[]): T;
  shuffled<T>(list: readonly T[]): T[];
}

const SIDES = 2 ** 30;
const AT_ONCE = 1000;

/** Dice that fall the same way for the same seed. */
export function diceFor(seed: number): Dice {
  let throws: number[] = [];
  let from = seed;
  /** From 0 up to, not including, 1. */
  const next = (): number => {
    if (throws.length === 0) {
      throws = fc.sample(fc.noBias(fc.nat(SIDES - 1)), { seed: from, numRuns: AT_ONCE });
      from = throws.pop() ?? 0;
    }
    return (throws.pop() ?? 0) / SIDES;
  };
  const below = (end: number) => Math.floor(next() * end);
  return {
    below,
    chance: (share) => next() < share,
    pick: (list) => list[below(list.length)],
    weighed(list) {
      let left = next() * list.reduce((sum, [weight]) => sum + weight, 0);
      const met = list.find(([weight]) => {
        left -= weight;
        return left < 0;
      });
      const [, one] = met ?? list[0] ?? [];
      if (one === undefined) throw new RangeError('nothing to throw for');
      return one;
    },
    shuffled(list) {
      const rest = [...list];
      return list.flatMap(() => rest.splice(below(rest.length), 1));
    },
  };
}
