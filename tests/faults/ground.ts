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
  /** Whether the minutes asked for are over: nothing new is begun then. */
  over(): boolean;
}

export interface Attack {
  name: string;
  /** What is done to the product, in one line. */
  about: string;
  /** False for an attack that only tells what the browser does; it runs when it is asked for by name. */
  counted: boolean;
  run(ground: Ground): Promise<void>;
}

/**
 * One round of an attack. One that cannot be carried out to its end proves nothing, so it counts as wrong; the next
 * rounds are run all the same.
 */
export async function inRound(
  where: string,
  { finds, over }: Ground,
  work: () => Promise<void>,
): Promise<void> {
  if (over()) return;
  try {
    await work();
  } catch (thrown) {
    finds.attacked(where, { lost: [], wrong: [`it broke off: ${(thrown as Error).stack}`] });
  }
}

/** Does the same work in two lanes beside each other: as many browsers as the machine has cores. */
export async function inLanes(
  rounds: number,
  ground: Ground,
  work: (round: number) => Promise<void>,
): Promise<void> {
  let next = 0;
  const lane = async () => {
    while (next < rounds) {
      const round = next;
      next += 1;
      await inRound(`round ${round}`, ground, () => work(round));
    }
  };
  await Promise.all([lane(), lane()]);
}

export const rest = (ms: number) => new Promise<void>((over) => setTimeout(over, ms));
