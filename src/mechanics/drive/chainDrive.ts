import { inRange } from '../range.ts';
import { CHAIN_PITCH_MM, rollerCircleMm } from './pitchDiameter.ts';

/** A ring, a sprocket and the chain's pitch: all that fixes a chain line besides the distance. */
export interface ChainDrive {
  ringTeeth: number;
  sprocketTeeth: number;
  /** mm; half an inch unless said otherwise */
  pitchMm?: number;
}

/** The shape of the taut chain at one axle position. */
export interface ChainPath {
  /** straight run between the last seated rollers, mm; upper and lower are alike */
  spanMm: number;
  /** slope of each run against the line of centres, radians; positive when the ring is the larger */
  slopeRad: number;
  ringWrapDeg: number;
  sprocketWrapDeg: number;
  /** teeth the chain wraps, fractions included, as a share of the wrap angle */
  ringWrapTeeth: number;
  sprocketWrapTeeth: number;
}

/** Longest spindle-to-axle distance taken for a bicycle: a long-tail tandem stays well below. */
export const FARTHEST_AXLE_MM = 2000;

/** Pitch radii of ring and sprocket, mm. */
function radiiMm({ ringTeeth, sprocketTeeth, pitchMm = CHAIN_PITCH_MM }: ChainDrive): [number, number] {
  return [rollerCircleMm(ringTeeth, pitchMm) / 2, rollerCircleMm(sprocketTeeth, pitchMm) / 2];
}

/**
 * Nearest axle position the geometry allows: there the two pitch circles touch.
 * @param drive 6 to 120 teeth each
 * @returns spindle-to-axle distance, mm
 * @throws RangeError when teeth or pitch are out of range
 * @example closestAxleMm({ ringTeeth: 36, sprocketTeeth: 15 }) //=> 103.399…
 */
export function closestAxleMm(drive: ChainDrive): number {
  const [ringMm, sprocketMm] = radiiMm(drive);
  return ringMm + sprocketMm;
}

/**
 * Runs and wraps of a taut chain: the belt tangent to both pitch circles.
 * @param drive 6 to 120 teeth each
 * @param axleMm spindle centre to axle centre, mm, from `closestAxleMm` to 2000
 * @throws RangeError when an argument is out of range
 * Source: tangent geometry of two circles.
 * @example chainPath({ ringTeeth: 36, sprocketTeeth: 15 }, 400).sprocketWrapDeg //=> 167.8…
 */
export function chainPath(drive: ChainDrive, axleMm: number): ChainPath {
  const [ringMm, sprocketMm] = radiiMm(drive);
  inRange('axleMm', axleMm, ringMm + sprocketMm, FARTHEST_AXLE_MM);
  const stepMm = ringMm - sprocketMm;
  const slopeRad = Math.asin(stepMm / axleMm);
  const ringShare = 0.5 + slopeRad / Math.PI;
  const sprocketShare = 0.5 - slopeRad / Math.PI;
  return {
    spanMm: Math.sqrt(axleMm ** 2 - stepMm ** 2),
    slopeRad,
    ringWrapDeg: 360 * ringShare,
    sprocketWrapDeg: 360 * sprocketShare,
    ringWrapTeeth: drive.ringTeeth * ringShare,
    sprocketWrapTeeth: drive.sprocketTeeth * sprocketShare,
  };
}
