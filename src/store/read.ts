import type { DueLine, HistoryLine, HistoryMark, HistoryPage } from '../journal/answers.ts';
import type { Photo } from '../journal/commands.ts';
import { asItReads } from '../journal/effective.ts';
import type { Id, Settings } from '../journal/entries.ts';
import { FIRST_SETTINGS } from '../journal/firstSettings.ts';
import { type FixRow, type Row, type RowKind, type RowOf, VIEWS_VERSION } from '../journal/rows.ts';
import { titleToday } from '../journal/titleToday.ts';
import { readable, upcast } from '../journal/upcasts.ts';
import { type Database, type JournalLine, VIEWS_META } from './database.ts';

/** The rows as they stand at one moment. */
export interface Moment {
  /** One row by its kind and id. */
  row<K extends RowKind>(kind: K, id: Id): Promise<RowOf[K] | undefined>;
  /** The rows of one group, such as `joint@<bike>`. */
  group<K extends RowKind>(kind: K, name: string): Promise<RowOf[K][]>;
}

/** Reads several rows in one transaction, so that none of them is newer than another. */
export function momentOf(db: Database): Moment {
  const { store } = db.transaction('views');
  const groups = store.index('group');
  return {
    row: async <K extends RowKind>(kind: K, id: Id) =>
      (await store.get(`${kind}/${id}`)) as RowOf[K] | undefined,
    group: async <K extends RowKind>(_kind: K, name: string) => (await groups.getAll(name)) as RowOf[K][],
  };
}

export async function settings(db: Database): Promise<Settings> {
  return (await momentOf(db).row('settings', 'app'))?.settings ?? FIRST_SETTINGS;
}

function dueLine(item: Row, bikes: Map<Id, RowOf['bike']>, joints: Map<Id, RowOf['joint']>): DueLine[] {
  if (item.is !== 'wait' && item.is !== 'recheck' && item.is !== 'defect') return [];
  const { key, is, bikeId, jointId, dueAtMs = 0 } = item;
  const { name: bikeName = '', putAway } = bikes.get(bikeId) ?? {};
  const about =
    item.is === 'wait'
      ? { id: item.waitId, kind: item.waitKind, startedAtMs: item.startedAtMs, movedMs: item.clockMovedMs }
      : item.is === 'recheck'
        ? { id: item.recheckId, kind: item.kind, startedAtMs: item.setAtMs }
        : { id: item.defectId, kind: item.decision, startedAtMs: item.foundAtMs };
  const title = item.is === 'defect' ? item.words : titleToday(item, joints.get(jointId ?? '')).title;
  return [
    {
      ...{ key, is, bikeId, bikeName, dueAtMs, title, ...about },
      ...(jointId ? { jointId } : {}),
      ...(putAway === undefined ? {} : { away: true }),
    },
  ];
}

/** Everything with a due time up to `untilMs`, earliest first. */
export async function due(db: Database, untilMs: number): Promise<DueLine[]> {
  const tx = db.transaction('views');
  const items = await tx.store.index('dueAtMs').getAll(IDBKeyRange.upperBound(untilMs));
  const keys = items.flatMap((item) => [
    ...('bikeId' in item ? [`bike/${item.bikeId}`] : []),
    ...('jointId' in item && item.jointId !== undefined ? [`joint/${item.jointId}`] : []),
  ]);
  const about = await Promise.all([...new Set(keys)].map((key) => tx.store.get(key)));
  const bikes = new Map(about.flatMap((row) => (row?.is === 'bike' ? [[row.bikeId, row] as const] : [])));
  const joints = new Map(about.flatMap((row) => (row?.is === 'joint' ? [[row.jointId, row] as const] : [])));
  return items.flatMap((item) => dueLine(item, bikes, joints));
}

/** What a line sorts by within the place it was found at: newest first. */
const whenOf = ({ places }: JournalLine, source: string): string => {
  const place = places.find((one) => one.startsWith(`${source}:`)) ?? '';
  return place.slice(source.length + 1);
};

/** Newest first; within a millisecond the greater id. */
const before = (a: readonly [string, Id], b: readonly [string, Id]): number =>
  a[0] === b[0] ? (a[1] < b[1] ? 1 : a[1] > b[1] ? -1 : 0) : a[0] < b[0] ? -1 : 1;

/**
 * Where a history is found. That of a part has the lines that name it, and those of every joint that it was ever
 * part of; which joints these are, the lines that made or described them say.
 */
async function sourcesOf(index: PlacesIndex, place: string): Promise<string[]> {
  if (!place.startsWith('p:')) return [place];
  const named = await index.getAll(IDBKeyRange.bound(`${place}:`, `${place};`, false, true));
  const joints = named.flatMap(({ entry }) =>
    entry.type === 'joint-made' || entry.type === 'joint-described' ? [`j:${entry.jointId}`] : [],
  );
  return [place, ...new Set(joints)];
}

