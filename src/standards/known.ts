import type { Known } from '../mechanics/working.ts';

export type { Known };

/**
 * What every row of a table carries: where it stands and how well it is known. `memory` rows give way to a
 * measured value; `proposal` rows are a judgement of this project.
 */
export interface Sourced {
  readonly source: string;
  readonly known: Known;
}

/** Where a wrong figure can cause injury: how many sources of separate origin print it. */
export interface Founded extends Sourced {
  readonly origins: 0 | 1 | 2;
}

const originCount = { 0: 'no printed origin', 1: 'one origin', 2: 'two origins or more' } as const;

/**
 * Where a figure that can hurt stands, with the number of origins in the words a screen shows.
 * @param origins printed sources of separate origin; 2 for two or more
 * @example founded('VDI 2230-1, from memory', 'memory', 0).source //=> 'VDI 2230-1, from memory (no printed origin)'
 */
export const founded = (source: string, known: Known, origins: Founded['origins']): Founded => ({
  source: `${source} (${originCount[origins]})`,
  known,
  origins,
});
