import { inRange } from '../range.ts';

/** One side of a wheel whose spokes have no elbow. */
export interface StraightPullSide {
  /** effective rim diameter, mm */
  erdMm: number;
  /** diameter of the circle on which the heads sit, mm */
  headCircleMm: number;
  /** shortest distance from the axle's centre to the line of the spoke, seen along the axle, mm */
  lineOffsetMm: number;
  /** middle of the heads to the plane of this side's rim holes, along the axle, mm */
  flangeMm: number;
  /** where the head sits on its line: on the rim's side of the place nearest the axle, or beyond it */
  head: 'rim-side' | 'far-side';
}

/**
 * Length of a straight-pull spoke; no half hole comes off, since there is no elbow.
 * @param side rim 100 to 800 mm, head circle 10 to 400 mm, line offset 0 to half the head circle
 * @returns mm, from the seat of the head
 * @throws RangeError when a figure is out of range
 * Source: right triangles on the spoke's line; derived here.
 * @example straightPullLengthMm({ erdMm: 601, headCircleMm: 50, lineOffsetMm: 21, flangeMm: 30, head: 'rim-side' }) //=> 287.769…
 */
export function straightPullLengthMm(side: StraightPullSide): number {
  const rim = inRange('erdMm', side.erdMm, 100, 800) / 2;
  const seat = inRange('headCircleMm', side.headCircleMm, 10, Math.min(400, side.erdMm - 20)) / 2;
  const off = inRange('lineOffsetMm', side.lineOffsetMm, 0, seat);
  const flange = inRange('flangeMm', side.flangeMm, -150, 150);
  const toHead = Math.sqrt(seat ** 2 - off ** 2) * (side.head === 'rim-side' ? 1 : -1);
  return Math.hypot(Math.sqrt(rim ** 2 - off ** 2) - toHead, flange);
}
