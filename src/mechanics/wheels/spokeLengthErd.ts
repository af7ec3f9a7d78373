import { inRange } from '../range.ts';
import type { Known } from '../working.ts';

/**
 * Effective rim diameter with two rods or old spokes in opposite holes.
 * @param rodMm length of each rod, from its reference end to where the spoke end shall be, mm, 20 to 400
 * @param gapMm between the two reference ends, mm, 0 to 700
 * @throws RangeError when a figure is out of range
 * Source: tool makers' and wheelbuilders' articles on measuring rims.
 * @example erdFromRodsMm(200, 184) //=> 584
 */
export function erdFromRodsMm(rodMm: number, gapMm: number): number {
  return 2 * inRange('rodMm', rodMm, 20, 400) + inRange('gapMm', gapMm, 0, 700);
}

/**
 * Effective rim diameter from the nipples standing in the rim.
 * @param betweenNipplesMm between the faces where the spokes vanish, mm, 60 to 800
 * @param nippleMm from that face to where the spoke end shall be, mm, 5 to 30
 * @throws RangeError when a figure is out of range
 * Source: wheelbuilders' articles on measuring rims.
 * @example erdFromNipplesMm(560, 12) //=> 584
 */
export function erdFromNipplesMm(betweenNipplesMm: number, nippleMm: number): number {
  return inRange('betweenNipplesMm', betweenNipplesMm, 60, 800) + 2 * inRange('nippleMm', nippleMm, 5, 30);
}

/** Several measurements of one rim, taken a quarter turn or so apart. */
export interface ErdReadings {
  meanMm: number;
  spreadMm: number;
  /** the rim is out of round, or a reading slipped; limit of 1 mm from memory */
  doubtful: boolean;
  limitKnown: Known;
}

const DOUBTFUL_SPREAD_MM = 1;

/**
 * Mean and spread of repeated measurements.
 * @param readingsMm at least one, each 100 to 800 mm
 * @throws RangeError when there is none or one is out of range
 * @example erdFromReadings([584, 584.4]).meanMm //=> 584.2
 */
export function erdFromReadings(readingsMm: readonly number[]): ErdReadings {
  inRange('number of readings', readingsMm.length, 1);
  for (const mm of readingsMm) inRange('readingMm', mm, 100, 800);
  const spreadMm = Math.max(...readingsMm) - Math.min(...readingsMm);
  return {
    meanMm: readingsMm.reduce((sum, mm) => sum + mm, 0) / readingsMm.length,
    spreadMm,
    doubtful: spreadMm > DOUBTFUL_SPREAD_MM,
    limitKnown: 'memory',
  };
}
