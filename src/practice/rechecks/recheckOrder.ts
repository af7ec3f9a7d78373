import type { RecheckRow, RidesRow } from '../../journal/rows.ts';
import { spanLeft } from '../../planning/recheckSpan.ts';
import { USUAL_PACE } from '../../planning/ridingPace.ts';

export interface Sorted {
  /** The longest overdue first. */
  due: RecheckRow[];
  /** The nearest first, as far as days and rides can be held beside each other. */
  coming: RecheckRow[];
}

/** Rides and distance have no day; the usual pace puts them in a row with those that have. */
const { ridesPerDay, kmPerDay } = USUAL_PACE;

/**
 * Re-checks due now, and those to come.
 * @example sortRechecks([], undefined, 0) //=> { due: [], coming: [] }
 */
export function sortRechecks(
  rechecks: readonly RecheckRow[],
  rides: Pick<RidesRow, 'count' | 'km'> | undefined,
  nowMs: number,
): Sorted {
  const isDue = ({ dueAtMs }: RecheckRow) => dueAtMs !== undefined && dueAtMs <= nowMs;
  const nearness = (recheck: RecheckRow) => {
    const { rides: ridesLeft, km, days } = spanLeft(recheck, rides, nowMs);
    const far = Number.POSITIVE_INFINITY;
    return Math.min(
      ridesLeft === undefined ? far : ridesLeft / ridesPerDay,
      km === undefined ? far : km / kmPerDay,
      days ?? far,
    );
  };
  const byName = (a: RecheckRow, b: RecheckRow) => a.title.localeCompare(b.title);
  return {
    due: rechecks.filter(isDue).toSorted((a, b) => (a.dueAtMs ?? 0) - (b.dueAtMs ?? 0) || byName(a, b)),
    coming: rechecks
      .filter((recheck) => !isDue(recheck))
      .toSorted((a, b) => nearness(a) - nearness(b) || byName(a, b)),
  };
}
