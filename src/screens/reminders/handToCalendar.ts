import { fileName } from '../../documents/fileName.ts';
import { calendarText } from '../../exchange/calendar/calendarText.ts';
import { eventsOf } from '../../exchange/calendar/eventsOf.ts';
import type { Duty } from '../../journal/answers.ts';
import type { DistanceUnit } from '../../mechanics/units.ts';
import { calendarOutcome } from '../../words/calendarWords.ts';
import { canShare, download, share } from '../settings/copies/keepFile.ts';

/**
 * Hands what is due ahead to the phone's calendar: by the share sheet where that takes such a file, else as a download.
 * @returns what became of it, in a sentence
 */
export async function handToCalendar(
  duties: readonly Duty[],
  unit: DistanceUnit,
  nowMs: number,
): Promise<string> {
  const events = eventsOf(duties, unit, nowMs);
  const [first] = events;
  if (!first) return calendarOutcome('none', 0);
  const called = events.length === 1 ? first.summary : 'Pinchbolt reminders';
  const file = new File([calendarText(events, nowMs)], fileName(called, '.ics'), { type: 'text/calendar' });
  if (!canShare(file)) {
    download(file);
    return calendarOutcome('saved', events.length);
  }
  return calendarOutcome((await share(file)) ? 'shared' : 'closed', events.length);
}
