import type { Photo } from '../journal/commands.ts';
import type { Entry, Id } from '../journal/entries.ts';
import { foldWhole } from '../journal/foldWhole.ts';
import { type Row, VIEWS_VERSION } from '../journal/rows.ts';
import { readable, upcast } from '../journal/upcasts.ts';
import { type Database, type JournalLine, VIEWS_META } from './database.ts';

/** What was found wrong in the store; all counts nought and all lists empty where nothing is. */
export interface StoreCheck {
  entries: number;
  photos: number;
  /** Running numbers that no line has, beyond those of the demo that was taken out. */
  gaps: number;
  /** Numbers of lines that hold no entry. */
  noEntry: number[];
  /** Entries of a newer version, which this one keeps and does not read. */
  newer: number;
  /** Keys of rows that are not what the journal gives: absent, too many, or different. */
  rows: string[];
  /** Entries that would not be found where they belong. */
  places: Id[];
  /** Photos that an entry names and that are not there, or hold no picture. */
  photosMissing: Id[];
  /** Whether the note is gone by which version of the code the rows were made. */
  versionLost: boolean;
  /** Why the journal could not be folded at all. */
  unfoldable?: string;
}

/** Whether something is shaped like an entry. */
export function isEntry(thing: unknown): thing is Entry {
  const { id, type, v, happenedAtMs, writtenAtMs } = (thing ?? {}) as Partial<Record<string, unknown>>;
  const numbers = [v, happenedAtMs, writtenAtMs].every((value) => Number.isFinite(value));
  return typeof id === 'string' && typeof type === 'string' && numbers;
}

/** Text that does not depend on the order in which fields were put. */
const comparable = (value: unknown): string =>
  JSON.stringify(value, (_key, part: unknown) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );

const holdsPicture = (photo: Photo | undefined): boolean =>
  photo?.buf instanceof ArrayBuffer && photo.buf.byteLength > 0;

/** Looks whether the store holds together: numbers, lines, rows against a fresh fold, photos. Changes nothing. */
export async function checkStore(db: Database): Promise<StoreCheck> {
  const tx = db.transaction(['journal', 'views', 'meta']);
  const [lines, rows, version, renumbered] = await Promise.all([
    tx.objectStore('journal').getAll(),
    tx.objectStore('views').getAll(),
    tx.objectStore('meta').get(VIEWS_META),
    tx.objectStore('meta').get(RENUMBERED_META),
  ]);
  const whole = lines.filter(({ entry }) => isEntry(entry));
  const known = whole.filter(({ entry }) => readable(entry));
  const entries = known.map(({ entry }) => upcast(entry));
  const named = new Set(whole.flatMap(({ entry }) => (entry as { photoIds?: Id[] }).photoIds ?? []));
  const photosMissing: Id[] = [];
  // One at a time: each is heavy.
  for (const photoId of named)
    if (!holdsPicture(await db.get('photos', photoId))) photosMissing.push(photoId);
  const found: StoreCheck = {
    entries: lines.length,
    photos: await db.count('photos'),
    gaps: gapsOf(lines, Number(renumbered?.value ?? 0)),
    noEntry: lines.filter(({ entry }) => !isEntry(entry)).map(({ seq }) => seq),
    newer: whole.length - known.length,
    ...{ rows: [], places: [], photosMissing },
    versionLost: version?.value !== VIEWS_VERSION,
  };
  try {
    return { ...found, ...againstFold(rows, known, entries) };
  } catch (thrown) {
    return { ...found, unfoldable: String((thrown as Error)?.message ?? thrown) };
  }
}

/** Under this lies how many lines were taken in again under other numbers, after theirs were lost. */
export const RENUMBERED_META = 'renumbered';

/** Numbers that no line has, but for those of the demo and of lines that were renumbered. */
export function gapsOf(lines: readonly JournalLine[], renumbered: number): number {
  const last = lines.at(-1)?.seq ?? 0;
  const takenOut = lines.reduce(
    (sum, { entry }) => sum + (isEntry(entry) && entry.type === 'demo-removed' ? entry.lines : 0),
    0,
  );
  return Math.max(0, last - lines.length - takenOut - renumbered);
}

function againstFold(
  stored: readonly Row[],
  lines: readonly JournalLine[],
  entries: readonly Entry[],
): Pick<StoreCheck, 'rows' | 'places'> {
  const fresh = foldWhole(entries);
  const texts = new Map(stored.map((row) => [row.key, comparable(row)]));
  const rows: string[] = [];
  for (const [key, row] of fresh.rows.rows) {
    if (texts.get(key) !== comparable(row)) rows.push(key);
    texts.delete(key);
  }
  const places = lines.flatMap(({ entry, places: held }) =>
    fresh.places.get(entry.id)?.join() === held?.join() ? [] : [entry.id],
  );
  return { rows: [...rows, ...texts.keys()], places };
}
