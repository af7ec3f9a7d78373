import { unwrap } from 'idb';
import type { Command, Photo, Refused } from '../journal/commands.ts';
import type { Circumstances } from '../journal/decide/ruling.ts';
import { decide } from '../journal/decide.ts';
import type { Entry, Id } from '../journal/entries.ts';
import { fitAtHand } from '../journal/fitAtHand.ts';
import { foldAll } from '../journal/fold.ts';
import { askedSum } from '../journal/secondTap.ts';
import type { Database } from './database.ts';
import { NotFetched, TransactionRows, type WriteTransaction } from './transactionRows.ts';

export interface Appended {
  entries: Entry[];
}

/** A command and the instant it is given at; photos go into the store with the entries that name them. */
export interface GivenCommand {
  command: Command;
  nowMs: number;
  photos?: readonly Photo[];
}

interface Line {
  entry: Entry;
  places: string[];
}

/** On which bike a joint or a step is. It never changes, so what was read once may be believed. */
export type Homes = Map<Id, Id>;

const NAMED = ['bike', 'part', 'joint', 'step', 'wait', 'tool', 'wheel', 'recheck', 'defect'] as const;

/** The rows a command is most likely to need: one round trip instead of one a row. */
function likelyKeys(command: Command, homes: Homes): string[] {
  const named = command as unknown as Record<string, unknown>;
  const rows = NAMED.flatMap((kind) => {
    const id = named[`${kind}Id`];
    if (typeof id !== 'string') return [];
    const home = homes.get(id);
    return home === undefined ? [`${kind}/${id}`] : [`${kind}/${id}`, `bike/${home}`];
  });
  return [...rows, 'settings/app'];
}

function rememberHomes(homes: Homes, rows: TransactionRows): void {
  for (const row of rows.fetched.values()) {
    if (row?.is === 'joint') homes.set(row.jointId, row.bikeId);
    if (row?.is === 'step') homes.set(row.stepId, row.bikeId);
  }
}

/** One command on top of those before it; run again when it asks for what was not fetched. */
async function settle(
  tx: WriteTransaction,
  rows: TransactionRows,
  command: Command,
  now: Circumstances,
  asked: string | undefined,
): Promise<Line[] | Refused> {
  const mark = rows.mark();
  for (;;) {
    try {
      const decided = decide(rows, command, now, asked);
      return Array.isArray(decided) ? foldAll(rows, decided) : decided;
    } catch (thrown) {
      if (!(thrown instanceof NotFetched)) throw thrown;
      rows.backTo(mark);
      await thrown.fetch(tx);
    }
  }
}

/**
 * Puts lines, rows and photos into a transaction and commits it. Plain requests instead of promises for
 * each: how a single one went is not asked, and a tap waits for the commit alone.
 */
function put(tx: IDBTransaction, rows: TransactionRows, lines: Line[], photos: readonly Photo[]): void {
  const journal = tx.objectStore('journal');
  lines.forEach((line, at) => {
    journal.add({ seq: rows.lastSeq + 1 + at, ...line });
  });
  const views = tx.objectStore('views');
  for (const [key, row] of rows.written) {
    if (row) views.put(row);
    else views.delete(key);
  }
  for (const photo of photos) tx.objectStore('photos').put(photo);
  tx.commit();
}

/**
 * Carries out a list of commands, each on top of the ones before it: read, decided, folded and written within one
 * strict transaction, all of them or none. Resolves only when the browser reports the bytes on the disk.
 * @param homes what this connection knows of where joints and steps are; kept by the caller
 * @returns the entries, or the refusal of one command with its place in the list
 * @throws DOMException when the store cannot take it, for instance `QuotaExceededError`; nothing is written then
 */
export async function append(
  db: Database,
  homes: Homes,
  list: readonly GivenCommand[],
  { zone, newId, phone }: Pick<Circumstances, 'zone' | 'newId' | 'phone'>,
): Promise<Appended | Refused> {
  const first = list[0];
  if (!first) return { entries: [] };
  const releases = list.some(({ command }) => command.type === 'release-bike');
  // Loaded before the transaction, which would end while it is waited for.
  const openInPile = releases ? await fitAtHand() : undefined;
  const commands = list.map(({ command }) => command);
  const asked = askedSum(commands.length === 1 ? first.command : commands);
  const tx = db.transaction(['journal', 'views', 'photos'], 'readwrite', { durability: 'strict' });
  // Awaited below; caught here as well, so that an abort is reported once and not as an unhandled rejection.
  tx.done.catch(() => {});
  const rows = new TransactionRows();
  const freshId = () => {
    const id = newId();
    rows.expectNothingAt(id);
    return id;
  };
  try {
    await Promise.all([
      rows.fetchRecent(tx, first.nowMs),
      rows.fetchRows(
        tx,
        commands.flatMap((command) => likelyKeys(command, homes)),
      ),
    ]);
    const lines: Line[] = [];
    for (const [at, { command, nowMs }] of list.entries()) {
      const now = { nowMs, zone, phone, newId: freshId, ...(openInPile ? { openInPile } : {}) };
      const settled = await settle(tx, rows, command, now, at === 0 ? asked : undefined);
      if (!Array.isArray(settled)) {
        await tx.done;
        return list.length === 1 ? settled : { ...settled, at };
      }
      lines.push(...settled);
    }
    put(
      unwrap(tx),
      rows,
      lines,
      list.flatMap(({ photos = [] }) => photos),
    );
    await tx.done;
    rememberHomes(homes, rows);
    return { entries: lines.map(({ entry }) => entry) };
  } catch (thrown) {
    try {
      tx.abort();
    } catch {
      // Already aborted by the failure itself.
    }
    throw tx.error ?? thrown;
  }
}
