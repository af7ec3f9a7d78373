import { type Band, scaled } from '../band.ts';
import { positive } from '../range.ts';

/** How far up the screw is loaded; judged by the upper end of the band, because that is the end that breaks. */
export type PreloadVerdict = 'low' | 'ordinary' | 'high' | 'near-proof' | 'beyond-proof';

/** Load a screw carries without lasting stretch, N. @example proofLoadN(14.2, 580) //=> 8236 */
export function proofLoadN(stressAreaMm2: number, proofMPa: number): number {
  positive({ stressAreaMm2, proofMPa });
  return stressAreaMm2 * proofMPa;
}

/** Least load at which a screw breaks, N. @example ultimateLoadN(14.2, 800) //=> 11360 */
export function ultimateLoadN(stressAreaMm2: number, tensileMPa: number): number {
  positive({ stressAreaMm2, tensileMPa });
  return stressAreaMm2 * tensileMPa;
}

/**
 * Preload as a share of the proof load, and what to make of it.
 * @param preloadN band, N
 * @param proofN proof load of the weakest screw the joint may hold, N, > 0
 * @returns the share as a band; `ordinary` up to 0.75 (the usual choice for a screw that is used again), `high` up to
 *   0.9, `near-proof` up to 1, `beyond-proof` above; `low` when even the upper end stays under 0.3 and the joint lives from friction
 * @throws RangeError when the proof load is not positive
 * Source: 0.75 and 0.9 of the proof load, engine manual and the textbook Mechanical Engineering Design; the 0.3 is our own proposal.
 * @example preloadUse({ lo: 3500, mid: 5000, hi: 6500 }, 8230).verdict //=> 'high'
 */
export function preloadUse(preloadN: Band, proofN: number): { share: Band; verdict: PreloadVerdict } {
  positive({ proofN });
  const share = scaled(preloadN, 1 / proofN);
  if (share.hi > 1) return { share, verdict: 'beyond-proof' };
  if (share.hi > 0.9) return { share, verdict: 'near-proof' };
  if (share.hi > 0.75) return { share, verdict: 'high' };
  return { share, verdict: share.hi < 0.3 ? 'low' : 'ordinary' };
}
