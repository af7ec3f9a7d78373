import { positive } from '../range.ts';

export type TorqueDoubt = 'zero' | 'perhaps-inch-pounds' | 'perhaps-foot-pounds' | 'absurd';
export type TorquePlausibility =
  | { ok: true }
  | {
      ok: false;
      reason: TorqueDoubt /** what it would be had the other inch unit been meant */;
      perhapsNm?: number;
    };

// 1.5 × the 12.9 torque column of a public table (10.4 on M5, 44 on M8) is 0.125 to 0.13 · d³: any screw has yielded.
const YIELDED_NM_PER_MM3 = 0.13;
// About a twentieth of an ordinary 8.8 torque: less than this is not tightening.
const SLACK_NM_PER_MM3 = 0.0025;
/** Cups, lock rings and steerers are thin tubes, wider than any solid screw, mm; the cube law only holds for screws. */
export const SOLID_UP_TO_MM = 16;
// The tightest joints of a bicycle are at 40 to 60 N·m (common practice, no source).
const TIGHT_NM = 120;
const ABSURD_NM = 300;

/**
 * Whether a torque can be meant, before it is written down. A doubt is a question to the person, not a verdict on the joint.
 * A factor 12 lies between in·lbf and ft·lbf, so a figure that only makes sense twelve times smaller or larger is
 * asked about by that name.
 * @param nm torque, N·m, ≥ 0
 * @param threadDiameterMm nominal diameter, mm, > 0; without it only the extremes are noticed
 * @throws RangeError when nm is negative or not finite, or the diameter not positive
 * Source: thresholds are our own proposal, from published 12.9 torques.
 * @example plausibleTorque(500, 5) //=> { ok: false, reason: 'absurd' }
 */
export function plausibleTorque(nm: number, threadDiameterMm?: number): TorquePlausibility {
  // Not the guard of the formulas: a slip of thirteen digits is to be asked about, not thrown.
  if (!(nm >= 0 && nm <= Number.MAX_VALUE)) throw new RangeError(`nm must not be negative: ${nm}`);
  if (threadDiameterMm !== undefined) positive({ threadDiameterMm });
  if (nm === 0) return { ok: false, reason: 'zero' };
  const solid = threadDiameterMm !== undefined && threadDiameterMm <= SOLID_UP_TO_MM;
  const cube = solid ? threadDiameterMm ** 3 : 0;
  const mostNm = solid ? YIELDED_NM_PER_MM3 * cube : TIGHT_NM;
  const leastNm = SLACK_NM_PER_MM3 * cube;
  if (nm > ABSURD_NM && !(solid && nm <= mostNm)) return { ok: false, reason: 'absurd' };
  if (nm > mostNm)
    return nm / 12 <= mostNm / 2 && nm / 12 >= leastNm
      ? { ok: false, reason: 'perhaps-inch-pounds', perhapsNm: nm / 12 }
      : { ok: false, reason: 'absurd' };
  if (nm < leastNm)
    return nm * 12 >= leastNm
      ? { ok: false, reason: 'perhaps-foot-pounds', perhapsNm: nm * 12 }
      : { ok: false, reason: 'absurd' };
  return { ok: true };
}
