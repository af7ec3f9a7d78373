import type { Id, OpenItem } from '../journal/entries.ts';
import { foldAll } from '../journal/fold.ts';
import { MemoryRows } from '../journal/memoryRows.ts';
import { openItems } from '../journal/openItems.ts';
import type { BikeRow, JointRow, PartRow, RidesRow } from '../journal/rows.ts';
import { upcast } from '../journal/upcasts.ts';
import type { Database, JournalLine } from './database.ts';
import * as read from './read.ts';

export interface AsBuilt {
  bike: BikeRow | undefined;
  parts: PartRow[];
  joints: JointRow[];
  rides: RidesRow | undefined;
  atMs: number;
}

async function linesAt(db: Database, place: string): Promise<JournalLine[]> {
  return db.getAllFromIndex('journal', 'places', IDBKeyRange.bound(`${place}:`, `${place};`, false, true));
}

/**
 * A bike as it was at an instant: its journal folded up to there. Entries written later about an earlier
 * time count, since the question is what was on the bike, not what was known.
 */
export async function asBuilt(db: Database, bikeId: Id, atMs: number): Promise<AsBuilt> {
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
  return {
    bike: rows.get('bike', bikeId),
    parts: rows.group('part', `part@${bikeId}`),
    joints: rows.group('joint', `joint@${bikeId}`),
    rides: rows.get('rides', bikeId),
    atMs,
  };
}

/** What is open on a bike now; read outside a write transaction, for the release screen. */
export async function openNow(db: Database, bikeId: Id, nowMs: number): Promise<OpenItem[]> {
  const rows = new MemoryRows();
  const at = (kind: string) => `${kind}@${bikeId}`;
  const groups = await Promise.all([
    read.group(db, 'joint', at('joint')),
    read.group(db, 'part', at('part')),
    read.group(db, 'step', at('step')),
    read.group(db, 'wait', at('wait')),
    read.group(db, 'wait', at('wait-over')),
    read.group(db, 'recheck', at('recheck')),
    read.group(db, 'defect', at('defect')),
    read.group(db, 'finding', at('finding')),
    read.group(db, 'seal', at('seal')),
    read.group(db, 'ridecheck', at('ridecheck')),
  ]);
  for (const row of groups.flat()) rows.put(row);
  return openItems(rows, bikeId, nowMs);
}
