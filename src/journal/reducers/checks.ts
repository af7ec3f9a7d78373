import type { Entry } from '../entries.ts';
import type { DefectRow, FindingRow, ReleaseRow, RideCheckRow } from '../rows.ts';

/** What was found wrong, until an entry says how it was mended. */
export function reduceDefect(row: DefectRow | undefined, entry: Entry): DefectRow | undefined {
  if (entry.type === 'defect-found') {
    const { defectId, bikeId, jointId, words, area, decision, untilKm, restriction } = entry;
    return {
      key: `defect/${defectId}`,
      is: 'defect',
      group: `defect@${bikeId}`,
      ...{ defectId, bikeId, jointId, words, area, decision, untilKm, restriction },
      dueAtMs: entry.untilMs,
      foundAtMs: entry.happenedAtMs,
      lastMs: entry.happenedAtMs,
    };
  }
  if (row && entry.type === 'defect-closed') {
    return { ...row, closed: entry.how, dueAtMs: undefined, group: `defect-closed@${row.bikeId}` };
  }
  return row;
}

/** The pre-ride check in hand: the newest confirmation of each group since the last release. */
export function reduceRideCheck(row: RideCheckRow | undefined, entry: Entry): RideCheckRow | undefined {
  if (entry.type === 'ride-check-confirmed') {
    const base: RideCheckRow = row ?? {
      key: `ridecheck/${entry.bikeId}`,
      is: 'ridecheck',
      group: `ridecheck@${entry.bikeId}`,
      bikeId: entry.bikeId,
      lastMs: entry.happenedAtMs,
      groups: {},
    };
    const confirmed = { atMs: entry.happenedAtMs, items: entry.items };
    return { ...base, groups: { ...base.groups, [entry.groupId]: confirmed } };
  }
  // A check clears the bike for the release it was made for; the next release wants its own.
  if (row && entry.type === 'bike-released') return { ...row, groups: {} };
  return row;
}

/** Every release of a bike, word for word. */
export function reduceRelease(row: ReleaseRow | undefined, entry: Entry): ReleaseRow | undefined {
  if (entry.type !== 'bike-released') return row;
  const { releaseId, statement, covers, by, open, restrictions, bikeId, happenedAtMs: atMs } = entry;
  const base: ReleaseRow = row ?? {
    key: `release/${bikeId}`,
    is: 'release',
    group: `release@${bikeId}`,
    bikeId,
    lastMs: atMs,
    releases: [],
  };
  return {
    ...base,
    releases: [...base.releases, { releaseId, atMs, statement, covers, by, open, restrictions }],
  };
}

/** What became of a finding of the fit check. */
export function reduceFinding(row: FindingRow | undefined, entry: Entry): FindingRow | undefined {
  if (entry.type !== 'finding-accepted' && entry.type !== 'finding-noted') return row;
  const { bikeId, findingId, words } = entry;
  return {
    key: `finding/${bikeId}:${findingId}`,
    is: 'finding',
    group: `finding@${bikeId}`,
    ...{ bikeId, findingId, words },
    outcome: entry.type === 'finding-accepted' ? 'accepted' : entry.outcome,
    lastMs: entry.happenedAtMs,
  };
}
