import { contentLine, escapedText } from './contentLine.ts';

/** What the calendar of the phone is to ring for. */
export interface CalendarEvent {
  /** Stays the same for one timer or check, however often it is handed over: the calendar knows it by this. */
  uid: string;
  /** When it rings, ms UTC. */
  atMs: number;
  summary: string;
  description: string;
}

/** The largest INTEGER. RFC 5545, section 3.3.8. */
const MOST = 2_147_483_647;
/** From here on files are counted; with the largest number that lasts until 2088. Our own choice. */
const FIRST_MS = Date.UTC(2020, 0);

/**
 * An instant as DATE-TIME in UTC. A part of a second counts as a whole one: nothing rings early.
 * @see RFC 5545, section 3.3.5, form 2
 * @example utcText(Date.UTC(2026, 4, 3, 12)) //=> '20260503T120000Z'
 */
export function utcText(atMs: number): string {
  return new Date(Math.ceil(atMs / 1000) * 1000).toISOString().replaceAll(/[-:]|\.\d+/g, '');
}

/**
 * How often an event was written anew, as its SEQUENCE: the seconds since 2020. A file written later has the higher
 * number, whatever became of its timer or check meanwhile, so a calendar takes it in the place of the one before.
 * @param madeAtMs when the file is written, ms UTC
 * @see RFC 5545, section 3.8.7.4
 * @example sequenceAt(Date.UTC(2020, 0, 1, 0, 1)) //=> 60
 */
export function sequenceAt(madeAtMs: number): number {
  return Math.min(MOST, Math.max(0, Math.floor((madeAtMs - FIRST_MS) / 1000)));
}

function eventText({ uid, atMs, summary, description }: CalendarEvent, madeAtMs: number): string {
  const says = escapedText(summary);
  return [
    contentLine('BEGIN', 'VEVENT'),
    contentLine('UID', escapedText(uid)),
    contentLine('DTSTAMP', utcText(madeAtMs)),
    contentLine('SEQUENCE', String(sequenceAt(madeAtMs))),
    contentLine('DTSTART', utcText(atMs)),
    contentLine('DURATION', 'PT15M'),
    contentLine('SUMMARY', says),
    contentLine('DESCRIPTION', escapedText(description)),
    contentLine('TRANSP', 'TRANSPARENT'),
    // Last, where every calendar takes it.
    contentLine('BEGIN', 'VALARM'),
    contentLine('ACTION', 'DISPLAY'),
    contentLine('DESCRIPTION', says),
    contentLine('TRIGGER', 'PT0S'),
    contentLine('END', 'VALARM'),
    contentLine('END', 'VEVENT'),
  ].join('');
}

/**
 * A calendar file: an event with an alarm for each, at an instant in UTC, so that no change of the clocks moves it.
 * @param events at least one
 * @param madeAtMs the present, ms UTC
 * @returns the text, every line ended by CR LF
 * @throws RangeError when there is no event, or two have one UID
 * @see RFC 5545, sections 3.4 to 3.6; without a METHOD, as a file that is opened
 * @example calendarText([{ uid: 'w1', atMs: 60_000, summary: 'Look', description: 'At the rear tyre' }], 0).slice(0, 15)
 *   //=> 'BEGIN:VCALENDAR'
 */
export function calendarText(events: readonly CalendarEvent[], madeAtMs: number): string {
  if (events.length === 0) throw new RangeError('a calendar file needs an event');
  if (new Set(events.map(({ uid }) => uid)).size < events.length)
    throw new RangeError('two events of a calendar file have one UID');
  return [
    contentLine('BEGIN', 'VCALENDAR'),
    contentLine('VERSION', '2.0'),
    contentLine('PRODID', '-//Pinchbolt//Workshop log//EN'),
    contentLine('CALSCALE', 'GREGORIAN'),
    ...events.map((event) => eventText(event, madeAtMs)),
    contentLine('END', 'VCALENDAR'),
  ].join('');
}
