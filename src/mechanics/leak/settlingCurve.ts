import { heights, type LeakReading } from './leakFit.ts';
import { type SettlingFit, settlingFit } from './settlingFit.ts';

export interface SettlingCurve extends SettlingFit {
  /** Loss that stays once it has settled, share of the pressure per hour. */
  staysPerHour: number;
}

/**
 * A leak that seals: ln p = ln p0 − k·t − D·(1 − e^(−t/τ)).
 * @param readings of one leak, in the order of time
 * @returns undefined while too few readings or no settling is in them
 * @example settlingCurve(sealingSet).staysPerHour //=> 0.0013
 */
export function settlingCurve(readings: readonly LeakReading[]): SettlingCurve | undefined {
  const hours = readings.map((one) => one.hours);
  const columns = [...heights(readings), hours];
  // One factor for the depth and the rate itself.
  if (readings.length < columns.length + 2 || !hours.some((hour) => hour > 0)) return undefined;
  const fit = settlingFit(
    columns,
    hours,
    readings.map(({ bar }) => Math.log(bar)),
    readings.map(({ bar, sigmaBar }) => sigmaBar / bar),
  );
  return fit && { ...fit, staysPerHour: -fit.factors.at(-2)! };
}
