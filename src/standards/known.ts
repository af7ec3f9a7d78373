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
