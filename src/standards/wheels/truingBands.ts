import type { Sourced } from '../known.ts';

export type TrueWord = 'good' | 'acceptable' | 'over' | 'redo';

/** Up to here a wheel earns a word: full run of the rim over one turn, mm, and how far it stands from the middle. */
export interface TruingBand extends Sourced {
  readonly word: TrueWord;
  readonly lateralMm: number;
  readonly radialMm: number;
  /** rim from the middle between the locknuts */
  readonly dishMm: number;
}

const own = { source: 'our suggestion, between a fine hand build (0.1 and 0.2 mm) and service limits' };

/** From the best word on; what lies beyond the last is to be trued again. */
export const truingBands: readonly TruingBand[] = [
  { word: 'good', lateralMm: 0.3, radialMm: 0.3, dishMm: 0.25, ...own, known: 'proposal' },
  { word: 'acceptable', lateralMm: 0.5, radialMm: 0.5, dishMm: 0.5, ...own, known: 'proposal' },
  { word: 'over', lateralMm: 1, radialMm: 1, dishMm: 1, ...own, known: 'proposal' },
];

/** The most an owner's manual allows before the wheel goes to a workshop, mm. */
export const serviceLimit: Sourced & { mm: number } = {
  mm: 2,
  source: 'owner’s manual of a bicycle maker, wheel run-out',
  known: 'seen',
};

/**
 * The word a run-out or a dish earns.
 * @param what which figure
 * @param mm full run over one turn, or the dish to either side, 0 or more
 * @example truingWord('lateralMm', 0.4) //=> 'acceptable'
 */
export function truingWord(what: 'lateralMm' | 'radialMm' | 'dishMm', mm: number): TrueWord {
  return truingBands.find((band) => Math.abs(mm) <= band[what] + 1e-9)?.word ?? 'redo';
}
