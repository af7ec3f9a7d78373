import type { Entry, JointAbout } from '../entries.ts';
import type { JointRow } from '../rows.ts';
import { described, pick } from './described.ts';

const ABOUT: (keyof JointAbout)[] = [
  'name',
  'kind',
  'partIds',
  'between',
  'fasteners',
  'targets',
  'matters',
  'note',
  'clamp',
  'bar',
  'extension',
];

/** A joint: target, applied and found stay three values; none is ever copied from another. */
export function reduceJoint(row: JointRow | undefined, entry: Entry): JointRow | undefined {
  if (entry.type === 'joint-made') {
    return {
      ...(pick(entry as JointAbout, ABOUT) as JointAbout),
      key: `joint/${entry.jointId}`,
      is: 'joint',
      group: `joint@${entry.bikeId}`,
      jointId: entry.jointId,
      bikeId: entry.bikeId,
      madeAtMs: entry.happenedAtMs,
      lastMs: entry.happenedAtMs,
      state: 'open',
      appliedTimes: 0,
      moved: 0,
    };
  }
  if (!row) return undefined;
  switch (entry.type) {
    case 'joint-described':
      return described<JointAbout, JointRow>(row, entry, ABOUT);
    case 'joint-taken-apart':
      return {
        ...row,
        state: 'apart',
        apartWhy: entry.why,
        applied: undefined,
        found: undefined,
        locked: undefined,
        moved: 0,
      };
    case 'hand-tightened':
      return { ...row, state: 'hand-tight', apartWhy: undefined };
    case 'torque-applied':
      return {
        ...row,
        state: 'torqued',
        apartWhy: undefined,
        appliedTimes: row.appliedTimes + 1,
        applied: {
          entryId: entry.id,
          atMs: entry.happenedAtMs,
          applied: entry.applied,
          bolts: entry.bolts,
          passes: entry.passes,
          marked: entry.marked === true,
          ...(entry.by ? { by: entry.by } : {}),
          ...(entry.tool ? { tool: entry.tool } : {}),
          ...(entry.between ? { between: entry.between } : {}),
        },
      };
    case 'locker-applied':
      return {
        ...row,
        locked: {
          entryId: entry.id,
          atMs: entry.happenedAtMs,
          grade: entry.grade,
          surface: entry.surface,
          primer: entry.primer,
          ...(entry.temperature ? { temperature: entry.temperature } : {}),
          waitId: entry.waitId,
          curedAtMs: entry.happenedAtMs + entry.waitMs,
        },
      };
    case 'recheck-set':
      return { ...row, recheckSetAtMs: entry.happenedAtMs };
    case 'torque-found':
      return {
        ...row,
        moved: entry.outcome === 'held' ? row.moved : row.moved + 1,
        found: {
          entryId: entry.id,
          atMs: entry.happenedAtMs,
          outcome: entry.outcome,
          way: entry.way,
          ...(entry.movedAt ? { movedAt: entry.movedAt } : {}),
          ...(entry.turnedDeg === undefined ? {} : { turnedDeg: entry.turnedDeg }),
        },
      };
  }
  return row;
}
