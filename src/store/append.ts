import { unwrap } from 'idb';
import type { Command, Photo, Refused } from '../journal/commands.ts';
import type { Circumstances } from '../journal/decide/ruling.ts';
import { decide } from '../journal/decide.ts';
import type { Entry, Id } from '../journal/entries.ts';
import { fitAtHand } from '../journal/fitAtHand.ts';
import { foldAll } from '../journal/fold.ts';
import type { Database } from './database.ts';
import type { RowCache } from './rowCache.ts';
import { Missing, TransactionRows, type WriteTransaction } from './transactionRows.ts';

export interface Appended {
  entries: Entry[];
}

type Settled = { entry: Entry; places: string[] }[] | Refused;

const NAMED = ['bike', 'part', 'joint', 'step', 'wait', 'tool', 'recheck', 'defect'] as const;

/** The rows a command is most likely to need: one round trip instead of one a row. */
function likelyKeys(command: Command): string[] {
  const named = command as unknown as Record<string, unknown>;
  const rows = NAMED.flatMap((kind) => {
    const id = named[`${kind}Id`];
    return typeof id === 'string' ? [`${kind}/${id}`] : [];
  });
  return [...rows, 'settings/app'];
}

/** Ids of one command. Run again, a decision must meet the ids it gave out before. */
class GivenIds {
  readonly #ids: Id[] = [];
  readonly #make: () => Id;
  #given = 0;

  constructor(make: () => Id) {
    this.#make = make;
  }

  start(): void {
    this.#given = 0;
  }

  next(rows: TransactionRows): Id {
    const id = this.#ids[this.#given] ?? this.#make();
    this.#ids[this.#given] = id;
    this.#given += 1;
    // Nothing is stored under it yet.
    rows.expectNothingAt(id);
    return id;
  }
}

function settleOnce(rows: TransactionRows, command: Command, now: Circumstances, ids: GivenIds): Settled {
  rows.reset();
  ids.start();
  const decided = decide(rows, command, { ...now, newId: () => ids.next(rows) });
  return Array.isArray(decided) ? foldAll(rows, decided) : decided;
}

/** Decided from remembered rows alone, or undefined when they do not suffice. */
function settleFromMemory(
  cache: RowCache,
  command: Command,
  now: Circumstances,
  ids: GivenIds,
): { rows: TransactionRows; lines: { entry: Entry; places: string[] }[] } | undefined {
  if (cache.seq === undefined) return undefined;
  const rows = new TransactionRows(cache.rows);
  try {
    const settled = settleOnce(rows, command, now, ids);
    // Memory may be behind another tab; a refusal is only given on what the store says.
    return Array.isArray(settled) ? { rows, lines: settled } : undefined;
  } catch (thrown) {
    if (thrown instanceof Missing) return undefined;
    throw thrown;
  }
}

async function settleInStore(
  tx: WriteTransaction,
  rows: TransactionRows,
  command: Command,
  now: Circumstances,
  ids: GivenIds,
): Promise<Settled> {
  for (;;) {
    try {
      return settleOnce(rows, command, now, ids);
    } catch (thrown) {
      if (!(thrown instanceof Missing)) throw thrown;
      await thrown.fetch(tx);
    }
  }
}

const SCOPE: ('journal' | 'views' | 'photos')[] = ['journal', 'views', 'photos'];

function begin(db: Database): WriteTransaction {
  const tx = db.transaction(SCOPE, 'readwrite', { durability: 'strict' });
  // Awaited below; caught here as well, so that an abort is reported once and not as an unhandled rejection.
  tx.done.catch(() => {});
  return tx;
}

/**
 * Puts a command's lines and rows into a transaction and commits it. Plain requests instead of promises for
 * each: nobody asks how a single one went, and a tap waits for the commit alone.
 */
function put(
  tx: IDBTransaction,
  rows: TransactionRows,
  lines: { entry: Entry; places: string[] }[],
  photos: Photo[],
  afterSeq: number,
): void {
  const journal = tx.objectStore('journal');
  lines.forEach((line, at) => {
    journal.add({ seq: afterSeq + 1 + at, ...line });
  });
  const views = tx.objectStore('views');
  for (const [key, row] of rows.written) {
    if (row) views.put(row);
    else views.delete(key);
  }
  for (const photo of photos) tx.objectStore('photos').put(photo);
  tx.commit();
}

/** One strict transaction that reads nothing; gives what aborted it, or nothing once it is on the disk. */
function writeAtOnce(db: Database, work: (tx: IDBTransaction) => void): Promise<DOMException | undefined> {
  const tx = unwrap(db).transaction(SCOPE, 'readwrite', { durability: 'strict' });
  return new Promise((resolve) => {
    tx.oncomplete = () => resolve(undefined);
    tx.onabort = () => resolve(tx.error ?? new DOMException('the store gave up', 'AbortError'));
    try {
      work(tx);
    } catch (thrown) {
      // What was asked for so far must not be committed by itself.
      tx.abort();
      throw thrown;
    }
  });
}

async function appendFromStore(
  db: Database,
  cache: RowCache,
  command: Command,
  photos: Photo[],
  now: Circumstances,
  ids: GivenIds,
): Promise<Appended | Refused> {
  const tx = begin(db);
  const rows = new TransactionRows(cache.rows);
  try {
    const [last] = await Promise.all([
      tx.objectStore('journal').openKeyCursor(null, 'prev'),
      rows.prefetch(tx, likelyKeys(command)),
    ]);
    const afterSeq = last?.key ?? 0;
    if (afterSeq !== cache.seq) {
      cache.forget();
      rows.distrust();
    }
    // Who works on one joint works on the next: those of its bike are remembered along with it.
    const joint = 'jointId' in command ? rows.fetched.get(`joint/${command.jointId}`) : undefined;
    if (joint?.is === 'joint') await rows.prefetchGroup(tx, `joint@${joint.bikeId}`);
    const settled = await settleInStore(tx, rows, command, now, ids);
    if (!Array.isArray(settled)) {
      await tx.done;
      return settled;
    }
    put(unwrap(tx), rows, settled, photos, afterSeq);
    await tx.done;
    cache.remember(afterSeq + settled.length, rows.fetched, rows.written);
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

/**
 * Carries out a command: read, decided, folded and written within one strict transaction. Where the rows
 * are remembered, nothing has to be read first: the number of the added line proves that nobody has
 * written in between. Resolves only when the browser reports the bytes on the disk.
 * @param cache what this tab remembers of the store; kept by the caller, one for each connection
 * @throws DOMException when the store cannot take it, for instance `QuotaExceededError`; nothing is written then
 */
export async function append(
  db: Database,
  cache: RowCache,
  command: Command,
  photos: Photo[],
  given: Circumstances,
): Promise<Appended | Refused> {
  const now = command.type === 'release-bike' ? { ...given, openInPile: await fitAtHand() } : given;
  const ids = new GivenIds(now.newId);
  const afterSeq = cache.seq;
  const ready = settleFromMemory(cache, command, now, ids);
  if (ready && afterSeq !== undefined) {
    const failure = await writeAtOnce(db, (tx) => put(tx, ready.rows, ready.lines, photos, afterSeq));
    if (!failure) {
      cache.remember(afterSeq + ready.lines.length, ready.rows.written);
      return { entries: ready.lines.map(({ entry }) => entry) };
    }
    cache.forget();
    // Somebody else has added that line; anything else is a failure of the store.
    if (failure.name !== 'ConstraintError') throw failure;
  }
  return appendFromStore(db, cache, command, photos, now, ids);
}
