import { inRange, wholeInRange } from '../range.ts';

/** Half an inch between rollers: every bicycle chain of the last hundred years (exact by definition). */
export const CHAIN_PITCH_MM = 12.7;

/** Fewest and most teeth accepted: the smallest drivers have 8, and no ring is known above 120. */
export const TEETH = { fewest: 6, most: 120 } as const;

/**
 * Diameter of the circle on which the roller centres of a seated chain lie, d = p / sin(π/N).
 * Neighbouring rollers are one pitch apart in a straight line, so they form a regular polygon.
 * @param teeth whole number, 6 to 120
 * @param pitchMm distance between rollers, mm, 5 to 60
 * @returns pitch diameter, mm
 * @throws RangeError when an argument is out of range
 * Source: regular polygon geometry; half-inch sprocket catalogue tables agree.
 * @example rollerCircleMm(17) //=> 69.116…
 */
export function rollerCircleMm(teeth: number, pitchMm = CHAIN_PITCH_MM): number {
  wholeInRange('teeth', teeth, TEETH.fewest, TEETH.most);
  inRange('pitchMm', pitchMm, 5, 60);
  return pitchMm / Math.sin(Math.PI / teeth);
}
