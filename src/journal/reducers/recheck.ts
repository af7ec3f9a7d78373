import type { Entry } from '../entries.ts';
import type { RecheckRow, RidesRow } from '../rows.ts';

function withDue(row: RecheckRow): RecheckRow {
  const closed = row.answeredAtMs !== undefined || row.dropped !== undefined;
  const due = [row.timeDueMs, row.reachedAtMs].filter((ms) => ms !== undefined);
  return {
    ...row,
    group: closed ? `recheck-over@${row.bikeId}` : `recheck@${row.bikeId}`,
    dueAtMs: closed || due.length === 0 ? undefined : Math.min(...due),
  };
}

/** Whether rides or distance have brought a re-check due; called when the rides of its bike change. */
export function reachedBy(row: RecheckRow, rides: RidesRow, atMs: number): RecheckRow {
  const byRides = row.dueRides !== undefined && rides.count - row.ridesThen >= row.dueRides;
  const byKm = row.dueKm !== undefined && rides.km - row.kmThen >= row.dueKm;
  return withDue({ ...row, reachedAtMs: byRides || byKm ? (row.reachedAtMs ?? atMs) : undefined });
}

/** A task that falls due by time, by ride count or by distance, whichever comes first. */
export function reduceRecheck(row: RecheckRow | undefined, entry: Entry): RecheckRow | undefined {
  if (entry.type === 'recheck-set') {
    const { kind, title, instruction, jointId, partId, dueDays, dueRides, dueKm, turn } = entry;
    return withDue({
      key: `recheck/${entry.recheckId}`,
      is: 'recheck',
      recheckId: entry.recheckId,
      bikeId: entry.bikeId,
      setAtMs: entry.happenedAtMs,
      lastMs: entry.happenedAtMs,
      ridesThen: entry.ridesThen,
      kmThen: entry.kmThen,
      ...{ kind, title, instruction, jointId, partId, dueDays, dueRides, dueKm, turn },
      timeDueMs: entry.dueAtMs,
    });
  }
  if (!row) return undefined;
  switch (entry.type) {
    case 'recheck-changed':
      return withDue({
        ...row,
        dueDays: entry.dueDays,
        dueRides: entry.dueRides,
        dueKm: entry.dueKm,
        timeDueMs: entry.dueAtMs,
        reachedAtMs: undefined,
      });
    case 'recheck-dropped':
      return withDue({ ...row, dropped: entry.why });
    case 'torque-found':
    case 'recheck-answered':
      return withDue({ ...row, answeredAtMs: entry.happenedAtMs, found: entry.outcome });
  }
  return row;
}
