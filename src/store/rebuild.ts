import { factKeys } from '../journal/facts.ts';
import { fold } from '../journal/fold.ts';
import { VIEWS_VERSION } from '../journal/rows.ts';
import { upcast } from '../journal/upcasts.ts';
import { type Database, type JournalLine, VIEWS_META } from './database.ts';
import { viewsAreCurrent } from './read.ts';
import { Missing, TransactionRows, type WriteTransaction } from './transactionRows.ts';

/** Lines folded in one transaction: few enough to keep other tabs from waiting long. */
const BATCH = 200;

async function foldLine(tx: WriteTransaction, line: JournalLine): Promise<void> {
  const entry = upcast(line.entry);
  const rows = new TransactionRows(undefined, line.seq);
  await rows.prefetch(tx, factKeys(entry));
  let places: string[] | undefined;
  while (!places) {
    try {
      rows.reset();
      places = fold(rows, entry);
    } catch (thrown) {
      if (!(thrown instanceof Missing)) throw thrown;
      await thrown.fetch(tx);
    }
  }
  const asked: Promise<unknown>[] = [];
  for (const [key, row] of rows.written) {
    asked.push(row ? tx.objectStore('views').put(row) : tx.objectStore('views').delete(key));
  }
  // Where a line is found may have changed with the code; what it says never does.
  if (places.join() !== line.places.join()) asked.push(tx.objectStore('journal').put({ ...line, places }));
  await Promise.all(asked);
}

/**
 * Folds the views anew when the code that made them has changed. Interrupted, it starts over at the next
 * opening: the version is noted last.
 * @param onProgress called with the share done, 0 to 1
 * @returns whether there was anything to do
 */
export async function rebuildIfOld(db: Database, onProgress: (share: number) => void): Promise<boolean> {
  if (await viewsAreCurrent(db)) return false;
  await db.clear('views');
  const total = await db.count('journal');
  let done = 0;
  let from = 0;
  for (;;) {
    const tx = db.transaction(['journal', 'views', 'photos'], 'readwrite');
    const lines = await tx.objectStore('journal').getAll(IDBKeyRange.lowerBound(from, true), BATCH);
    for (const line of lines) {
      await foldLine(tx, line);
      from = line.seq;
    }
    await tx.done;
    done += lines.length;
    onProgress(total === 0 ? 1 : done / total);
    if (lines.length < BATCH) break;
  }
  await db.put('meta', { name: VIEWS_META, value: VIEWS_VERSION });
  return true;
}
