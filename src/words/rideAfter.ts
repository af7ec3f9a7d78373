import type { Entry } from '../journal/entries.ts';
import { clockText } from './dayText.ts';

const weekday = new Map<string, Intl.DateTimeFormat>();

function dayOfWeek(ms: number, zone: string | undefined): string {
  const key = zone ?? '';
  const format =
    weekday.get(key) ??
    new Intl.DateTimeFormat('en-GB', { weekday: 'short', ...(zone ? { timeZone: zone } : {}) });
  weekday.set(key, format);
  return format.format(ms);
}

/**
 * The hour from which a bike may be ridden.
 * @example curedText(Date.UTC(2026, 4, 3, 21, 6), 'UTC') //=> 'ride after Sun 21:06'
 */
export const curedText = (curedMs: number, zone?: string): string =>
  `ride after ${dayOfWeek(curedMs, zone)} ${clockText(curedMs, zone)}`;

/**
 * From when a bike may be ridden after threadlocker went on: the end of its cure.
 * @param entries what was just logged
 * @param zone the zone to give the hour in; the phone's where it is left out
 * @returns undefined where no threadlocker went on
 * @example rideAfter([{ type: 'locker-applied', happenedAtMs: Date.UTC(2026, 4, 2, 21, 6), waitMs: 86_400_000, … }], 'UTC')
 *   //=> 'ride after Sun 21:06'
 */
export function rideAfter(entries: readonly Entry[], zone?: string): string | undefined {
  const put = entries.findLast((entry) => entry.type === 'locker-applied');
  if (!put) return undefined;
  return curedText(put.happenedAtMs + put.waitMs, zone);
}

/** What an undo bar says, with the hour from which the bike may be ridden where threadlocker went on. */
export const withRideAfter =
  (words: string) =>
  (entries: readonly Entry[]): string => {
    const after = rideAfter(entries);
    return after === undefined ? words : `${words}, ${after}`;
  };
