import { type Band, band } from '../band.ts';
import { notNegative, positive } from '../range.ts';

/**
 * Diametral interference from two measurements. Both readings may be off, and off in opposite ways, so the
 * band is twice the uncertainty of one reading on each side.
 * @param boreMm measured bore, mm, > 0
 * @param partMm measured outside of the part that goes in, mm, > 0
 * @param uncertaintyMm of one reading, mm, ≥ 0; a good caliper has about 0.03
 * @returns interference, mm; negative is play
 * @throws RangeError when a value is out of range
 * @example measuredInterferenceMm(36.97, 37, 0.01) //=> { lo: 0.01, mid: 0.03, hi: 0.05 }
 */
export function measuredInterferenceMm(boreMm: number, partMm: number, uncertaintyMm: number): Band {
  positive({ boreMm, partMm });
  notNegative({ uncertaintyMm });
  const mid = partMm - boreMm;
  return band(mid - 2 * uncertaintyMm, mid, mid + 2 * uncertaintyMm);
}

/**
 * What a measured interference allows to be said.
 * @example interferenceVerdict({ lo: -0.01, mid: 0.02, hi: 0.05 }) //=> 'cannot-tell'
 */
export function interferenceVerdict(interferenceMm: Band): 'holds-by-press' | 'cannot-tell' | 'slips-in' {
  if (interferenceMm.lo > 0) return 'holds-by-press';
  return interferenceMm.hi <= 0 ? 'slips-in' : 'cannot-tell';
}
