import type { Duty } from '../../journal/answers.ts';
import type { DistanceUnit } from '../../mechanics/units.ts';
import { calendarWords } from '../../words/calendarWords.ts';
import type { CalendarEvent } from './calendarText.ts';

/**
 * What a calendar can ring for: all that is not due yet, at the latest time by which it is. One thing keeps its UID
 * however often its time changes.
 * @param nowMs the present, ms UTC
 * @example eventsOf([], 'km', 0) //=> []
 */
export function eventsOf(duties: readonly Duty[], unit: DistanceUnit, nowMs: number): CalendarEvent[] {
  return duties
    .filter(({ latestByMs }) => latestByMs > nowMs)
    .map((duty) => ({
      uid: duty.id,
      atMs: duty.latestByMs,
      ...calendarWords(duty, unit),
    }));
}
