import type { Photo } from '../journal/commands.ts';
import type { Entry, Id } from '../journal/entries.ts';
import type { Database } from './database.ts';
import { type FoldTransaction, foldStored } from './rebuild.ts';

const LINES = 1000;

/** Entries as they are stored, in the order they came to this phone; those after a number, a batch at a time. */
export async function entriesAfter(db: Database, seq: number): Promise<{ entries: Entry[]; last: number }> {
  const lines = await db.getAll('journal', IDBKeyRange.lowerBound(seq, true), LINES);
  return { entries: lines.map(({ entry }) => entry), last: lines.at(-1)?.seq ?? seq };
}

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
  const journal = tx.objectStore('journal');
  const before = (await journal.openKeyCursor(null, 'prev'))?.key ?? 0;
  let seq = before;
  for (const entry of entries) {
    if ((await journal.index('id').getKey(entry.id)) !== undefined) continue;
    seq += 1;
    await journal.add({ seq, entry, places: [] });
  }
  if (seq > before) await foldStored(tx, onProgress);
  tx.commit();
  await tx.done;
  return seq - before;
}
