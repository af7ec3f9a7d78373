import type { Entry } from '../entries.ts';
import type { WaitRow } from '../rows.ts';

function running(row: WaitRow): WaitRow {
  return { ...row, dueAtMs: row.startedAtMs + row.waitMs + row.clockMovedMs, group: `wait@${row.bikeId}` };
}

/** A span in which something cures, seals or settles; it runs by the clock, whether the app is open or not. */
export function reduceWait(row: WaitRow | undefined, entry: Entry): WaitRow | undefined {
  if (entry.type === 'wait-started' || entry.type === 'locker-applied') {
    return running({
      key: `wait/${entry.waitId}`,
      is: 'wait',
      waitId: entry.waitId,
      bikeId: entry.bikeId,
      jointId: entry.jointId,
      waitKind: entry.type === 'wait-started' ? entry.kind : 'cure',
      title: entry.title ?? ('grade' in entry ? entry.grade : ''),
      startedAtMs: entry.happenedAtMs,
      lastMs: entry.happenedAtMs,
      waitMs: entry.waitMs,
      clockMovedMs: 0,
    });
  }
  if (!row) return undefined;
  switch (entry.type) {
    case 'wait-changed':
      return row.endedAtMs === undefined ? running({ ...row, waitMs: entry.waitMs }) : row;
    case 'clock-moved':
      return row.endedAtMs === undefined
        ? running({ ...row, clockMovedMs: row.clockMovedMs + entry.byMs })
        : row;
    case 'wait-ended':
      return {
        ...row,
        dueAtMs: undefined,
        group: `wait-over@${row.bikeId}`,
        endedAtMs: entry.happenedAtMs,
        outcome: entry.outcome,
      };
  }
  return row;
}
