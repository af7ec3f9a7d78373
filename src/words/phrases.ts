import { bareNumber } from '../mechanics/numberText.ts';
import { type AnyUnit, type Typed, unitLabel } from '../mechanics/units.ts';

/**
 * A quantity as it was typed, with its unit behind it unless the hand wrote one.
 * @example quantityWords({ value: 5.2, unit: 'N.m', typed: '5,2' }) //=> '5,2 N·m'
 */
export function quantityWords({ typed, unit }: Typed<AnyUnit>): string {
  const hasUnit = /[\p{L}°"″]$/u.test(typed.trim());
  return hasUnit ? typed.trim() : `${typed.trim()} ${unitLabel[unit]}`;
}

/** A number for a sentence, with at most one decimal. @example numberWords(8.25) //=> '8.3' */
export function numberWords(value: number): string {
  return bareNumber(value, 1);
}

/** @example countWords(2, 'ride') //=> '2 rides' */
export function countWords(count: number, one: string, many = `${one}s`): string {
  return `${numberWords(count)} ${count === 1 ? one : many}`;
}

/** Entries and photos, as far as there are any. @example countedWords({ entries: 2, photos: 1 }) //=> '2 entries and 1 photo' */
export function countedWords({ entries, photos }: { entries: number; photos: number }): string {
  return [
    ...(entries > 0 || photos === 0 ? [countWords(entries, 'entry', 'entries')] : []),
    ...(photos > 0 ? [countWords(photos, 'photo')] : []),
  ].join(' and ');
}

/** @example listWords(['fork', 'stem', 'shim']) //=> 'fork, stem and shim' */
export function listWords(items: readonly string[]): string {
  if (items.length < 2) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

/**
 * A span in days, hours and minutes, written out.
 * @param ms span, ms, ≥ 0
 * @example spanInWords(93_600_000) //=> '1 day and 2 hours'
 */
export function spanInWords(ms: number): string {
  const minutes = Math.max(0, Math.round(ms / 60_000));
  const parts: [number, string][] = [
    [Math.floor(minutes / 1440), 'day'],
    [Math.floor((minutes % 1440) / 60), 'hour'],
    [minutes % 60, 'minute'],
  ];
  const named = parts.filter(([count]) => count > 0).map(([count, unit]) => countWords(count, unit));
  return named.length === 0 ? 'less than a minute' : listWords(named);
}

const days = new Map<string, Intl.DateTimeFormat>();

/**
 * A calendar day in the zone it was lived in.
 * @example dayWords(Date.UTC(2026, 4, 3, 23), 'Pacific/Apia') //=> '4 May 2026'
 */
export function dayWords(ms: number, zone: string): string {
  let format = days.get(zone);
  if (!format) {
    format = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: zone });
    days.set(zone, format);
  }
  return format.format(ms);
}

/**
 * Typed words, set behind a lead so that they end as part of a sentence.
 * @returns an empty string when nothing was typed
 * @example remark('Why', ' too wide. ') //=> ' Why: too wide.'
 */
export function remark(lead: string, typed: string | undefined): string {
  const words = (typed ?? '').trim().replace(/\.+$/, '');
  return words === '' ? '' : ` ${lead}: ${words}.`;
}
