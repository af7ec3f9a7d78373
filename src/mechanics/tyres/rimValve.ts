import { positive } from '../range.ts';

/** Play a valve stem likes in its hole, mm on the diameter; our suggestion around the printed pairs. */
const LEAST_PLAY_MM = 0.2;
const MOST_PLAY_MM = 0.6;

/** Sleeves and stems are measured in tenths; noise of a double must not decide. */
const tenth = (mm: number): number => Math.round(mm * 1e6) / 1e6;

/**
 * Whether a valve stem suits the hole of a rim.
 * @param stemMm diameter of the stem, mm, > 0
 * @param holeMm diameter of the hole, mm, > 0
 * @returns 'fits'; 'sleeve' when the hole is wider; or a reason: a rim is not drilled out to make it fit, since
 *   that weakens narrow rims
 * @throws RangeError when a value is not positive
 * @example valveInHole(6, 8.3) //=> { ok: true, how: 'sleeve', playMm: 2.3 }
 */
export function valveInHole(
  stemMm: number,
  holeMm: number,
):
  | { ok: true; how: 'fits' | 'sleeve'; playMm: number }
  | { ok: false; reason: 'hole-too-small'; playMm: number } {
  positive({ stemMm, holeMm });
  const playMm = tenth(holeMm - stemMm);
  if (playMm < LEAST_PLAY_MM) return { ok: false, reason: 'hole-too-small', playMm };
  return { ok: true, how: playMm <= MOST_PLAY_MM ? 'fits' : 'sleeve', playMm };
}

/** A pump head wants this much of the stem outside, mm. Copy of a valve article. */
const OUTSIDE_MM = 15;

/**
 * Length of a tubeless valve: the shortest on sale that leaves room for the pump.
 * @param rimDepthMm depth of the rim, mm, > 0
 * @param lengthsMm lengths on sale
 * @returns mm, or null when none is long enough
 * @throws RangeError when the depth is not positive
 * @example valveLengthMm(45, [40, 60, 80]) //=> 60
 */
export function valveLengthMm(rimDepthMm: number, lengthsMm: readonly number[]): number | null {
  positive({ rimDepthMm });
  const longEnough = lengthsMm.filter((length) => length >= rimDepthMm + OUTSIDE_MM);
  return longEnough.length > 0 ? Math.min(...longEnough) : null;
}
