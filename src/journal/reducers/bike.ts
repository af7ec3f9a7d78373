import type { Entry } from '../entries.ts';
import type { BikeRow } from '../rows.ts';

/** A bike from its own entries; what its joints and steps add is counted in by the fold. */
export function reduceBike(row: BikeRow | undefined, entry: Entry): BikeRow | undefined {
  if (entry.type === 'bike-started') {
    return {
      key: `bike/${entry.bikeId}`,
      is: 'bike',
      group: 'bike',
      bikeId: entry.bikeId,
      name: entry.name,
      about: entry.about ?? '',
      demo: entry.demo === true,
      startedAtMs: entry.happenedAtMs,
      lastMs: entry.happenedAtMs,
      steps: 0,
      stepsDone: 0,
      stepsSkipped: 0,
      handTight: 0,
    };
  }
  if (!row) return undefined;
  const next = { ...row };
  switch (entry.type) {
    case 'bike-described':
      if (entry.name !== undefined) next.name = entry.name;
      if (entry.about !== undefined) next.about = entry.about;
      if (entry.photoId !== undefined) next.photoId = entry.photoId;
      break;
    case 'bike-put-away':
      next.putAway = entry.why;
      break;
    case 'bike-taken-out':
      next.putAway = undefined;
      break;
    case 'step-opened':
      next.openStepId = entry.stepId;
      break;
    case 'bike-released':
      next.release = {
        releaseId: entry.releaseId,
        atMs: entry.happenedAtMs,
        statement: entry.statement,
        open: entry.open.length,
      };
      break;
    case 'release-withdrawn':
      if (next.release) next.release = { ...next.release, withdrawn: entry.why };
      break;
  }
  return next;
}

/** What the other rows of a bike have counted into it; kept when the bike's own entries are reduced anew. */
export function keepCounts(fresh: BikeRow, old: BikeRow): BikeRow {
  const { steps, stepsDone, stepsSkipped, handTight, revoked, openStepId } = old;
  return { ...fresh, steps, stepsDone, stepsSkipped, handTight, revoked, openStepId };
}

/** Whether the last release still stands: neither withdrawn nor revoked, and not a statement against riding. */
export function releaseStands(row: BikeRow): boolean {
  const { release, revoked } = row;
  if (!release || release.withdrawn !== undefined || release.statement === 'not-to-ride') return false;
  return revoked?.releaseId !== release.releaseId;
}
