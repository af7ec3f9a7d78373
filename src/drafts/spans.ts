import type { Settings } from '../journal/entries.ts';
import { parseNumber } from '../mechanics/quantity.ts';
import type { ScheduleRow } from '../standards/checks/recheckSchedule.ts';
import { spanOfTurn } from '../standards/checks/recheckSchedule.ts';

export type Schedule = NonNullable<Settings['schedule']>;
export type Interval = NonNullable<Schedule[string]>;
export const scheduleTurns = [0, 1, 2] as const;
export type Turn = (typeof scheduleTurns)[number];

export const turnNames: Record<Turn, string> = {
  0: 'The first time',
  1: 'The second time',
  2: 'From then on',
};

/**
 * The names under which own figures of one turn are kept. A pull and a look at the mark are one task, done
 * one way or the other as there is threadlocker or not, so they share their figures.
 * @example scheduleKeys({ jointKind: 'rotor', instruction: 'retorque' }, 0) //=> ['rotor:retorque:0', 'rotor:look-at-mark:0']
 */
export function scheduleKeys(
  { jointKind, instruction }: Pick<ScheduleRow, 'jointKind' | 'instruction'>,
  turn: Turn,
): string[] {
  const ways = instruction === 'retorque' ? ['retorque', 'look-at-mark'] : [instruction];
  return ways.map((way) => `${jointKind}:${way}:${turn}`);
}

/** The span of the table in the terms own figures are given in; undefined where nothing more is due. */
export function tableSpan(row: ScheduleRow, turn: Turn): Interval | undefined {
  const span = spanOfTurn(row, turn);
  if (!span) return undefined;
  return {
    ...(span.afterRides === undefined ? {} : { rides: span.afterRides }),
    ...(span.km === undefined ? {} : { km: span.km }),
    ...(span.days === undefined ? {} : { days: span.days }),
  };
}

/** Own figures of one turn, where there are any; null where no re-check is wanted from that turn on. */
export function ownSpan(
  schedule: Schedule | undefined,
  row: ScheduleRow,
  turn: Turn,
): Interval | null | undefined {
  const key = scheduleKeys(row, turn)[0];
  return key === undefined ? undefined : schedule?.[key];
}

/**
 * A span in words.
 * @example intervalWords({ rides: 1, days: 30 }) //=> '1 ride or 30 days'
 */
export function intervalWords(span: Interval | null | undefined): string {
  if (!span) return 'Once only';
  const { rides, km, days } = span;
  const terms = [
    rides !== undefined &&
      (rides === 0 ? 'before the next ride' : `${rides} ${rides === 1 ? 'ride' : 'rides'}`),
    km !== undefined && `${km} km`,
    days !== undefined && `${days} ${days === 1 ? 'day' : 'days'}`,
  ].filter(Boolean);
  return terms.length === 0 ? 'Nothing set' : terms.join(' or ');
}

/**
 * The schedule of one re-check in words, turn by turn, ending where nothing more is due.
 * @example scheduleWords({ 'rack:retorque:1': null, 'rack:look-at-mark:1': null }, rackRow) //=> '1 ride or 10 km or 30 days; then nothing more'
 */
export function scheduleWords(schedule: Schedule | undefined, row: ScheduleRow): string {
  const turnsInWords: string[] = [];
  for (const turn of scheduleTurns) {
    const own = ownSpan(schedule, row, turn);
    const span = own === undefined ? tableSpan(row, turn) : own;
    const words = intervalWords(span);
    turnsInWords.push(turnsInWords.length === 0 ? words : words.charAt(0).toLowerCase() + words.slice(1));
    if (!span) break;
  }
  return turnsInWords.join('; then ');
}

export interface SpanDraft extends Record<keyof Interval, string> {
  /** Nothing more is wanted from this turn on. */
  ended: boolean;
}
export const spanFields = ['rides', 'km', 'days'] as const satisfies readonly (keyof Interval)[];

/** A span laid out for typing. */
export const draftOfSpan = (span: Interval | null | undefined): SpanDraft => ({
  ended: span === null,
  rides: span?.rides?.toString() ?? '',
  km: span?.km?.toString() ?? '',
  days: span?.days?.toString() ?? '',
});

/**
 * What was typed of a span; all fields empty means the table's figures again.
 * @returns the span, null where nothing more is wanted, `table`, or the field that cannot be read
 * @example readSpan({ rides: '1', km: '', days: '14', ended: false }) //=> { rides: 1, days: 14 }
 */
export function readSpan(draft: SpanDraft): Interval | null | 'table' | { wrong: keyof Interval } {
  if (draft.ended) return null;
  const span: Interval = {};
  for (const field of spanFields) {
    const text = draft[field].trim();
    if (text === '') continue;
    const read = parseNumber(text);
    const whole = read.ok && (field !== 'rides' || Number.isInteger(read.value));
    const above = read.ok && (field === 'rides' ? read.value >= 0 : read.value > 0);
    if (!read.ok || !whole || !above) return { wrong: field };
    span[field] = read.value;
  }
  return Object.keys(span).length === 0 ? 'table' : span;
}

/** The schedule after own figures of one turn were set, or given up for the table's. */
export function withSpan(
  schedule: Schedule | undefined,
  row: ScheduleRow,
  turn: Turn,
  span: Interval | null | 'table',
): Schedule {
  const keys = scheduleKeys(row, turn);
  const others = Object.entries(schedule ?? {}).filter(([key]) => !keys.includes(key));
  return Object.fromEntries([
    ...others,
    ...(span === 'table' ? [] : keys.map((key) => [key, span] as const)),
  ]);
}
