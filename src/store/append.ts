import type { Command, Photo, Refused } from '../journal/commands.ts';
import type { Circumstances } from '../journal/decide/ruling.ts';
import { decide } from '../journal/decide.ts';
import type { Entry, Id } from '../journal/entries.ts';
import { foldAll } from '../journal/fold.ts';
import type { Database } from './database.ts';
import { Missing, TransactionRows, type WriteTransaction } from './transactionRows.ts';

export interface Appended {
  entries: Entry[];
}

const NAMED = ['bike', 'part', 'joint', 'step', 'wait', 'tool', 'recheck', 'defect'] as const;

/** The rows a command is most likely to need: one round trip instead of one a row. */
function likelyKeys(command: Command): string[] {
  const named = command as unknown as Record<string, unknown>;
  return NAMED.flatMap((kind) => {
    const id = named[`${kind}Id`];
    return typeof id === 'string' ? [`${kind}/${id}`] : [];
  });
}

async function settle(
  tx: WriteTransaction,
  rows: TransactionRows,
  command: Command,
  now: Circumstances,
): Promise<{ entry: Entry; places: string[] }[] | Refused> {
  // Run again, a decision must meet the ids it gave out before; and nothing is stored under them yet.
  const ids: Id[] = [];
  for (;;) {
    let given = 0;
    const newId = () => {
      const id = ids[given] ?? now.newId();
      if (given === ids.length) {
        ids.push(id);
        rows.expectNothingAt(id);
      }
      given += 1;
      return id;
    };
    try {
      rows.reset();
      const decided = decide(rows, command, { ...now, newId });
      return Array.isArray(decided) ? foldAll(rows, decided) : decided;
    } catch (thrown) {
      if (!(thrown instanceof Missing)) throw thrown;
      await thrown.fetch(tx);
    }
  }
}

/**
 * Carries out a command: read, decided, folded and written within one strict transaction. Resolves only
 * when the browser reports the bytes on the disk.
 * @throws DOMException when the store cannot take it, for instance `QuotaExceededError`; nothing is written then
 */
export async function append(
  db: Database,
  command: Command,
  photos: Photo[],
  now: Circumstances,
): Promise<Appended | Refused> {
  const tx = db.transaction(['journal', 'views', 'photos'], 'readwrite', { durability: 'strict' });
  // Awaited below; caught here as well, so that an abort is reported once and not as an unhandled rejection.
  tx.done.catch(() => {});
  const rows = new TransactionRows();
  try {
    await rows.prefetch(tx, likelyKeys(command));
    const settled = await settle(tx, rows, command, now);
    if (!Array.isArray(settled)) {
      await tx.done;
      return settled;
    }
    write(tx, rows, settled, photos);
    tx.commit();
    await tx.done;
    return { entries: settled.map(({ entry }) => entry) };
  } catch (thrown) {
    try {
      tx.abort();
    } catch {
      // Already aborted by the failure itself.
    }
    throw tx.error ?? thrown;
  }
}

function write(
  tx: WriteTransaction,
  rows: TransactionRows,
  lines: { entry: Entry; places: string[] }[],
  photos: Photo[],
): void {
  const asked: Promise<unknown>[] = [];
  const journal = tx.objectStore('journal');
  // The key is the store's own running number.
  for (const line of lines) asked.push(journal.add(line as never));
  const views = tx.objectStore('views');
  for (const [key, row] of rows.written) asked.push(row ? views.put(row) : views.delete(key));
  for (const photo of photos) asked.push(tx.objectStore('photos').put(photo));
  for (const promise of asked) promise.catch(() => {});
}
