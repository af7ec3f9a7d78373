import { inRange } from '../range.ts';
import type { SpokePiece } from './spokeLengthCorrections.ts';

/** Where a spoke starts and ends, seen along the axle; both angles from one line, one way round. */
export interface SpokeHoles {
  hubDeg: number;
  rimDeg: number;
}

/** The two circles a side of a wheel is laced between. */
export interface LacingCircles {
  pcdMm: number;
  erdMm: number;
}

const at = (diameterMm: number, deg: number): [number, number] => [
  (diameterMm / 2) * Math.cos((deg * Math.PI) / 180),
  (diameterMm / 2) * Math.sin((deg * Math.PI) / 180),
];

/**
 * Where along a spoke another one of its side crosses it, seen along the axle.
 * @param circles hole circle 10 to 400 mm, rim 100 to 800 mm and larger
 * @returns share of the spoke from its hub end, 0 to 1; null when they do not cross between hub and rim
 * @throws RangeError when a figure is out of range
 * Source: two lines in a plane; derived here.
 * @example crossingShare({ pcdMm: 45, erdMm: 384 }, { hubDeg: 0, rimDeg: 60 }, { hubDeg: 100, rimDeg: 40 }) //=> 0.3408
 */
export function crossingShare(circles: LacingCircles, own: SpokeHoles, other: SpokeHoles): number | null {
  const erdMm = inRange('erdMm', circles.erdMm, 100, 800);
  const pcdMm = inRange('pcdMm', circles.pcdMm, 10, Math.min(400, erdMm));
  const [[x, y], [rimX, rimY]] = [at(pcdMm, inRange('hubDeg', own.hubDeg)), at(erdMm, own.rimDeg)];
  const [[otherX, otherY], [endX, endY]] = [at(pcdMm, other.hubDeg), at(erdMm, other.rimDeg)];
  const [alongX, alongY] = [rimX - x, rimY - y];
  const [acrossX, acrossY] = [endX - otherX, endY - otherY];
  const turn = alongX * acrossY - alongY * acrossX;
  if (Math.abs(turn) < 1e-9) return null;
  const share = ((otherX - x) * acrossY - (otherY - y) * acrossX) / turn;
  const shareOfOther = ((otherX - x) * alongY - (otherY - y) * alongX) / turn;
  const inside = (value: number) => value > 1e-9 && value < 1 - 1e-9;
  return inside(share) && inside(shareOfOther) ? share : null;
}

/** The last spoke that a spoke crosses on its way out, and where. */
export interface OutermostCrossing<Spoke> {
  partner: Spoke;
  /** from the hub end, 0 to 1 */
  share: number;
}

/**
 * The crossing farthest from the hub: where laced spokes touch.
 * @param others the spokes of the same flange; the spoke itself may be among them
 * @returns null for a radial spoke
 * @throws RangeError when a figure is out of range
 * @example outermostCrossing(circles, side[0], side)?.share //=> 0.3408 on a 36-spoke 20-inch wheel laced 3-cross
 */
export function outermostCrossing<Spoke extends SpokeHoles>(
  circles: LacingCircles,
  own: SpokeHoles,
  others: readonly Spoke[],
): OutermostCrossing<Spoke> | null {
  let last: OutermostCrossing<Spoke> | null = null;
  for (const partner of others) {
    const share = partner === own ? null : crossingShare(circles, own, partner);
    if (share !== null && share > (last?.share ?? 0)) last = { partner, share };
  }
  return last;
}

/**
 * What is left of a spoke from its outermost crossing to the nipple.
 * @param pieces from the hub to the nipple, each 0.1 to 400 mm
 * @param share of the crossing from the hub end, 0 to 0.95
 * @returns the pieces beyond it
 * @throws RangeError when a figure is out of range
 * @example outerPieces([{ lengthMm: 180, diameterMm: 2 }], 0.3408) //=> [{ lengthMm: 118.656, diameterMm: 2 }]
 */
export function outerPieces(pieces: readonly SpokePiece[], share: number): SpokePiece[] {
  inRange('share', share, 0, 0.95);
  const whole = pieces.reduce((sum, { lengthMm }) => sum + inRange('lengthMm', lengthMm, 0.1, 400), 0);
  let offMm = whole * share;
  return pieces.flatMap(({ lengthMm, diameterMm }) => {
    const left = Math.min(lengthMm, lengthMm - offMm);
    offMm = Math.max(0, offMm - lengthMm);
    return left > 0.1 ? [{ lengthMm: left, diameterMm }] : [];
  });
}

/** Thick ends of a butted spoke, mm: 71 mm together as a dissertation measured; how they divide is assumed. */
const THICK_ENDS_MM = { hub: 30, rim: 41 } as const;

/**
 * A butted spoke as its three pieces; a plain one as one.
 * @param lengthMm 80 to 400 mm where it is butted
 * @param thinMm its middle, 1 to 4 mm
 * @param thickMm its ends; the same as the middle for a plain spoke
 * @throws RangeError when a figure is out of range
 * Source: a dissertation on bicycle wheels measured 71 mm of thick ends; their division is an assumption.
 * @example buttedPieces(184, 1.8, 2) //=> 30 mm of 2, 113 mm of 1.8, 41 mm of 2
 */
export function buttedPieces(lengthMm: number, thinMm: number, thickMm = thinMm): SpokePiece[] {
  if (thinMm === thickMm) return [{ lengthMm, diameterMm: thinMm }];
  inRange('lengthMm', lengthMm, 80, 400);
  inRange('thinMm', thinMm, 1, 4);
  inRange('thickMm', thickMm, 1, 4);
  const { hub, rim } = THICK_ENDS_MM;
  return [
    { lengthMm: hub, diameterMm: thickMm },
    { lengthMm: lengthMm - hub - rim, diameterMm: thinMm },
    { lengthMm: rim, diameterMm: thickMm },
  ];
}
