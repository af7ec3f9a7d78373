import { inRange, wholeInRange } from '../range.ts';

/** Holes accepted in one flange: from the smallest child's wheel to tandem and cargo hubs. */
export const FLANGE_HOLES = { fewest: 4, most: 36 } as const;

/**
 * Angle at the axle between a spoke's hub hole and its rim hole, conventional lacing.
 * @param crosses spokes of the same flange that each spoke crosses, 0 (radial) to 9
 * @param flangeHoles holes in this flange, 4 to 36: half of a wheel with equal sides
 * @returns degrees, up to 180
 * @throws RangeError when an argument is out of range or the spoke would go beyond the axle's far side
 * Source: geometry; laying every spoke of whole wheels and counting crossings confirms it.
 * @example crossingAngleDeg(3, 18) //=> 60
 */
export function crossingAngleDeg(crosses: number, flangeHoles: number): number {
  wholeInRange('crosses', crosses, 0, 9);
  wholeInRange('flangeHoles', flangeHoles, FLANGE_HOLES.fewest, FLANGE_HOLES.most);
  return inRange('crossing angle', (crosses * 360) / flangeHoles, 0, 180);
}

/** The two ways to lay a paired wheel: the pair leans into the crossing, or away from it. */
export interface PairedAngles {
  narrowDeg: number;
  wideDeg: number;
}

/**
 * Crossing angles when the holes of a flange, or its rim holes, come in pairs instead of evenly.
 * Also the many-spoked side of a two-to-one wheel: two of every three even rim holes are its own, so its pair
 * gap is the rim's hole spacing.
 * @param crosses 0 to 9
 * @param flangeHoles spokes of this side, 4 to 36
 * @param pairGapDeg angle between the two holes of a pair, degrees, 0 to the even spacing
 * @returns both phasings; turning the hub by a hole changes one into the other
 * @throws RangeError when an argument is out of range
 * Source: geometry; derived here.
 * @example pairedCrossingAnglesDeg(2, 12, 15) //=> { narrowDeg: 52.5, wideDeg: 67.5 }
 */
export function pairedCrossingAnglesDeg(
  crosses: number,
  flangeHoles: number,
  pairGapDeg: number,
): PairedAngles {
  const evenDeg = crossingAngleDeg(crosses, flangeHoles);
  const spacingDeg = 360 / flangeHoles;
  const shiftDeg = (spacingDeg - inRange('pairGapDeg', pairGapDeg, 0, spacingDeg)) / 2;
  return { narrowDeg: Math.abs(evenDeg - shiftDeg), wideDeg: Math.min(180, evenDeg + shiftDeg) };
}

/** Spokes per side of a two-to-one wheel. */
export interface TwoToOne {
  many: number;
  few: number;
  /** rim holes evenly spaced, so the many side's pairs are one rim hole apart */
  pairGapDeg: number;
}

/**
 * How the spokes of a two-to-one wheel divide.
 * @param spokes in all, a multiple of 3, 12 to 54
 * @throws RangeError when they do not divide by three
 * @example twoToOne(24) //=> { many: 16, few: 8, pairGapDeg: 15 }
 */
export function twoToOne(spokes: number): TwoToOne {
  wholeInRange('a third of the spokes', spokes / 3, 4, 18);
  return { many: (spokes / 3) * 2, few: spokes / 3, pairGapDeg: 360 / spokes };
}

/**
 * Angle at the axle between two actual holes: the form that is always right, whatever the drilling.
 * @param rimHoleDeg and hubHoleDeg, both seen from the same side, any finite degrees
 * @returns degrees, 0 to 180
 * @throws RangeError when an angle is not finite
 * @example holeAngleDeg(350, 50) //=> 60
 */
export function holeAngleDeg(rimHoleDeg: number, hubHoleDeg: number): number {
  const apart = Math.abs(inRange('rimHoleDeg', rimHoleDeg) - inRange('hubHoleDeg', hubHoleDeg)) % 360;
  return Math.min(apart, 360 - apart);
}
