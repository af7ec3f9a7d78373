import { deleteDB } from 'idb';
import type { Photo } from '../journal/commands.ts';
import type { Entry } from '../journal/entries.ts';
import { foldWhole } from '../journal/foldWhole.ts';
import { readable, upcast } from '../journal/upcasts.ts';
import { checkStore } from './check.ts';
import { keepPhoto, takeIn } from './copies.ts';
import { type Database, openDatabase } from './database.ts';

/** What a store is filled with that takes the place of one that does not open. */
export interface Filling {
  entries: readonly Entry[];
  photos: AsyncIterable<Photo>;
}

/** Whether every line, row and photo of a store can be read, and the journal folded. */
async function canBeUsed(db: Database): Promise<boolean> {
  try {
    return (await checkStore(db)).unfoldable === undefined;
  } catch {
    return false;
  }
}

/**
 * Deletes a store that cannot be used and fills an empty one in its place. What it is filled with is folded first, so
 * that nothing is deleted for entries that would not make a logbook. Whatever ends it early leaves the old store or an
 * empty one; the entries come in all at once.
 * @param opened the store, where it opens at all; closed before it is deleted
 * @param onBlocked told where another page holds the store: it is deleted once that page lets go
 * @returns false when the store can be used after all: then nothing was deleted
 * @throws when the browser cannot delete it
 */
export async function beginAnew(
  opened: Database | undefined,
  name: string,
  { entries, photos }: Filling,
  { onProgress, onBlocked }: { onProgress: (share: number) => void; onBlocked: () => void },
): Promise<boolean> {
  if (opened && (await canBeUsed(opened))) return false;
  foldWhole(entries.filter(readable).map(upcast));
  opened?.close();
  await deleteDB(name, { blocked: onBlocked });
  const db = await openDatabase(name);
  try {
    // Photos mean nothing until an entry names them, so they may come one by one.
    for await (const photo of photos) await keepPhoto(db, photo);
    await takeIn(db, entries, onProgress);
  } finally {
    db.close();
  }
  return true;
}
