import type { Entry, Id } from '../../../src/journal/entries.ts';
import type { From, Written } from './acts.ts';
import type { Dice } from './dice.ts';
import type { ModelAnswers } from './modelAnswers.ts';
import { field } from './reading.ts';

export const MINUTE = 60_000;
export const HOUR = 60 * MINUTE;
export const DAY = 24 * HOUR;

/** What a throw may build on. */
export interface World {
  model: ModelAnswers;
  given: ReadonlyMap<number, Entry[]>;
  dice: Dice;
  /** What the last act ran, for a second tap on the same thing. */
  last?: Written | undefined;
  /** How many acts there were; numbers what is new. */
  acts: number;
  /** Whether this logbook takes lists. */
  lists: boolean;
}

export const nm = (value: number) => ({ value, unit: 'N.m', typed: String(value) });
export const mm = (value: number) => ({ value, unit: 'mm', typed: String(value) });

/** A value of an entry, as what it is taken from; itself where no act gave it. */
export function taken({ given }: World, name: string, id: Id): From | Id {
  for (const [act, entries] of given) {
    const place = entries.findIndex((entry) => field(entry, name) === id);
    if (place >= 0) return { from: [act, place, name] };
  }
  return id;
}

export type Throw = (world: World) => Written | undefined;

export const one = <A>({ dice }: World, answers: Map<Id, A>, fits: (answer: A) => boolean = () => true) =>
  dice.pick([...answers].filter(([, answer]) => fits(answer)));

/** Mostly a joint that is not apart. */
export const aJoint = (world: World) =>
  one(world, world.model.joints, ({ state }) => state !== 'apart' || world.dice.chance(0.15));
export const aBike = (world: World) => world.dice.pick([...world.model.bikes.keys()]);
