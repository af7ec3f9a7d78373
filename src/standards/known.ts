/**
 * How a figure got into a table.
 * - `seen`: read on the page named as its source
 * - `exact`: true by definition of a unit
 * - `computed`: follows from rows beside it
 * - `memory`: general knowledge nobody has looked up; a caliper beats it
 * - `proposal`: our own choice where no source speaks
 */
export type Known = 'seen' | 'exact' | 'computed' | 'memory' | 'proposal';

/** What every row of every table carries. */
export interface Sourced {
  source: string;
  known: Known;
}
