import type { IDBPTransaction } from 'idb';
import type { Entry } from '../journal/entries.ts';
import { foldWhole } from '../journal/foldWhole.ts';
import { VIEWS_VERSION } from '../journal/rows.ts';
import { readable, upcast } from '../journal/upcasts.ts';
import { isEntry } from './check.ts';
import { type Database, type JournalLine, type Schema, VIEWS_META } from './database.ts';
import { viewsAreCurrent } from './read.ts';

/** Lines read, and rows put, in one go: enough to be quick, few enough to tell how far it is. */
const BATCH = 5000;
/** Reading is about this share of the work. */
const READING = 0.4;

/**
 * Folds the views anew when the code that made them has changed: the journal is read, folded and put within one
 * transaction. Interrupted, nothing has changed; a second page that wants the same finds it done.
 * @param onProgress called with the share done, 0 to 1
 * @returns whether there was anything to do
 */
export async function rebuildIfOld(db: Database, onProgress: (share: number) => void): Promise<boolean> {
  if (await viewsAreCurrent(db)) return false;
  const tx: FoldTransaction = db.transaction(['journal', 'views', 'meta'], 'readwrite', {
    durability: 'strict',
  });
  tx.done.catch(() => {});
  const meta = tx.objectStore('meta');
  if ((await meta.get(VIEWS_META))?.value === VIEWS_VERSION) {
    await tx.done;
    return false;
  }
  await sortIn(tx, onProgress);
  return true;
}

/** Folds the rows anew from the journal, also where they seem current, in one transaction. */
export async function sortAnew(db: Database, onProgress: (share: number) => void): Promise<void> {
  const tx: FoldTransaction = db.transaction(['journal', 'views', 'meta'], 'readwrite', {
    durability: 'strict',
  });
  tx.done.catch(() => {});
  await sortIn(tx, onProgress);
}

async function sortIn(tx: FoldTransaction, onProgress: (share: number) => void): Promise<void> {
  await foldStored(tx, onProgress);
  await tx.objectStore('meta').put({ name: VIEWS_META, value: VIEWS_VERSION });
  tx.commit();
  await tx.done;
  onProgress(1);
}

/** A transaction in which the rows can be folded anew from the journal. */
export type FoldTransaction = IDBPTransaction<Schema, ('journal' | 'views' | 'meta')[], 'readwrite'>;

/** Replaces every row, and the places of every line, by what the journal of the transaction gives. */
export async function foldStored(tx: FoldTransaction, onProgress: (share: number) => void): Promise<void> {
  const [journal, views] = [tx.objectStore('journal'), tx.objectStore('views')];
  const total = Math.max(1, await journal.count());
  const entries: Entry[] = [];
  const eachBatch = async (work: (lines: JournalLine[]) => Promise<void> | void) => {
    for (let from = 0; ; ) {
      const lines: JournalLine[] = await journal.getAll(IDBKeyRange.lowerBound(from, true), BATCH);
      await work(lines);
      const last = lines.at(-1);
      if (!last || lines.length < BATCH) return;
      from = last.seq;
    }
  };
  let read = 0;
  await eachBatch((lines) => {
    for (const { entry } of lines) if (isEntry(entry) && readable(entry)) entries.push(upcast(entry));
    read += lines.length;
    onProgress((READING * read) / total);
  });
  const { rows, places } = foldWhole(entries);
  await views.clear();
  let asked = 0;
  const all = rows.rows.size + 1;
  for (const row of rows.rows.values()) {
    const put = views.put(row);
    asked += 1;
    if (asked % BATCH !== 0) continue;
    await put;
    onProgress(READING + ((1 - READING) * asked) / all);
  }
  // Where a line is found may have changed with the code; what it says never does.
  await eachBatch(async (lines) => {
    const moved = lines.flatMap((line) => {
      const now = places.get(line.entry?.id);
      return now === undefined || now.join() === line.places.join() ? [] : [{ ...line, places: now }];
    });
    await Promise.all(moved.map((line) => journal.put(line)));
  });
}
