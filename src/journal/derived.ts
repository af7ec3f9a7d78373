import type { Id } from './entries.ts';
import type { Rows } from './fold.ts';
import { compareStanding, type Standing } from './order.ts';
import type { BikeRow, DefectRow, RecheckRow, RidesRow, Row } from './rows.ts';

/** What a row takes from other rows, always the same from the same rows, whatever came first. */

type RideFact = RidesRow['log'][number];
type Counts = Pick<BikeRow, 'steps' | 'stepsDone' | 'stepsSkipped' | 'handTight'>;

const NONE: Counts = { steps: 0, stepsDone: 0, stepsSkipped: 0, handTight: 0 };

const after = (at: Standing) => (ride: RideFact) => compareStanding(ride, at) > 0;
const sumKm = (rides: readonly RideFact[]): number => rides.reduce((sum, { km }) => sum + km, 0);

/** The ride that brought a count or a distance up to its limit, if one did. */
function reachedBy(
  rides: readonly RideFact[],
  { count, km }: { count?: number | undefined; km?: number | undefined },
): number | undefined {
  let ridden = 0;
  for (const [at, ride] of rides.entries()) {
    ridden += ride.km;
    if ((count !== undefined && at + 1 >= count) || (km !== undefined && ridden >= km)) return ride.atMs;
  }
  return undefined;
}

const earliest = (...instants: (number | undefined)[]): number | undefined => {
  const known = instants.filter((ms) => ms !== undefined);
  return known.length === 0 ? undefined : Math.min(...known);
};

function recheckNow(row: RecheckRow, rides: RidesRow | undefined): RecheckRow {
  // What is over counts no more rides, so that a later one need not touch it.
  if (row.answeredAtMs !== undefined || row.dropped !== undefined) {
    const over = { ridesThen: 0, kmThen: 0, reachedAtMs: undefined, dueAtMs: undefined };
    return { ...row, ...over, group: `recheck-over@${row.bikeId}` };
  }
  const log = rides?.log ?? [];
  const since = log.filter(after(row.setOrder));
  // A span of no rides at all is over at once.
  const reachedAtMs =
    row.dueRides === 0 ? row.setAtMs : reachedBy(since, { count: row.dueRides, km: row.dueKm });
  return {
    ...row,
    ridesThen: log.length - since.length,
    kmThen: sumKm(log) - sumKm(since),
    reachedAtMs,
    group: `recheck@${row.bikeId}`,
    dueAtMs: earliest(row.timeDueMs, reachedAtMs),
  };
}

function defectNow(row: DefectRow, rides: RidesRow | undefined): DefectRow {
  if (row.closed !== undefined) return { ...row, reachedAtMs: undefined, dueAtMs: undefined };
  const since = (rides?.log ?? []).filter(after(row.foundOrder));
  const reachedAtMs = row.untilKm === undefined ? undefined : reachedBy(since, { km: row.untilKm });
  return { ...row, reachedAtMs, dueAtMs: earliest(row.untilMs, reachedAtMs) };
}

/** What one row adds to the counts of its bike, so that a list of bikes reads one row each. */
function counted(row: Row | undefined): Counts {
  if (row?.is === 'step' && row.state !== 'dropped') {
    return {
      ...NONE,
      steps: 1,
      stepsDone: row.state === 'done' ? 1 : 0,
      stepsSkipped: row.state === 'skipped' ? 1 : 0,
    };
  }
  if (row?.is === 'joint') return { ...NONE, handTight: row.state === 'hand-tight' ? 1 : 0 };
  return NONE;
}

const plus = (a: Counts, b: Counts, sign = 1): Counts => ({
  steps: a.steps + sign * b.steps,
  stepsDone: a.stepsDone + sign * b.stepsDone,
  stepsSkipped: a.stepsSkipped + sign * b.stepsSkipped,
  handTight: a.handTight + sign * b.handTight,
});

/** The open problems with which a bike must not be ridden, the first found first. */
function graveOn(rows: Rows, bikeId: Id): BikeRow['grave'] {
  return rows
    .group('defect', `defect@${bikeId}`)
    .filter(({ decision }) => decision === 'do-not-ride')
    .toSorted((a, b) => compareStanding(a.foundOrder, b.foundOrder))
    .map(({ defectId, words }) => ({ defectId, words }));
}

function bikeNow(rows: Rows, row: BikeRow, before: Row | undefined): BikeRow {
  if (before?.is === 'bike') {
    const { steps, stepsDone, stepsSkipped, handTight, grave } = before;
    return { ...row, steps, stepsDone, stepsSkipped, handTight, grave };
  }
  const { bikeId } = row;
  const all = [...rows.group('step', `step@${bikeId}`), ...rows.group('joint', `joint@${bikeId}`)];
  const counts = all.map(counted).reduce((sum, one) => plus(sum, one), NONE);
  return { ...row, ...counts, grave: graveOn(rows, bikeId) };
}

/**
 * A row with what it takes from other rows.
 * @param before the row as it was, whose counts still hold
 */
export function derived(rows: Rows, row: Row, before: Row | undefined): Row {
  if (row.is === 'recheck') return recheckNow(row, rows.get('rides', row.bikeId));
  if (row.is === 'defect') return defectNow(row, rows.get('rides', row.bikeId));
  return row.is === 'bike' ? bikeNow(rows, row, before) : row;
}

/** Brings the rows up to date that take something from a row that changed. */
export function countsChanged(rows: Rows, before: Row | undefined, after: Row | undefined): void {
  const row = after ?? before;
  if (row?.is === 'step' || row?.is === 'joint') {
    const [was, now] = [counted(before), counted(after)];
    const same = (Object.keys(NONE) as (keyof Counts)[]).every((field) => was[field] === now[field]);
    const bike = same ? undefined : rows.get('bike', row.bikeId);
    if (bike) rows.put({ ...bike, ...plus(plus(bike, now), was, -1) });
  }
  if (row?.is === 'defect') {
    const bike = rows.get('bike', row.bikeId);
    if (bike) rows.put({ ...bike, grave: graveOn(rows, row.bikeId) });
  }
  if (row?.is !== 'rides') return;
  const rides = after?.is === 'rides' ? after : undefined;
  for (const recheck of rows.group('recheck', `recheck@${row.bikeId}`)) rows.put(recheckNow(recheck, rides));
  for (const defect of rows.group('defect', `defect@${row.bikeId}`)) rows.put(defectNow(defect, rides));
}
