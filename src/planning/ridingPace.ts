import type { RidesRow } from '../journal/rows.ts';

const DAY_MS = 86_400_000;
/** Rides older than this say little of how often a bike is ridden now. Our own choice. */
const LOOKED_BACK_DAYS = 60;

export interface Pace {
  /** Both above 0. */
  ridesPerDay: number;
  kmPerDay: number;
}

/** A ride a week of 15 km, where the log says nothing yet. Our own suggestion. */
export const USUAL_PACE: Pace = { ridesPerDay: 1 / 7, kmPerDay: 15 / 7 };

/**
 * How often and how far a bike is ridden now: its rides of the last 60 days over the days since the first of them, a
 * week at least.
 * @param log its rides, in any order
 * @param nowMs the present, ms UTC
 * @returns the usual pace where fewer than two rides say otherwise; its distance where no ride has one
 * @example ridingPace([], 0) //=> { ridesPerDay: 1 / 7, kmPerDay: 15 / 7 }
 */
export function ridingPace(
  log: readonly Pick<RidesRow['log'][number], 'atMs' | 'km'>[],
  nowMs: number,
): Pace {
  const late = log.filter(({ atMs }) => atMs > nowMs - LOOKED_BACK_DAYS * DAY_MS && atMs <= nowMs);
  if (late.length < 2) return USUAL_PACE;
  const days = Math.max(7, (nowMs - Math.min(...late.map(({ atMs }) => atMs))) / DAY_MS);
  const ridesPerDay = late.length / days;
  const km = late.reduce((sum, ride) => sum + ride.km, 0);
  return {
    ridesPerDay,
    kmPerDay: km > 0 ? km / days : (USUAL_PACE.kmPerDay / USUAL_PACE.ridesPerDay) * ridesPerDay,
  };
}