interface PlacesIndex {
  getAll(range: IDBKeyRange, count?: number): Promise<JournalLine[]>;
}

/** The first lines of one source behind a mark, and with them all of the last millisecond among them. */
async function someOf(index: PlacesIndex, source: string, from: string, count: number) {
  const range = IDBKeyRange.bound(`${source}:${from}`, `${source};`, false, true);
  const found = await index.getAll(range, count);
  const last = found.at(-1);
  if (!last || found.length < count) return found;
  const lump = await index.getAll(IDBKeyRange.only(`${source}:${whenOf(last, source)}`));
  return [...found, ...lump];
}

/**
 * A page of the history of a bike, a part, a joint or a tool, newest first.
 * @param place `b:`, `p:`, `j:` or `t:` with the id
 * @param after where the page before ended
 */
export async function history(
  db: Database,
  place: string,
  after: HistoryMark | undefined,
  limit: number,
): Promise<HistoryPage> {
  const tx = db.transaction(['journal', 'views']);
  const index = tx.objectStore('journal').index('places');
  const sources = await sourcesOf(index, place);
  // Lines of the very millisecond of the mark come again and are left out.
  const again = after ? await Promise.all(sources.map((one) => index.count(`${one}:${after[0]}`))) : [];
  const found = await Promise.all(
    sources.map((one, at) => someOf(index, one, after?.[0] ?? '', limit + 1 + (again[at] ?? 0))),
  );
  const marked = new Map<number, { mark: HistoryMark; line: JournalLine }>();
  for (const [at, lines] of found.entries()) {
    for (const line of lines) {
      const mark = [whenOf(line, sources[at] as string), line.entry.id] as const;
      if (!after || before(after, mark) < 0) marked.set(line.seq, { mark, line });
    }
  }
  const sorted = [...marked.values()].sort((a, b) => before(a.mark, b.mark));
  const shown = sorted.slice(0, limit);
  const page = await linesOf(
    tx.objectStore('views'),
    shown.map(({ line }) => line),
  );
  const last = shown.at(-1);
  return last && sorted.length > limit ? { ...page, next: last.mark } : page;
}

/**
 * What corrections made of entries, by their ids. Ids sort by creation, so one reading from the first to the last of
 * them finds the corrections of all, and few others.
 */
async function fixesOf(
  views: { getAll(range: IDBKeyRange): Promise<Row[]> },
  entries: readonly { id: Id }[],
): Promise<Map<Id, FixRow['fixes']>> {
  const keys = entries.map(({ id }) => `fix/${id}`).sort();
  const [first, last = first] = [keys[0], keys.at(-1)];
  if (first === undefined) return new Map();
  const rows = await views.getAll(IDBKeyRange.bound(first, last));
  return new Map(rows.flatMap((row) => (row.is === 'fix' ? [[row.entryId, row.fixes] as const] : [])));
}

/** Lines with what later entries made of them; those that cannot be read apart. */
async function linesOf(
  views: { getAll(range: IDBKeyRange): Promise<Row[]> },
  lines: readonly JournalLine[],
): Promise<Pick<HistoryPage, 'lines' | 'unread'>> {
  const known = lines.filter(({ entry }) => readable(entry));
  const fixes = await fixesOf(
    views,
    known.map(({ entry }) => entry),
  );
  return {
    lines: known.map(({ seq, entry: stored }) => {
      const entry = upcast(stored);
      const standing = (fixes.get(entry.id) ?? []).filter(({ struckOut }) => !struckOut);
      return { seq, entry, now: asItReads(entry, standing), fixes: standing };
    }),
    unread: lines
      .filter(({ entry }) => !readable(entry))
      .map(({ seq, entry: { id, v, type, happenedAtMs } }) => ({
        seq,
        unread: { id, v, type, happenedAtMs },
      })),
  };
}

/** One entry with what became of it; nothing where it is not there or cannot be read. */
export async function line(db: Database, entryId: Id): Promise<HistoryLine | undefined> {
  const tx = db.transaction(['journal', 'views']);
  const found = await tx.objectStore('journal').index('id').get(entryId);
  const { lines } = await linesOf(tx.objectStore('views'), found ? [found] : []);
  return lines[0];
}

export async function photo(db: Database, photoId: Id): Promise<Photo | undefined> {
  return db.get('photos', photoId);
}

/** Whether the views were made by this version of the code. */
export async function viewsAreCurrent(db: Database): Promise<boolean> {
  return (await db.get('meta', VIEWS_META))?.value === VIEWS_VERSION;
}
