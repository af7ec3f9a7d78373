import { createHash } from 'node:crypto';

/** Throws that can be repeated: the same seed gives the same ones, in the same order. */
export interface Dice {
  readonly seed: string;
  /** A share, 0 to below 1. */
  share(): number;
  /** A whole number, both ends included. */
  whole(from: number, to: number): number;
  one<T>(of: readonly T[]): T;
  chance(share: number): boolean;
  /** Dice of their own for one part of the work, so that its throws do not depend on what else is thrown. */
  named(name: string): Dice;
}

/**
 * @param seed what the throws follow from
 * @example diceOf('1').whole(1, 6) === diceOf('1').whole(1, 6) //=> true
 */
export function diceOf(seed: string): Dice {
  let thrown = 0;
  const share = () => {
    thrown += 1;
    return createHash('sha256').update(`${seed} ${thrown}`).digest().readUInt32BE() / 2 ** 32;
  };
  const whole = (from: number, to: number) => from + Math.floor(share() * (to - from + 1));
  return {
    seed,
    share,
    whole,
    one<T>(of: readonly T[]): T {
      if (of.length === 0) throw new RangeError('nothing to choose from');
      return of[whole(0, of.length - 1)] as T;
    },
    chance: (of) => share() < of,
    named: (name) => diceOf(`${seed}/${name}`),
  };
}
