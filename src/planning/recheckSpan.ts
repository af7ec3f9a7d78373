import type { CommandOf } from '../journal/commands.ts';
import type { RecheckRow, RidesRow } from '../journal/rows.ts';

const DAY_MS = 86_400_000;

type Counts = Pick<RidesRow, 'count' | 'km'> | undefined;
type Spans = Pick<RecheckRow, 'dueRides' | 'dueKm' | 'dueDays' | 'ridesThen' | 'kmThen' | 'setAtMs'>;

export interface Left {
  rides?: number;
  km?: number;
  /** Days, broken ones too; below zero when over. */
  days?: number;
}

/**
 * What is left of each span of a re-check. Never less than nothing for rides and distance.
 * @param rides what the bike has been ridden so far
 * @example spanLeft({ dueRides: 3, ridesThen: 2, kmThen: 0, setAtMs: 0 }, { count: 4, km: 30 }, 0) //=> { rides: 1 }
 */
export function spanLeft(recheck: Spans & { timeDueMs?: number }, rides: Counts, nowMs: number): Left {
  const { dueRides, dueKm, ridesThen, kmThen, timeDueMs } = recheck;
  return {
    ...(dueRides === undefined ? {} : { rides: Math.max(0, dueRides - ((rides?.count ?? 0) - ridesThen)) }),
    ...(dueKm === undefined ? {} : { km: Math.max(0, dueKm - ((rides?.km ?? 0) - kmThen)) }),
    ...(timeDueMs === undefined ? {} : { days: (timeDueMs - nowMs) / DAY_MS }),
  };
}

/**
 * Spans counted from now, as the logbook counts them: from when the re-check was set.
 * @param more rides, km and days from now; a span left out no longer makes it due
 * @example spansFromNow({ ridesThen: 2, kmThen: 10, setAtMs: 0 }, { count: 3, km: 14 }, 0, { rides: 1 })
 *   //=> { dueRides: 2 }
 */
export function spansFromNow(
  { ridesThen, kmThen, setAtMs }: Pick<Spans, 'ridesThen' | 'kmThen' | 'setAtMs'>,
  rides: Counts,
  nowMs: number,
  more: Left,
): Pick<CommandOf<'change-recheck'>, 'dueRides' | 'dueKm' | 'dueDays'> {
  return {
    ...(more.rides === undefined ? {} : { dueRides: (rides?.count ?? 0) - ridesThen + more.rides }),
    ...(more.km === undefined ? {} : { dueKm: (rides?.km ?? 0) - kmThen + more.km }),
    ...(more.days === undefined ? {} : { dueDays: Math.max(0, nowMs - setAtMs) / DAY_MS + more.days }),
  };
}
