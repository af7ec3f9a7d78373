import { centsBetween } from './cents.ts';

/** Plucks that make one reading. */
export const PLUCKS = 3;
/** How far apart they may be, cents; own choice, about 1.2 % of tension. */
export const APART_CENTS = 10;
/** So many that do not agree are worth a word about the spoke. */
const MANY = 6;

/** What a series of plucks of one spoke comes to so far. */
export type PluckSeries =
  | { state: 'more'; missing: number }
  /** the last ones scatter: pluck again; `often` after six plucks without a reading */
  | { state: 'again'; scatterCents: number; often: boolean }
  | { state: 'heard'; hz: number; scatterCents: number };

/**
 * The reading of a spoke from its plucks: the median of the last three, once they agree. An outlier drops out as further
 * plucks follow.
 * @param hz pitches in the order heard, each above 0
 * Source: own choice, from the handbook.
 * @example pluckSeries([440, 441, 440.5]) //=> heard, 440.5 Hz
 */
export function pluckSeries(hz: readonly number[]): PluckSeries {
  if (hz.length < PLUCKS) return { state: 'more', missing: PLUCKS - hz.length };
  const last = hz.slice(-PLUCKS).sort((a, b) => a - b);
  const scatterCents = centsBetween(last[0]!, last[PLUCKS - 1]!);
  if (scatterCents > APART_CENTS) return { state: 'again', scatterCents, often: hz.length >= MANY };
  return { state: 'heard', hz: last[PLUCKS >> 1]!, scatterCents };
}
