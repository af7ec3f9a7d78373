import { type Band, scaled } from '../band.ts';
import { positive } from '../range.ts';

/**
 * How far up the screw is loaded; judged by the upper end of the band, because that is the end that breaks.
 * Bands are wide and overlap the proof load on everyday joints, so one that is beyond it over most of its width is told from
 * one that only reaches past it.
 */
export type PreloadVerdict = 'low' | 'ordinary' | 'high' | 'near-proof' | 'partly-beyond' | 'beyond-proof';

export interface PreloadUse {
  /** Preload as a fraction of the proof load. */
  readonly share: Band;
  /** Part of the width of the band that lies beyond the proof load, 0 to 1. */
  readonly beyond: number;
  readonly verdict: PreloadVerdict;
}

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
 *   0.9, `near-proof` up to 1, above it `partly-beyond` while no more than half of the band is beyond and `beyond-proof`
 *   when more is; `low` when even the upper end stays under 0.3 and the joint relies on friction
 * @throws RangeError when the proof load is not positive
 * Source: 0.75 and 0.9 of the proof load, engine manual and the textbook Mechanical Engineering Design; the 0.3 and the
 *   half of the band are our own proposals.
 * @example preloadUse({ lo: 3500, mid: 5000, hi: 6500 }, 8230).verdict //=> 'high'
 */
export function preloadUse(preloadN: Band, proofN: number): PreloadUse {
  positive({ proofN });
  const share = scaled(preloadN, 1 / proofN);
  const { lo, hi } = share;
  const beyond = hi <= 1 ? 0 : lo >= 1 ? 1 : (hi - 1) / (hi - lo);
  if (beyond > 0) return { share, beyond, verdict: beyond > 0.5 ? 'beyond-proof' : 'partly-beyond' };
  if (hi > 0.9) return { share, beyond, verdict: 'near-proof' };
  if (hi > 0.75) return { share, beyond, verdict: 'high' };
  return { share, beyond, verdict: hi < 0.3 ? 'low' : 'ordinary' };
}
