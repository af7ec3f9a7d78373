import { finite, notNegative } from '../range.ts';

/** Where the hands are, seen from the middle of the clamp, bike level. */
export interface HandPlace {
  /** Upwards, mm; a bar with drop counts negative. */
  riseMm: number;
  /** Forwards, mm; a swept-back bar counts negative. */
  reachMm: number;
}

/** What both hands together put on the grips. */
export interface HandForce {
  /** Downwards, N; pulling up on the bar counts negative. */
  downN: number;
  /** Forwards, N; pulling back counts negative. */
  forwardN: number;
}

/**
 * Moment with which the rider turns the bar in its clamp, positive turning the grips forwards and down.
 * @returns N·m
 * @throws RangeError when a figure is not finite
 * Source: statics, M = down·reach + forward·rise.
 * @example riderMomentNm({ riseMm: 200, reachMm: -50 }, { downN: 0, forwardN: -400 }) //=> -80
 */
export function riderMomentNm({ riseMm, reachMm }: HandPlace, { downN, forwardN }: HandForce): number {
  finite({ riseMm, reachMm, downN, forwardN });
  return (downN * reachMm + forwardN * riseMm) / 1000;
}

/**
 * The largest moment a force of that size can have, whichever way it points: force × straight distance.
 * @param forceN both hands together, N, ≥ 0
 * @returns N·m
 * @example worstRiderMomentNm({ riseMm: 200, reachMm: 0 }, 400) //=> 80
 */
export function worstRiderMomentNm({ riseMm, reachMm }: HandPlace, forceN: number): number {
  finite({ riseMm, reachMm });
  notNegative({ forceN });
  return (forceN * Math.hypot(riseMm, reachMm)) / 1000;
}
