import { addDays } from 'date-fns/addDays';
import { setHours } from 'date-fns/setHours';
import { startOfDay } from 'date-fns/startOfDay';
import type { Duty } from '../journal/answers.ts';
import type { DefectRow, RecheckRow, RidesRow, ToolRow, WaitRow } from '../journal/rows.ts';
import { spanLeft } from './recheckSpan.ts';
import { type Pace, ridingPace } from './ridingPace.ts';
import { toolCheckDueMs } from './toolState.ts';

const DAY_MS = 86_400_000;

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

const earliest = (...instants: (number | undefined)[]): number | undefined => {
  const known = instants.filter((ms) => ms !== undefined);
  return known.length === 0 ? undefined : Math.min(...known);
};

/**
 * When rides or distance are likely to be used up at the pace the bike is ridden at.
 * @param left rides and km that may still be ridden
 * @returns undefined where neither is counted
 * @example likelyRidden({ rides: 2 }, { ridesPerDay: 0.5, kmPerDay: 10 }, 0) //=> 345_600_000
 */
export function likelyRidden(
  { rides, km }: Duty['left'],
  { ridesPerDay, kmPerDay }: Pace,
  nowMs: number,
): number | undefined {
  const days = [
    ...(rides === undefined ? [] : [rides / ridesPerDay]),
    ...(km === undefined ? [] : [km / kmPerDay]),
  ];
  return days.length === 0 ? undefined : nowMs + Math.round(Math.min(...days) * DAY_MS);
}

/** Nine in the morning of that day in the phone's zone, of tomorrow where that is past. */
export function nineOf(atMs: number, nowMs: number): number {
  const nine = setHours(startOfDay(atMs), 9).getTime();
  return nine > nowMs ? nine : setHours(startOfDay(addDays(nowMs, 1)), 9).getTime();
}

/** What can wait or fall due, as it is stored. */
export type DutyRow = WaitRow | RecheckRow | DefectRow | ToolRow;

/** What is known beside the rows themselves. */
export interface DutyCircumstances {
  nowMs: number;
  bikeName: string;
  /** The title as it reads today. */
  title: string;
  rides: RidesRow | undefined;
}

type Shape = Omit<Duty, 'likelyMs' | 'latestByMs' | 'bikeName' | 'title'>;

/** Waits, re-checks, problems with a limit and tools in one shape; nothing where a row is over or never falls due. */
function shapeOf(row: DutyRow, { rides, nowMs }: DutyCircumstances): Shape | undefined {
  const { key } = row;
  const of = (jointId: string | undefined) => (jointId === undefined ? {} : { jointId });
  const at = (dueAtMs: number | undefined) => (dueAtMs === undefined ? {} : { dueAtMs });
  if (row.is === 'wait') {
    if (row.endedAtMs !== undefined || row.dueAtMs === undefined) return undefined;
    const { waitId: id, bikeId, jointId, waitKind: kind, startedAtMs, dueAtMs } = row;
    return { key, is: 'wait', id, bikeId, ...of(jointId), kind, startedAtMs, dueAtMs, left: {} };
  }
  if (row.is === 'recheck') {
    if (row.answeredAtMs !== undefined || row.dropped !== undefined) return undefined;
    const { recheckId: id, bikeId, jointId, kind, setAtMs: startedAtMs, dueAtMs } = row;
    const { days: _days, ...left } = spanLeft(row, rides, nowMs);
    return { key, is: 'recheck', id, bikeId, ...of(jointId), kind, startedAtMs, ...at(dueAtMs), left };
  }
  if (row.is === 'defect') {
    if (row.closed !== undefined || row.decision !== 'ride-limited') return undefined;
    const { defectId: id, bikeId, jointId, decision: kind, foundAtMs: startedAtMs, dueAtMs, untilKm } = row;
    const ridden = (rides?.log ?? []).reduce((sum, { atMs, km }) => (atMs > startedAtMs ? sum + km : sum), 0);
    const left = untilKm === undefined ? {} : { km: Math.max(0, untilKm - ridden) };
    return { key, is: 'defect', id, bikeId, ...of(jointId), kind, startedAtMs, ...at(dueAtMs), left };
  }
  const dueAtMs = row.putAway === undefined ? toolCheckDueMs(row) : undefined;
  if (dueAtMs === undefined) return undefined;
  const { toolId: id, lastCheckMs: startedAtMs = 0 } = row;
  return { key, is: 'tool', id, kind: 'tool-check', startedAtMs, dueAtMs, left: {} };
}

/**
 * One row as a duty, whatever it is about.
 * @returns undefined where it is over, or nothing makes it fall due
 * @example dutyOf({ is: 'wait', waitId: 'w1', dueAtMs: 60_000, … }, { nowMs: 0, bikeName: 'Magpie', title: 'Stem' })?.latestByMs
 *   //=> 60_000
 */
export function dutyOf(row: DutyRow, around: DutyCircumstances): Duty | undefined {
  const shape = shapeOf(row, around);
  if (!shape) return undefined;
  const { bikeName, title, rides, nowMs } = around;
  const { dueAtMs, left } = shape;
  const likelyMs = earliest(dueAtMs, likelyRidden(left, ridingPace(rides?.log ?? [], nowMs), nowMs));
  if (likelyMs === undefined) return undefined;
  return { ...shape, bikeName, title, likelyMs, latestByMs: dueAtMs ?? nineOf(likelyMs, nowMs) };
}
