import type { DueLine, HistoryLine, HistoryPage } from '../journal/answers.ts';
import type { Photo } from '../journal/commands.ts';
import type { Id, Settings } from '../journal/entries.ts';
import { FIRST_SETTINGS } from '../journal/reducers/settings.ts';
import { type Row, type RowKind, type RowOf, VIEWS_VERSION } from '../journal/rows.ts';
import { titleToday } from '../journal/titleToday.ts';
import { upcast } from '../journal/upcasts.ts';
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

function dueLine(item: Row, bikes: Map<Id, string>, joints: Map<Id, RowOf['joint']>): DueLine[] {
  if (item.is !== 'wait' && item.is !== 'recheck' && item.is !== 'defect') return [];
  const { key, bikeId, jointId, dueAtMs = 0 } = item;
  const common = { key, bikeId, bikeName: bikes.get(bikeId) ?? '', dueAtMs, ...(jointId ? { jointId } : {}) };
  const joint = jointId === undefined ? undefined : joints.get(jointId);
  if (item.is === 'wait') {
    return [
      {
        ...common,
        is: 'wait',
        id: item.waitId,
        title: titleToday(item, joint).title,
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
        title: titleToday(item, joint).title,
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
  const keys = items.flatMap((item) => [
    ...('bikeId' in item ? [`bike/${item.bikeId}`] : []),
    ...('jointId' in item && item.jointId !== undefined ? [`joint/${item.jointId}`] : []),
  ]);
  const about = await Promise.all([...new Set(keys)].map((key) => tx.store.get(key)));
  const names = new Map(
    about.flatMap((row) => (row?.is === 'bike' ? [[row.bikeId, row.name] as const] : [])),
  );
  const joints = new Map(about.flatMap((row) => (row?.is === 'joint' ? [[row.jointId, row] as const] : [])));
  return items.flatMap((item) => dueLine(item, names, joints));
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
  const prefix = `${place}:`;
  const placeOf = ({ places }: JournalLine) => places.find((one) => one.startsWith(prefix)) ?? '';
  // Lines of the very millisecond of the last one come again and are left out; in one lump, since a cursor
  // costs as much for each line as the lump does for a page.
  const again = after ? await index.count(after[0]) : 0;
  const range = IDBKeyRange.bound(after?.[0] ?? prefix, `${place};`, false, true);
  const found = await index.getAll(range, again + limit + 1);
  // Within a millisecond the index goes oldest first: where the lump ends there, the newest are still to come.
  const [before, end] = found.slice(-2).map(placeOf);
  const cut = found.length > again + limit && end === before ? end : undefined;
  const whole =
    cut === undefined
      ? found
      : [...found.filter((one) => placeOf(one) !== cut), ...(await index.getAll(cut))];
  const sorted = whole
    .map((one) => [placeOf(one), one] as const)
    .sort(([a, one], [b, other]) => (a === b ? other.seq - one.seq : a < b ? -1 : 1));
  const rest = sorted
    .filter(([at, { seq }]) => !after || at !== after[0] || seq < after[1])
    .map(([, one]) => one);
  const shown = rest.slice(0, limit);
  const last = shown.at(-1);
  if (!last) return { lines: [] };
  const ids = shown.map(({ entry }) => entry.id).sort();
  const fixRange = IDBKeyRange.bound(`fix/${ids[0]}`, `fix/${ids.at(-1)}`);
  const fixes = new Map(
    (await tx.objectStore('views').getAll(fixRange)).flatMap((fix) =>
      fix.is === 'fix' ? [[fix.entryId, fix.fixes] as const] : [],
    ),
  );
  const lines = shown.map(({ seq, entry }) => ({
    seq,
    entry: upcast(entry),
    fixes: fixes.get(entry.id) ?? [],
  }));
  return rest.length > limit ? { lines, next: [placeOf(last), last.seq] } : { lines };
}

/** One entry with what became of it. */
export async function line(db: Database, entryId: Id): Promise<HistoryLine | undefined> {
  const tx = db.transaction(['journal', 'views']);
  const [found, fix] = await Promise.all([
    tx.objectStore('journal').index('id').get(entryId),
    tx.objectStore('views').get(`fix/${entryId}`),
  ]);
  if (!found) return undefined;
  return { seq: found.seq, entry: upcast(found.entry), fixes: fix?.is === 'fix' ? fix.fixes : [] };
}

export async function photo(db: Database, photoId: Id): Promise<Photo | undefined> {
  return db.get('photos', photoId);
}

/** Whether the views were made by this version of the code. */
export async function viewsAreCurrent(db: Database): Promise<boolean> {
  return (await db.get('meta', VIEWS_META))?.value === VIEWS_VERSION;
}
