import { inRange, wholeInRange } from '../range.ts';
import { spokeSpanMm, type WheelSide } from './spokeLength.ts';

/** One side of a laced wheel. */
export interface LacedSide extends WheelSide {
  spokes: number;
  crossingDeg: number;
}

/**
 * Lean of a spoke out of the plane of the wheel; more of it holds the rim straighter.
 * @returns degrees
 * @throws RangeError when a figure is out of range
 * Source: right triangle of flange distance and unshortened spoke.
 * @example bracingAngleDeg({ erdMm: 384, pcdMm: 45, flangeMm: 34 }, 60) //=> 10.593…
 */
export function bracingAngleDeg(side: WheelSide, crossingDeg: number): number {
  return (Math.asin(side.flangeMm / spokeSpanMm(side, crossingDeg)) * 180) / Math.PI;
}

/** Sideways pull of one side for each newton in its spokes. */
const sidePull = (side: LacedSide): number =>
  (wholeInRange('spokes', side.spokes, 4, 36) * side.flangeMm) / spokeSpanMm(side, side.crossingDeg);

export type SideTensions =
  | { ok: true; leftN: number; driveN: number; leftPerDrive: number; tighter: 'left' | 'drive' | 'even' }
  /** a flange at or beyond the rim's plane: both sides pull the same way and nothing holds the rim */
  | { ok: false; reason: 'flange-beyond-rim' };

/**
 * Tension of the left side over that of the drive side when the rim stands still.
 * @param left and drive: each flange on its own side of the rim, `flangeMm` above 0
 * @throws RangeError when a figure is out of range or a flange is at or beyond the rim's plane
 * Source: zero net side force; a dissertation on bicycle wheels has the same balance.
 * @example tensionRatio({ erdMm: 384, pcdMm: 45, flangeMm: 34, spokes: 18, crossingDeg: 60 }, { erdMm: 384, pcdMm: 45, flangeMm: 20, spokes: 18, crossingDeg: 60 }) //=> 0.5948…
 */
export function tensionRatio(left: LacedSide, drive: LacedSide): number {
  inRange('left flangeMm', left.flangeMm, Number.MIN_VALUE);
  inRange('drive flangeMm', drive.flangeMm, Number.MIN_VALUE);
  return sidePull(drive) / sidePull(left);
}

/**
 * Tension of both sides when the tighter one is set to a target. The target always belongs to the tighter side,
 * or its limit is broken on the other.
 * @param tighterN target of the tighter side, N, above 0 to 3000
 * @throws RangeError when a figure is out of range
 * @example sideTensions(1200, left, drive) //=> left 714 N, drive 1200 N for the wheel of `tensionRatio`
 */
export function sideTensions(tighterN: number, left: LacedSide, drive: LacedSide): SideTensions {
  inRange('tighterN', tighterN, 1, 3000);
  if (left.flangeMm <= 0 || drive.flangeMm <= 0) return { ok: false, reason: 'flange-beyond-rim' };
  const leftPerDrive = tensionRatio(left, drive);
  // Below a thousandth no gauge tells the sides apart.
  const tighter = Math.abs(leftPerDrive - 1) < 0.001 ? 'even' : leftPerDrive > 1 ? 'left' : 'drive';
  return leftPerDrive > 1
    ? { ok: true, leftN: tighterN, driveN: tighterN / leftPerDrive, leftPerDrive, tighter }
    : { ok: true, leftN: tighterN * leftPerDrive, driveN: tighterN, leftPerDrive, tighter };
}
