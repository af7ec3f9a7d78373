import { type Band, band } from '../band.ts';
import { positive } from '../range.ts';

/**
 * Preload raised by a tightening torque, F = T / (K·d).
 * @param torqueNm tightening torque, N·m, > 0
 * @param diameterMm nominal thread diameter, mm, > 0
 * @param nutFactor K, dimensionless, > 0; it is not a friction coefficient (K 0.20 is a friction of about 0.15)
 * @returns preload, N
 * @throws RangeError when an argument is not finite and positive
 * Source: the short form of every fastener handbook; checked against published torque and preload pairs.
 * @example preloadFromTorqueN(5, 5, 0.2) //=> 5000
 */
export function preloadFromTorqueN(torqueNm: number, diameterMm: number, nutFactor: number): number {
  positive({ torqueNm, diameterMm, nutFactor });
  return (torqueNm * 1000) / (nutFactor * diameterMm);
}

/**
 * Torque that raises a preload, T = K·d·F.
 * @throws RangeError when an argument is not finite and positive
 * @example torqueForPreloadNm(5000, 5, 0.2) //=> 5
 */
export function torqueForPreloadNm(preloadN: number, diameterMm: number, nutFactor: number): number {
  positive({ preloadN, diameterMm, nutFactor });
  return (nutFactor * diameterMm * preloadN) / 1000;
}

/**
 * The preload a torque may have raised: friction and the tool both have a say, so it is a band.
 * @param nutFactor K as a band
 * @param toolError fraction of the reading, 0 ≤ toolError < 1 (0.04 for a wrench within ±4 %)
 * @returns preload, N: lo = T(1−w)/(K.hi·d), mid = T/(K.mid·d), hi = T(1+w)/(K.lo·d)
 * @throws RangeError when an argument is out of range
 * @example preloadBandN(5, 5, { lo: 0.16, mid: 0.2, hi: 0.25 }, 0) //=> { lo: 4000, mid: 5000, hi: 6250 }
 */
export function preloadBandN(torqueNm: number, diameterMm: number, nutFactor: Band, toolError: number): Band {
  if (!(toolError >= 0 && toolError < 1)) throw new RangeError(`toolError must be 0 ≤ w < 1: ${toolError}`);
  return band(
    preloadFromTorqueN(torqueNm * (1 - toolError), diameterMm, nutFactor.hi),
    preloadFromTorqueN(torqueNm, diameterMm, nutFactor.mid),
    preloadFromTorqueN(torqueNm * (1 + toolError), diameterMm, nutFactor.lo),
  );
}
