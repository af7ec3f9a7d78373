import { inRange } from '../range.ts';
import type { Known } from '../working.ts';

/**
 * Chainline at the back: middle plane of the bike to the middle of the sprocket teeth.
 * @param overLocknutMm width over the locknuts, mm, 70 to 250
 * @param faceToToothMm drive-side locknut face inward to the middle of the teeth, mm, 0 to 125
 * @returns mm, positive to the drive side
 * @throws RangeError when an argument is out of range
 * Source: definition; cycling forum, worked example with a 135 mm hub.
 * @example rearChainlineMm(135, 16.5) //=> 51
 */
export function rearChainlineMm(overLocknutMm: number, faceToToothMm: number): number {
  return (
    inRange('overLocknutMm', overLocknutMm, 70, 250) / 2 - inRange('faceToToothMm', faceToToothMm, 0, 125)
  );
}

/**
 * Chainline at the front, by ruler from the seat tube, which stands in the middle plane.
 * @param seatTubeMm outer diameter of the seat tube, mm, 20 to 80
 * @param gapMm tube's outside to the middle of the ring's teeth, mm, 0 to 100
 * @returns mm
 * @throws RangeError when an argument is out of range
 * Source: definition; cycling forum, worked example (radius 15 mm and 27.5 mm).
 * @example frontChainlineMm(30, 27.5) //=> 42.5
 */
export function frontChainlineMm(seatTubeMm: number, gapMm: number): number {
  return inRange('seatTubeMm', seatTubeMm, 20, 80) / 2 + inRange('gapMm', gapMm, 0, 100);
}

/**
 * Angle of a chain between a ring and a sprocket that are not in one plane.
 * @param offsetMm front chainline less rear chainline, mm, −100 to 100
 * @param spanMm straight run of the chain, mm, 50 to 2000; the axle distance is near enough
 * @returns degrees, with the sign of the offset
 * @throws RangeError when an argument is out of range
 * Source: right triangle.
 * @example chainAngleDeg(3, 400) //=> 0.4297…
 */
export function chainAngleDeg(offsetMm: number, spanMm: number): number {
  const slope = inRange('offsetMm', offsetMm, -100, 100) / inRange('spanMm', spanMm, 50, 2000);
  return (Math.atan(slope) * 180) / Math.PI;
}

export type ChainlineJudgement = 'straight' | 'usable' | 'noticeable' | 'too-far';

/** Greatest offset of each judgement on a single-speed drive, mm. Source: from memory; a couple of millimetres is called fine on a forum. */
const LIMITS_MM: [ChainlineJudgement, number][] = [
  ['straight', 1],
  ['usable', 3],
  ['noticeable', 5],
];

/**
 * What an offset means for a chain that cannot change sprockets.
 * @param offsetMm front chainline less rear chainline, mm, either sign
 * @throws RangeError when the offset is not finite
 * Source: limits from memory, marked so.
 * @example judgeChainline(-2) //=> { judgement: 'usable', known: 'memory' }
 */
export function judgeChainline(offsetMm: number): { judgement: ChainlineJudgement; known: Known } {
  const away = Math.abs(inRange('offsetMm', offsetMm));
  const judgement = LIMITS_MM.find(([, limitMm]) => away <= limitMm)?.[0] ?? 'too-far';
  return { judgement, known: 'memory' };
}
