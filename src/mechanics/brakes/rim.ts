import { notNegative, positive } from '../range.ts';
import type { WearVerdict } from './rotor.ts';

/** Wheel builder's note and riders' forum: replace at 1.00 mm; new walls have about 1.5. */
const WALL_LIMIT_MM = 1;
const WALL_NEW_MM = 1.5;
/** Watched below this; our suggestion. */
const WALL_NEAR_MM = 1.2;

/**
 * Wear of a rim brake's track. Kilometres tell nothing: one rider's rim lasted 50 000 km, another's 500 in the wet.
 * @param wallMm thinnest spot of the side wall, mm, ≥ 0
 * @param damaged bulged, hollow to the straightedge, cracked, or its wear mark is gone
 * @throws RangeError when the wall is negative
 * @example rimWear(1.2, false).wear //=> 'watch'
 */
export function rimWear(wallMm: number, damaged: boolean): WearVerdict {
  notNegative({ wallMm });
  const leftMm = Math.round((wallMm - WALL_LIMIT_MM) * 1e6) / 1e6;
  if (damaged) return { wear: 'replace', reason: 'bulged-or-indicator-gone', leftMm };
  if (leftMm <= 0) return { wear: 'replace', reason: 'at-limit', leftMm };
  return wallMm <= WALL_NEAR_MM
    ? { wear: 'watch', reason: 'near-limit', leftMm }
    : { wear: 'good', reason: 'within-limits', leftMm };
}

/**
 * Strength of a worn wall against a new one: it goes with the cube of the thickness.
 * Source: wheel builder's note.
 * @example wallStrengthLeft(1) //=> 0.296
 */
export function wallStrengthLeft(wallMm: number, newMm: number = WALL_NEW_MM): number {
  notNegative({ wallMm });
  positive({ newMm });
  return (wallMm / newMm) ** 3;
}
