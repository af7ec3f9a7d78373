import type { Served } from '../browser/product.ts';
import type { Dice } from './dice.ts';
import type { FoldElsewhere } from './foldElsewhere.ts';
import type { Finds } from './tally.ts';

/** What every attack stands on: the built product, served once, and the process that folds. */
export interface Ground {
  served: Served;
  fold: FoldElsewhere;
  dice: Dice;
  finds: Finds;
  /** A phone that has the app and nothing in it, switched off; it is copied, never opened. */
  clean: string;
  /** How often of `whole` an attack runs: the share asked for, at least once. */
  times(whole: number): number;
}

export interface Attack {
  name: string;
  /** What is done to the product, in one line. */
  about: string;
  /** False for an attack that only tells what the browser does; it runs when it is asked for by name. */
  counted: boolean;
  run(ground: Ground): Promise<void>;
}

/** Does the same work in two lanes beside each other: as many browsers as the machine has cores. */
export async function inLanes(rounds: number, work: (round: number) => Promise<void>): Promise<void> {
  let next = 0;
  const lane = async () => {
    while (next < rounds) {
      const round = next;
      next += 1;
      await work(round);
    }
  };
  await Promise.all([lane(), lane()]);
}

export const rest = (ms: number) => new Promise<void>((over) => setTimeout(over, ms));
