import type { Sourced } from '../known.ts';

export interface RotorSizeRow extends Sourced {
  readonly diameterMm: number;
}

const guide = { source: "parts seller's rotor guide", known: 'seen' } as const;

/** Rotor sizes one meets. 200 and 203 are two sizes: the pads of one run 1.5 mm off the track of the other. */
export const rotorSizes: readonly RotorSizeRow[] = [
  { diameterMm: 140, ...guide },
  { diameterMm: 160, ...guide },
  { diameterMm: 180, ...guide },
  { diameterMm: 200, source: 'Q&A on IS adapters: 200 and 203 from the same front mount', known: 'seen' },
  { diameterMm: 203, ...guide },
  { diameterMm: 220, source: 'rotor seller, sizes up to 220', known: 'seen' },
];

export interface RotorMinimumRow extends Sourced {
  readonly minimumMm: number;
}

const article = { source: "workshop tool maker's article on rotor wear", known: 'seen' } as const;

/** Marks read on rotors of three makers. None stands in for a mark that can no longer be read. */
export const rotorMinimums: readonly RotorMinimumRow[] = [
  { minimumMm: 1.5, ...article },
  { minimumMm: 1.52, ...article },
  { minimumMm: 1.55, ...article },
];
