import type { Photo } from '../journal/commands.ts';
import type { Entry, Id, Settings } from '../journal/entries.ts';
import { FIRST_SETTINGS } from '../journal/reducers/settings.ts';
import { type Row, type RowKind, type RowOf, VIEWS_VERSION } from '../journal/rows.ts';
import { upcast } from '../journal/upcasts.ts';
import { type Database, VIEWS_META } from './database.ts';

/** One row by its kind and id. */
export async function row<K extends RowKind>(db: Database, kind: K, id: Id): Promise<RowOf[K] | undefined> {
  return (await db.get('views', `${kind}/${id}`)) as RowOf[K] | undefined;
}

/** The rows of one group, such as `joint@<bike>`. */
export async function group<K extends RowKind>(db: Database, _kind: K, name: string): Promise<RowOf[K][]> {
  return (await db.getAllFromIndex('views', 'group', name)) as RowOf[K][];
}

export async function settings(db: Database): Promise<Settings> {
  return (await row(db, 'settings', 'app'))?.settings ?? FIRST_SETTINGS;
}

/** A duty with a time: a wait, a re-check, or a defect with a date, and the bike it is on. */
export interface DueLine {
  key: string;
  is: 'wait' | 'recheck' | 'defect';
  id: Id;
  bikeId: Id;
  bikeName: string;
  jointId?: Id;
  title: string;
  /** The kind of wait or re-check. */
  kind: string;
  dueAtMs: number;
  startedAtMs: number;
}

function dueLine(item: Row, bikes: Map<Id, string>): DueLine[] {
  if (item.is !== 'wait' && item.is !== 'recheck' && item.is !== 'defect') return [];
  const { key, bikeId, jointId, dueAtMs = 0 } = item;
  const common = { key, bikeId, bikeName: bikes.get(bikeId) ?? '', dueAtMs, ...(jointId ? { jointId } : {}) };
  if (item.is === 'wait') {
    return [
      {
        ...common,
        is: 'wait',
        id: item.waitId,
        title: item.title,
        kind: item.waitKind,
        startedAtMs: item.startedAtMs,
      },
    ];
  }
  if (item.is === 'recheck') {
    return [
      {
        ...common,
        is: 'recheck',
        id: item.recheckId,
        title: item.title,
        kind: item.kind,
        startedAtMs: item.setAtMs,
      },
    ];
  }
  return [
    {
      ...common,
      is: 'defect',
      id: item.defectId,
      title: item.words,
      kind: item.decision,
      startedAtMs: item.foundAtMs,
    },
  ];
}

/** Everything with a due time up to `untilMs`, earliest first. */
export async function due(db: Database, untilMs: number): Promise<DueLine[]> {
  const tx = db.transaction('views');
  const items = await tx.store.index('dueAtMs').getAll(IDBKeyRange.upperBound(untilMs));
  const ids = [...new Set(items.flatMap((item) => ('bikeId' in item ? [item.bikeId] : [])))];
  const bikes = (await Promise.all(ids.map((id) => tx.store.get(`bike/${id}`)))) as (
    | RowOf['bike']
    | undefined
  )[];
  const names = new Map(bikes.flatMap((bike) => (bike ? [[bike.bikeId, bike.name] as const] : [])));
  return items.flatMap((item) => dueLine(item, names));
}

/** A line of a history, with what later entries made of it. */
export interface HistoryLine {
  seq: number;
  entry: Entry;
  fixes: RowOf['fix']['fixes'];
}

export interface HistoryPage {
  lines: HistoryLine[];
  /** Where the next page starts; absent at the end. */
  next?: [string, number];
}

/**
 * A page of the history of a bike, a part, a joint or a tool, newest first.
 * @param place `b:`, `p:`, `j:` or `t:` with the id
 * @param after where the page before ended
 */
export async function history(
  db: Database,
  place: string,
  after: [string, number] | undefined,
  limit: number,
): Promise<HistoryPage> {
  const tx = db.transaction(['journal', 'views']);
  const index = tx.objectStore('journal').index('places');
  const range = IDBKeyRange.bound(after?.[0] ?? `${place}:`, `${place};`, false, true);
  const lines: HistoryLine[] = [];
  let last: [string, number] | undefined;
  let cursor = after
    ? await index.openCursor(range).then(async (open) => {
        // Stands on the line before; the first line not yet shown is the one behind it.
        const key =
          open && (open.key !== after[0] || open.primaryKey < after[1]) ? [after[0], after[1]] : undefined;
        const at = key && open ? await open.continuePrimaryKey(key[0] as string, key[1] as number) : open;
        return at && at.key === after[0] && at.primaryKey === after[1] ? at.continue() : at;
      })
    : await index.openCursor(range);
  while (cursor && lines.length < limit) {
    const { seq, entry } = cursor.value;
    lines.push({ seq, entry: upcast(entry), fixes: [] });
    last = [cursor.key, cursor.primaryKey];
    cursor = await cursor.continue();
  }
  const views = tx.objectStore('views');
  const fixed = await Promise.all(lines.map(({ entry }) => views.get(`fix/${entry.id}`)));
  fixed.forEach((fix, at) => {
    const line = lines[at];
    if (fix?.is === 'fix' && line) line.fixes = fix.fixes;
  });
  return cursor && last ? { lines, next: last } : { lines };
}

/** One entry with what became of it. */
export async function line(db: Database, entryId: Id): Promise<HistoryLine | undefined> {
  const found = await db.getFromIndex('journal', 'id', entryId);
  if (!found) return undefined;
  const fix = await row(db, 'fix', entryId);
  return { seq: found.seq, entry: upcast(found.entry), fixes: fix?.fixes ?? [] };
}

export async function photo(db: Database, photoId: Id): Promise<Photo | undefined> {
  return db.get('photos', photoId);
}

/** Whether the views were made by this version of the code. */
export async function viewsAreCurrent(db: Database): Promise<boolean> {
  return (await db.get('meta', VIEWS_META))?.value === VIEWS_VERSION;
}
