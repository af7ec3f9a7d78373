import { positive } from '../range.ts';
import { given, type Working } from '../working.ts';

/** Speeds further off than this spoil a braking run. EN 14766:2005, 4.6.7.5.1. */
const SPEED_TOLERANCE_KMH = 1.5;

const metresPerSecond = (kmh: number): number => kmh / 3.6;

/**
 * Mean deceleration of a stop, a = v² / 2s.
 * @param speedKmh at the first touch of the brake, km/h, > 0
 * @param distanceM to standstill, m, > 0
 * @returns m/s²
 * @throws RangeError when a value is not positive
 * @example meanDecelerationMps2(25, 6) //=> 4.0188
 */
export function meanDecelerationMps2(speedKmh: number, distanceM: number): number {
  positive({ speedKmh, distanceM });
  return metresPerSecond(speedKmh) ** 2 / (2 * distanceM);
}

/**
 * Distance of a stop at a given mean deceleration, m.
 * @example stoppingDistanceM(25, 4) //=> 6.03
 */
export function stoppingDistanceM(speedKmh: number, decelerationMps2: number): number {
  positive({ speedKmh, decelerationMps2 });
  return metresPerSecond(speedKmh) ** 2 / (2 * decelerationMps2);
}

/**
 * What a run at a slightly wrong speed would have been at the right one, Sc = (Vs/Vm)²·Sm.
 * @param measuredM distance of the run, m, > 0
 * @param measuredKmh its speed, km/h, within 1.5 of the one wanted
 * @returns the corrected distance; or the reason the run does not count
 * @throws RangeError when a value is not positive
 * Source: EN 14766:2005 4.6.7.5.1 (public copy).
 * @example correctedDistanceM(6.3, 26, 25) //=> { ok: true, distanceM: 5.825, … }
 */
export function correctedDistanceM(
  measuredM: number,
  measuredKmh: number,
  wantedKmh: number,
): { ok: true; distanceM: number; working: Working } | { ok: false; reason: 'speed-too-far-off' } {
  positive({ measuredM, measuredKmh, wantedKmh });
  if (Math.abs(measuredKmh - wantedKmh) > SPEED_TOLERANCE_KMH)
    return { ok: false, reason: 'speed-too-far-off' };
  const distanceM = (wantedKmh / measuredKmh) ** 2 * measuredM;
  return {
    ok: true,
    distanceM,
    working: {
      result: distanceM,
      unit: 'm',
      formula: 'Sc = (Vs / Vm)² · Sm',
      inputs: [
        given('measured distance Sm', measuredM, 'm'),
        given('measured speed Vm', measuredKmh, 'km/h'),
        given('speed wanted Vs', wantedKmh, 'km/h'),
      ],
      source: 'EN 14766:2005 4.6.7.5.1, public copy',
      known: 'seen',
    },
  };
}

/** A stop some rule asks for. */
export interface StopFigure {
  readonly fromKmh: number;
  readonly withinM: number;
}

/**
 * A stop beside a published one, by mean deceleration, so that speeds need not agree.
 * @returns share of the deceleration asked for; 1 or more is as good or better
 * @throws RangeError when a value is not positive
 * @example stopCompared({ fromKmh: 25, withinM: 7 }, 20, 5) //=> 0.896
 */
export function stopCompared(figure: StopFigure, speedKmh: number, distanceM: number): number {
  return meanDecelerationMps2(speedKmh, distanceM) / meanDecelerationMps2(figure.fromKmh, figure.withinM);
}
