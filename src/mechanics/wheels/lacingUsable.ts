import { inRange, wholeInRange } from '../range.ts';
import { crossingAngleDeg, FLANGE_HOLES } from './lacing.ts';
import type { WheelSide } from './spokeLength.ts';

export type LacingConcern =
  /** more crossings than a ninth of the wheel's holes */
  | 'past-ninth'
  /** the spoke would have to bend round the flange */
  | 'past-tangent'
  /** it lies over the head of its neighbour; allowed, but hard to replace and bowed */
  | 'head-overlap'
  /** it enters the rim so far from square that the nipple bends it */
  | 'steep-entry';

/** One crossing number on one flange. */
export interface Lacing {
  crosses: number;
  angleDeg: number;
  /** centre of the next spoke hole to this spoke's line, seen along the axle, mm */
  headClearanceMm: number;
  /** between the spoke and the rim's radius, seen along the axle, degrees */
  rimEntryDeg: number;
  concerns: LacingConcern[];
  /** neither past a ninth nor past the tangent; the other concerns are for the builder to weigh */
  usable: boolean;
}

/** Head radius about 2 and spoke radius 1 mm. Source: from memory. */
const HEAD_CLEARANCE_MM = 3;
/** Nipples are said to bend spokes from 8 to 10° on. Source: from memory; workshop pages show it with large hubs. */
const STEEP_ENTRY_DEG = 10;

/**
 * Largest angle between the two holes at which the spoke still leaves its flange freely: there it is a tangent.
 * @throws RangeError when a figure is out of range
 * Source: right triangle at the tangent point.
 * @example tangentAngleDeg(601, 45) //=> 85.70…
 */
export function tangentAngleDeg(erdMm: number, pcdMm: number): number {
  const rimMm = inRange('erdMm', erdMm, 100, 800);
  return (Math.acos(inRange('pcdMm', pcdMm, 10, Math.min(400, rimMm - 20)) / rimMm) * 180) / Math.PI;
}

/**
 * Every crossing number of a flange, from radial to past the tangent, with what speaks against it. Both tests are
 * needed: a ninth of the holes is a rule for small hubs, and a large one fails at the tangent long before.
 * @param side rim and hole circle, mm
 * @param flangeHoles holes in this flange, 4 to 36
 * @throws RangeError when a figure is out of range
 * Source: a ninth of the holes, wheel-shop lacing table; tangent, clearance and entry angle by plane geometry.
 * @example lacings({ erdMm: 384, pcdMm: 45 }, 18).filter((one) => one.usable).at(-1)?.crosses //=> 4
 */
export function lacings({ erdMm, pcdMm }: Pick<WheelSide, 'erdMm' | 'pcdMm'>, flangeHoles: number): Lacing[] {
  wholeInRange('flangeHoles', flangeHoles, FLANGE_HOLES.fewest, FLANGE_HOLES.most);
  const tangentDeg = tangentAngleDeg(erdMm, pcdMm);
  const rows: Lacing[] = [];
  for (let crosses = 0; crosses <= 9 && (crosses * 360) / flangeHoles <= 100; crosses++) {
    const angleDeg = crossingAngleDeg(crosses, flangeHoles);
    const { headClearanceMm, rimEntryDeg } = seenAlongAxle(erdMm / 2, pcdMm / 2, angleDeg, 360 / flangeHoles);
    const pastNinth = crosses > Math.floor((2 * flangeHoles) / 9);
    const pastTangent = angleDeg > tangentDeg;
    const concerns: LacingConcern[] = [];
    if (pastNinth) concerns.push('past-ninth');
    if (pastTangent) concerns.push('past-tangent');
    if (headClearanceMm < HEAD_CLEARANCE_MM) concerns.push('head-overlap');
    if (rimEntryDeg > STEEP_ENTRY_DEG) concerns.push('steep-entry');
    rows.push({
      crosses,
      angleDeg,
      headClearanceMm,
      rimEntryDeg,
      concerns,
      usable: !pastNinth && !pastTangent,
    });
  }
  return rows;
}

/** Distance of the next hole from the spoke's line, and the angle at the rim, in the plane of the wheel. */
function seenAlongAxle(
  rim: number,
  hub: number,
  angleDeg: number,
  spacingDeg: number,
): Pick<Lacing, 'headClearanceMm' | 'rimEntryDeg'> {
  const angle = (angleDeg * Math.PI) / 180;
  const spacing = (spacingDeg * Math.PI) / 180;
  const flat = Math.sqrt(rim ** 2 + hub ** 2 - 2 * rim * hub * Math.cos(angle));
  const beside = rim * Math.sin(angle) - rim * Math.sin(angle - spacing) - hub * Math.sin(spacing);
  return {
    headClearanceMm: (hub * Math.abs(beside)) / flat,
    rimEntryDeg: (Math.asin((hub * Math.sin(angle)) / flat) * 180) / Math.PI,
  };
}

/**
 * Most crossings that pass both tests.
 * @example mostCrosses({ erdMm: 380, pcdMm: 120 }, 18) //=> 3
 */
export function mostCrosses(side: Pick<WheelSide, 'erdMm' | 'pcdMm'>, flangeHoles: number): number {
  return Math.max(...lacings(side, flangeHoles).flatMap((one) => (one.usable ? [one.crosses] : [])));
}
