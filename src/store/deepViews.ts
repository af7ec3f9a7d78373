import type { Entry, EntryOf, Id, OpenItem } from '../journal/entries.ts';
import { fitAtHand } from '../journal/fitAtHand.ts';
import { effective, foldAll } from '../journal/fold.ts';
import { MemoryRows } from '../journal/memoryRows.ts';
import { openItems } from '../journal/openItems.ts';
import type {
  BikeRow,
  DefectRow,
  JointRow,
  PartRow,
  RecheckRow,
  ReleaseRow,
  RidesRow,
  SealRow,
} from '../journal/rows.ts';
import { upcast } from '../journal/upcasts.ts';
import type { Database, JournalLine } from './database.ts';
import * as read from './read.ts';

export interface AsBuilt {
  bike: BikeRow | undefined;
  parts: PartRow[];
  joints: JointRow[];
  rides: RidesRow | undefined;
  atMs: number;
  seals: SealRow[];
  defects: DefectRow[];
  rechecks: RecheckRow[];
  /** What was open at that instant, word for word. */
  open: OpenItem[];
  /** Every release until then, with what had been ridden when it was signed. */
  releases: (ReleaseRow['releases'][number] & { ridden: Ridden })[];
  /** What was looked over before riding, oldest first. */
  inspections: { groupId: string; atMs: number; items: EntryOf<'ride-check-confirmed'>['items'] }[];
}

/** Total time in service: rides, distance and minutes. */
export interface Ridden {
  count: number;
  km: number;
  minutes: number;
}

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

async function linesAt(db: Database, place: string): Promise<JournalLine[]> {
  return db.getAllFromIndex('journal', 'places', IDBKeyRange.bound(`${place}:`, `${place};`, false, true));
}

/**
 * A bike as it was at an instant: its journal folded up to there. Entries written later about an earlier
 * time count, since the question is what was on the bike, not what was known.
 */
export async function asBuilt(db: Database, bikeId: Id, atMs: number): Promise<AsBuilt> {
  const openInPile = await fitAtHand();
  const lines = new Map<number, JournalLine>();
  const add = (found: JournalLine[]) => {
    for (const line of found) lines.set(line.seq, line);
  };
  add(await linesAt(db, `b:${bikeId}`));
  const partIds = new Set(
    [...lines.values()].flatMap(({ places }) =>
      places.filter((place) => place.startsWith('p:')).map((place) => place.slice(2, place.lastIndexOf(':'))),
    ),
  );
  for (const partId of partIds) add(await linesAt(db, `p:${partId}`));
  const rows = new MemoryRows();
  const entries = [...lines.values()]
    .sort((a, b) => a.seq - b.seq)
    .map(({ entry }) => upcast(entry))
    .filter((entry) => entry.happenedAtMs <= atMs || entry.type === 'entry-corrected');
  foldAll(rows, entries);
  const counted = effective(entries);
  const releases = rows.get('release', bikeId)?.releases ?? [];
  return {
    bike: rows.get('bike', bikeId),
    parts: rows.group('part', `part@${bikeId}`),
    joints: rows.group('joint', `joint@${bikeId}`),
    rides: rows.get('rides', bikeId),
    atMs,
    seals: rows.group('seal', `seal@${bikeId}`),
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

/** What is open on a bike now; read outside a write transaction, for the release screen. */
export async function openNow(db: Database, bikeId: Id, nowMs: number): Promise<OpenItem[]> {
  const rows = new MemoryRows();
  const at = (kind: string) => `${kind}@${bikeId}`;
  const openInPile = await fitAtHand();
  const { group } = read.momentOf(db);
  const groups = await Promise.all([
    group('joint', at('joint')),
    group('part', at('part')),
    group('step', at('step')),
    group('wait', at('wait')),
    group('wait', at('wait-over')),
    group('recheck', at('recheck')),
    group('defect', at('defect')),
    group('finding', at('finding')),
    group('seal', at('seal')),
    group('ridecheck', at('ridecheck')),
  ]);
  for (const row of groups.flat()) rows.put(row);
  return openItems(rows, bikeId, nowMs, openInPile);
}
