import { deleteDB } from 'idb';
import type { Photo } from '../journal/commands.ts';
import type { Entry } from '../journal/entries.ts';
import { foldWhole } from '../journal/foldWhole.ts';
import { readable, upcast } from '../journal/upcasts.ts';
import { checkStore } from './check.ts';
import { keepPhoto, takeIn } from './copies.ts';
import type { Database } from './database.ts';

/** What a store is filled with that takes the place of one that does not open. */
export interface Filling {
  entries: readonly Entry[];
  photos: AsyncIterable<Photo>;
}

/** Whether every line, row and photo of a store can be read, and the journal folded. */
export async function canBeUsed(db: Database): Promise<boolean> {
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
 * @param open opens the store under its name
 * @throws when a page of the app holds the store, or the browser cannot delete it
 */
export async function fillAnew(
  name: string,
  open: () => Promise<Database>,
  { entries, photos }: Filling,
  onProgress: (share: number) => void,
): Promise<Database> {
  foldWhole(entries.filter(readable).map(upcast));
  await deleted(name);
  const db = await open();
  // Photos mean nothing until an entry names them, so they may come one by one.
  for await (const photo of photos) await keepPhoto(db, photo);
  await takeIn(db, entries, onProgress);
  return db;
}

function deleted(name: string): Promise<void> {
  return new Promise((done, failed) => {
    const blocked = () =>
      failed(new Error('another page of this app holds the logbook; close it and try again'));
    deleteDB(name, { blocked }).then(done, failed);
  });
}
