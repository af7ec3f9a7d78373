import { addDays } from 'date-fns/addDays';

/**
 * The instant at which a span counted in days is over. Days are calendar days of the phone's zone: a
 * re-check set at nine in the morning falls due at nine, also across a change of the clocks.
 * @param fromMs start, ms since 1970 UTC
 * @param days whole or broken days, 0 or more; undefined when the task does not fall due by time
 * @returns due instant in ms, or undefined
 * @throws RangeError when days is negative or not finite
 * @example timeDueMs(Date.UTC(2026, 4, 3, 12), 1) //=> Date.UTC(2026, 4, 4, 12)
 */
export function timeDueMs(fromMs: number, days: number | undefined): number | undefined {
  if (days === undefined) return undefined;
  if (!Number.isFinite(days) || days < 0) throw new RangeError(`days must be 0 or more, got ${days}`);
  const whole = Math.floor(days);
  return addDays(fromMs, whole).getTime() + Math.round((days - whole) * 86_400_000);
}
