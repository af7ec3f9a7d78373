import { type Band, band } from '../band.ts';
import { finite, positive } from '../range.ts';

/** Strength over time of an anaerobic joint, in per cent of what the grade reaches in the end. */
export interface CureCurve {
  /** Rising, > 0. */
  readonly atHours: readonly number[];
  /** Per hour column: the least and the most that is reported. */
  readonly percent: readonly (readonly [lo: number, hi: number])[];
}

/** First crossing of `target`, on a scale of log time because cure slows down by the decade. */
function timeAtPercent(curve: CureCurve, target: number, side: 0 | 1): number | null {
  const at = curve.percent.findIndex((point) => point[side] >= target);
  const until = curve.atHours[at];
  if (until === undefined) return null;
  const since = curve.atHours[at - 1];
  // Nothing is known before the first column, so nothing quicker is promised.
  if (since === undefined) return until;
  const below = curve.percent[at - 1]![side];
  const share = (target - below) / (curve.percent[at]![side] - below);
  return since * (until / since) ** share;
}

/**
 * The time in which a joint reaches a share of its strength.
 * @param percent 0 < percent ≤ 100
 * @returns hours as a band; null when the curve's slow side never gets there
 * @throws RangeError when percent is out of range
 * @example hoursToReach({ atHours: [1, 3], percent: [[50, 50], [75, 75]] }, 75) //=> { lo: 3, mid: 3, hi: 3 }
 */
export function hoursToReach(curve: CureCurve, percent: number): Band | null {
  if (!(percent > 0 && percent <= 100)) throw new RangeError(`percent must be 0 < p ≤ 100: ${percent}`);
  const quick = timeAtPercent(curve, percent, 1);
  const slow = timeAtPercent(curve, percent, 0);
  if (quick === null || slow === null) return null;
  const lo = Math.min(quick, slow);
  const hi = Math.max(quick, slow);
  return band(lo, Math.min(hi, Math.max(lo, Math.sqrt(lo * hi))), hi);
}

/**
 * How much longer a cure takes in the cold: twice as long for every 10 °C below 22 °C.
 * Source: rule of thumb, from memory.
 * @example coldFactor(12) //=> 2
 */
export function coldFactor(temperatureC: number): number {
  finite({ temperatureC });
  return 2 ** ((22 - temperatureC) / 10);
}

/**
 * Breakaway torque of the same grade on another thread: six times as much on twice the diameter.
 * Source: supplier's note with M4 2, M8 12 and M16 72 N·m.
 * @param breakawayNm known breakaway torque, N·m, > 0, on a thread of `knownMm`
 * @throws RangeError when an argument is not positive
 * @example breakawayOnThreadNm(2, 4, 8) //=> 12
 */
export function breakawayOnThreadNm(breakawayNm: number, knownMm: number, threadMm: number): number {
  positive({ breakawayNm, knownMm, threadMm });
  return breakawayNm * (threadMm / knownMm) ** Math.log2(6);
}
