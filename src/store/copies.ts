import type { Photo } from '../journal/commands.ts';
import type { Entry, Id } from '../journal/entries.ts';
import { gapsOf, isEntry, RENUMBERED_META } from './check.ts';
import type { Database } from './database.ts';
import { type FoldTransaction, foldStored } from './rebuild.ts';

const LINES = 1000;

/** Entries as they are stored, in the order they came to this phone; those after a number, a batch at a time. */
export async function entriesAfter(db: Database, seq: number): Promise<{ entries: Entry[]; last: number }> {
  const lines = await linesAfter(db, seq);
  return { entries: lines.map(({ entry }) => entry), last: lines.at(-1)?.seq ?? seq };
}

/** Lines as they are stored, after a number, a batch at a time. */
export async function linesAfter(db: Database, seq: number): Promise<{ seq: number; entry: Entry }[]> {
  for (let from = seq; ; ) {
    const lines = await db.getAll('journal', IDBKeyRange.lowerBound(from, true), LINES);
    const last = lines.at(-1);
    // A damaged line may hold anything; the check of the logbook tells of it.
    const whole = lines.filter(({ entry }) => isEntry(entry));
    if (!last || whole.length > 0) return whole;
    from = last.seq;
  }
}

/** Under which number an entry stands. */
export const seqUnder = (db: Database, entryId: Id): Promise<number | undefined> =>
  db.getKeyFromIndex('journal', 'id', entryId);

/** How many entries there are, those up to a number where one is given, and how many photos. */
export async function counts(db: Database, upToSeq?: number): Promise<{ entries: number; photos: number }> {
  const range = upToSeq === undefined ? null : IDBKeyRange.upperBound(upToSeq);
  const [entries, photos] = await Promise.all([db.count('journal', range), db.count('photos')]);
  return { entries, photos };
}

export const photoIds = (db: Database): Promise<Id[]> => db.getAllKeys('photos');

/** The photo after an id, in the order of the ids; one at a time, since each is heavy. */
export async function photoAfter(db: Database, photoId: Id | undefined): Promise<Photo | undefined> {
  const range = photoId === undefined ? null : IDBKeyRange.lowerBound(photoId, true);
  const [photo] = await db.getAll('photos', range, 1);
  return photo;
}

/** Those of the ids that are in the journal, with the entry under each. */
export async function entriesUnder(db: Database, ids: readonly Id[]): Promise<Map<Id, Entry>> {
  const index = db.transaction('journal').store.index('id');
  const lines = await Promise.all(ids.map((id) => index.get(id)));
  return new Map(lines.flatMap((line) => (line ? [[line.entry.id, line.entry]] : [])));
}

/** A photo under its id, if it is there. */
export const photoUnder = (db: Database, photoId: Id): Promise<Photo | undefined> =>
  db.get('photos', photoId);

/** What was noted beside the journal under a name. */
export async function noteOnPhone(db: Database, name: string): Promise<unknown> {
  return (await db.get('meta', name))?.value;
}

/** Notes something beside the journal; undefined takes the note away. */
export async function setNoteOnPhone(db: Database, name: string, value: unknown): Promise<void> {
  const tx = db.transaction('meta', 'readwrite', { durability: 'strict' });
  await (value === undefined ? tx.store.delete(name) : tx.store.put({ name, value }));
  await tx.done;
}

/** Keeps a photo unless one is there under its id. On its own it does nothing: an entry has to name it. */
export async function keepPhoto(db: Database, photo: Photo): Promise<void> {
  const tx = db.transaction('photos', 'readwrite', { durability: 'strict' });
  if ((await tx.store.getKey(photo.photoId)) === undefined) await tx.store.put(photo);
  await tx.done;
}

/**
 * Takes entries from another phone into the journal and folds the rows anew, all in one transaction: whatever ends it
 * early, the logbook is as it was. An entry whose id is there already is passed over.
 * @returns how many were new
 */
export async function takeIn(
  db: Database,
  entries: readonly Entry[],
  onProgress: (share: number) => void,
): Promise<number> {
  const tx: FoldTransaction = db.transaction(['journal', 'views', 'meta'], 'readwrite', {
    durability: 'strict',
  });
  tx.done.catch(() => {});
  try {
    const added = await addLines(tx, entries);
    if (added > 0) await foldStored(tx, onProgress);
    tx.commit();
    await tx.done;
    return added;
  } catch (thrown) {
    abort(tx);
    throw thrown;
  }
}

/** Adds those entries that are not there yet. @returns how many were new */
async function addLines(tx: FoldTransaction, entries: readonly Entry[]): Promise<number> {
  const journal = tx.objectStore('journal');
  const before = (await journal.openKeyCursor(null, 'prev'))?.key ?? 0;
  let seq = before;
  for (const entry of entries) {
    if ((await journal.index('id').getKey(entry.id)) !== undefined) continue;
    seq += 1;
    await journal.add({ seq, entry, places: [] });
  }
  return seq - before;
}

/** Left alone, a transaction whose work failed would keep what had been put by then. */
function abort(tx: Pick<IDBTransaction, 'abort'>): void {
  try {
    tx.abort();
  } catch {
    // Already aborted by the failure itself.
  }
}

/** What is put back out of a copy that carries a checksum of each entry and photo. */
export interface Mending {
  /** They no longer say what they said when they were written. */
  entries: readonly Entry[];
  photos: readonly Photo[];
  /** How many entries were taken in again just before, and so stand under other numbers than before. */
  renumbered: number;
}

/**
 * Puts back what no longer says what it said, throws away lines that hold no entry, and folds the rows anew, all in one
 * transaction.
 */
export async function mend(db: Database, { entries, photos, renumbered }: Mending): Promise<void> {
  const stores: ('journal' | 'views' | 'meta' | 'photos')[] = ['journal', 'views', 'meta', 'photos'];
  const tx = db.transaction(stores, 'readwrite', { durability: 'strict' });
  tx.done.catch(() => {});
  try {
    const journal = tx.objectStore('journal');
    for (const photo of photos) await tx.objectStore('photos').put(photo);
    for (const entry of entries) {
      const line = await journal.index('id').get(entry.id);
      if (line) await journal.put({ ...line, entry });
    }
    const lines = await journal.getAll();
    const meta = tx.objectStore('meta');
    const before = Number((await meta.get(RENUMBERED_META))?.value ?? 0);
    const now = Math.min(
      gapsOf(
        lines.filter(({ entry }) => isEntry(entry)),
        before,
      ),
      renumbered,
    );
    for (const { seq, entry } of lines) if (!isEntry(entry)) await journal.delete(seq);
    await meta.put({ name: RENUMBERED_META, value: before + now });
    await foldStored(tx as unknown as FoldTransaction, () => {});
    tx.commit();
    await tx.done;
  } catch (thrown) {
    abort(tx);
    throw thrown;
  }
}
