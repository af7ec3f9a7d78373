import type { Band } from './band.ts';

/** How a figure is known: read in a public copy, exact by definition, computed here, remembered, or our own judgement. */
export type Known = 'seen' | 'exact' | 'computed' | 'memory' | 'proposal';

/** One figure that went into a computation. */
export interface WorkingInput {
  name: string;
  value: number | Band;
  unit: string;
}

/** A result with everything needed to check it by hand. */
export interface Working {
  result: number | Band;
  unit: string;
  formula: string;
  inputs: WorkingInput[];
  /** Where the formula comes from. */
  source: string;
  /** How the formula is known. */
  known: Known;
}

/** An input written down in a line. @example given('d', 5, 'mm') //=> { name: 'd', value: 5, unit: 'mm' } */
export const given = (name: string, value: number | Band, unit = ''): WorkingInput => ({ name, value, unit });
