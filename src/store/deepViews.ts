import type { AsBuilt, Duty, Ridden } from '../journal/answers.ts';
import { dutiesOf } from '../journal/duties.ts';
import { effective, isCorrection } from '../journal/effective.ts';
import type { Entry, EntryOf, Id, OpenItem } from '../journal/entries.ts';
import { fitAtHand } from '../journal/fitAtHand.ts';
import { foldWhole } from '../journal/foldWhole.ts';
import { MemoryRows } from '../journal/memoryRows.ts';
import { openItems } from '../journal/openItems.ts';
import type { BikeRow, JointRow, PartRow, ReleaseRow, RideCheckRow, RidesRow } from '../journal/rows.ts';
import { readable, upcast } from '../journal/upcasts.ts';
import type { Database, JournalLine } from './database.ts';
import { momentOf } from './read.ts';

function riddenUntil(entries: Entry[], bikeId: Id, atMs: number): Ridden {
  const rides = entries.filter(
    (entry) => entry.type === 'ride-logged' && entry.bikeId === bikeId && entry.happenedAtMs <= atMs,
  ) as EntryOf<'ride-logged'>[];
  return {
    count: rides.length,
    km: rides.reduce((sum, { km = 0 }) => sum + km, 0),
    minutes: rides.reduce((sum, { minutes = 0 }) => sum + minutes, 0),
  };
}

/**
 * A bike as it was at an instant: its journal folded up to there. Entries written or corrected later about an earlier
 * time count, since the question is what was on the bike, not what was known.
 */
export async function asBuilt(db: Database, bikeId: Id, atMs: number): Promise<AsBuilt> {
  // Before the transaction, which would end while this is waited for.
  const openInPile = await fitAtHand();
  const index = db.transaction('journal').store.index('places');
  const lines = new Map<number, JournalLine>();
  const readAt = async (place: string) => {
    const range = IDBKeyRange.bound(`${place}:`, `${place};`, false, true);
    for (const line of await index.getAll(range)) lines.set(line.seq, line);
  };
  await readAt(`b:${bikeId}`);
  const partIds = new Set(
    [...lines.values()].flatMap(({ places }) =>
      places.filter((place) => place.startsWith('p:')).map((place) => place.slice(2, place.lastIndexOf(':'))),
    ),
  );
  await Promise.all([...partIds].map((partId) => readAt(`p:${partId}`)));
  const entries = [...lines.values()].flatMap(({ entry }) => (readable(entry) ? [upcast(entry)] : []));
  // As they read today; of a correction only that it was made is left, which may have revoked a release then.
  const counted = effective(entries)
    .filter((entry) => entry.happenedAtMs <= atMs)
    .map((entry) => (isCorrection(entry) ? { ...entry, becomes: {} } : entry));
  const { rows } = foldWhole(counted);
  const releases = rows.get('release', bikeId)?.releases ?? [];
  return {
    bike: rows.get('bike', bikeId),
    parts: rows.group('part', `part@${bikeId}`),
    joints: rows.group('joint', `joint@${bikeId}`),
    rides: rows.get('rides', bikeId),
    atMs,
    seals: rows.group('seal', `seal@${bikeId}`),
    waits: ['wait', 'wait-over'].flatMap((kind) => rows.group('wait', `${kind}@${bikeId}`)),
    defects: rows.group('defect', `defect@${bikeId}`),
    rechecks: rows.group('recheck', `recheck@${bikeId}`),
    open: rows.get('bike', bikeId) ? openItems(rows, bikeId, atMs, openInPile) : [],
    releases: releases.map((release) => ({ ...release, ridden: riddenUntil(counted, bikeId, release.atMs) })),
    inspections: counted.flatMap((entry) =>
      entry.type === 'ride-check-confirmed' && entry.bikeId === bikeId
        ? [{ groupId: entry.groupId, atMs: entry.happenedAtMs, items: entry.items }]
        : [],
    ),
  };
}

/** What a release stands on. */
export interface ReleaseNow {
  bike: BikeRow;
  /** What is open now, word for word. */
  open: OpenItem[];
  check: RideCheckRow | undefined;
  releases: ReleaseRow['releases'];
  rides: RidesRow | undefined;
  joints: JointRow[];
  parts: PartRow[];
}

/**
 * A bike for its release: what is open is judged from the very rows that are shown beside it, so that the
 * list that is signed is never older than the joints under it.
 */
export async function releaseNow(db: Database, bikeId: Id, nowMs: number): Promise<ReleaseNow | undefined> {
  const openInPile = await fitAtHand();
  const { row, group } = momentOf(db);
  const at = (kind: string) => `${kind}@${bikeId}`;
  const [bike, check, releases, rides, joints, parts, ...others] = await Promise.all([
    row('bike', bikeId),
    row('ridecheck', bikeId),
    row('release', bikeId),
    row('rides', bikeId),
    group('joint', at('joint')),
    group('part', at('part')),
    group('step', at('step')),
    group('wait', at('wait')),
    group('wait', at('wait-over')),
    group('recheck', at('recheck')),
    group('recheck', at('recheck-over')),
    group('defect', at('defect')),
    group('finding', at('finding')),
    group('seal', at('seal')),
  ]);
  if (!bike) return undefined;
  const rows = new MemoryRows();
  for (const one of [...joints, ...parts, ...others.flat(), ...(check ? [check] : [])]) rows.put(one);
  const open = openItems(rows, bikeId, nowMs, openInPile);
  return { bike, open, check, releases: releases?.releases ?? [], rides, joints, parts };
}

/** All that waits or falls due; what rides or distance alone make due is in it as well, which no index holds. */
export async function duties(db: Database, nowMs: number): Promise<Duty[]> {
  const { row, group } = momentOf(db);
  const [bikes, tools] = await Promise.all([group('bike', 'bike'), group('tool', 'tool')]);
  const asked = await Promise.all(
    bikes.map(async (bike) => {
      const { bikeId } = bike;
      const [joints, rides, waits, rechecks, defects] = await Promise.all([
        group('joint', `joint@${bikeId}`),
        row('rides', bikeId),
        group('wait', `wait@${bikeId}`),
        group('recheck', `recheck@${bikeId}`),
        group('defect', `defect@${bikeId}`),
      ]);
      return { bike, joints, rides, rows: [...waits, ...rechecks, ...defects] };
    }),
  );
  return dutiesOf(asked, tools, nowMs);
}
