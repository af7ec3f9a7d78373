import type { IDBPTransaction } from 'idb';
import type { Entry, Id } from '../journal/entries.ts';
import type { Rows } from '../journal/fold.ts';
import type { Row, RowKind, RowOf } from '../journal/rows.ts';
import { readable, upcast } from '../journal/upcasts.ts';
import type { JournalLine, Schema } from './database.ts';

export type WriteTransaction = IDBPTransaction<Schema, ('journal' | 'views' | 'photos')[], 'readwrite'>;

/** Thrown when a decision or a fold reads what has not been fetched; the writer fetches it and runs them again. */
export class NotFetched extends Error {
  readonly fetch: (tx: WriteTransaction) => Promise<void>;
  constructor(what: string, fetch: (tx: WriteTransaction) => Promise<void>) {
    super(`not fetched: ${what}`);
    this.fetch = fetch;
  }
}

/** What was written up to some point, to go back to when a command has to be run again. */
export interface WrittenSoFar {
  written: number;
  appended: number;
}

/** As far back as a second tap can lie: a few lines of one command each. */
const MOST_RECENT = 32;
const RECENT_MS = 10_000;

/** The store as one transaction sees it: what was fetched, and over it what has been decided so far. */
export class TransactionRows implements Rows {
  readonly #fetched = new Map<string, Row | undefined>();
  readonly #groups = new Map<string, Row[]>();
  readonly #kinds = new Map<RowKind, Row[]>();
  readonly #entries = new Map<Id, Entry | undefined>();
  readonly #facts = new Map<string, Entry[]>();
  readonly #written = new Map<string, Row | undefined>();
  readonly #before: { key: string; had: boolean; row: Row | undefined }[] = [];
  #appended: { entry: Entry; places: string[] }[] = [];
  readonly #new = new Set<Id>();
  #recent: Entry[] | undefined;
  /** Number of the last line of the journal; known once the newest lines are fetched. */
  lastSeq = 0;

  /** Rows read so far. */
  get fetched(): ReadonlyMap<string, Row | undefined> {
    return this.#fetched;
  }

  /** Rows to be written, and keys to be deleted. */
  get written(): ReadonlyMap<string, Row | undefined> {
    return this.#written;
  }

  /** Tells that an id was made just now, so that nothing needs to be asked for under it. */
  expectNothingAt(id: Id): void {
    this.#new.add(id);
  }

  mark(): WrittenSoFar {
    return { written: this.#before.length, appended: this.#appended.length };
  }

  /** Forgets what was decided since the mark, keeps what was fetched. */
  backTo(mark: WrittenSoFar): void {
    for (const { key, had, row } of this.#before.splice(mark.written).reverse()) {
      if (had) this.#written.set(key, row);
      else this.#written.delete(key);
    }
    this.#appended = this.#appended.slice(0, mark.appended);
  }

  async fetchRows(tx: WriteTransaction, keys: Iterable<string>): Promise<void> {
    await Promise.all([...new Set(keys)].map((key) => this.#fetchRow(tx, key)));
  }

  /** The newest lines: all that were written in the last seconds. */
  async fetchRecent(tx: WriteTransaction, nowMs: number): Promise<void> {
    const recent: Entry[] = [];
    let cursor = await tx.objectStore('journal').openCursor(null, 'prev');
    this.lastSeq = cursor?.key ?? 0;
    while (cursor && recent.length < MOST_RECENT) {
      const { entry } = cursor.value as JournalLine;
      if (entry.writtenAtMs < nowMs - RECENT_MS) break;
      recent.push(entry);
      cursor = await cursor.continue();
    }
    this.#recent = recent;
  }

  async #fetchRow(tx: WriteTransaction, key: string): Promise<void> {
    this.#fetched.set(key, await tx.objectStore('views').get(key));
  }

  get<K extends RowKind>(kind: K, id: Id): RowOf[K] | undefined {
    const key = `${kind}/${id}`;
    if (this.#written.has(key)) return this.#written.get(key) as RowOf[K] | undefined;
    if (this.#new.has(id)) return undefined;
    if (!this.#fetched.has(key)) throw new NotFetched(key, (tx) => this.#fetchRow(tx, key));
    return this.#fetched.get(key) as RowOf[K] | undefined;
  }

  group<K extends RowKind>(_kind: K, group: string): RowOf[K][] {
    const isNew = this.#new.has(group.slice(group.indexOf('@') + 1));
    const fetched = isNew ? [] : this.#groups.get(group);
    if (!fetched) {
      throw new NotFetched(group, async (tx) => {
        const rows = await tx.objectStore('views').index('group').getAll(group);
        this.#groups.set(group, rows);
        for (const row of rows) this.#fetched.set(row.key, row);
      });
    }
    const rows = new Map(fetched.map((row) => [row.key, row]));
    for (const [key, row] of this.#written) {
      if (row?.group === group) rows.set(key, row);
      else rows.delete(key);
    }
    return [...rows.values()].sort((a, b) => (a.key < b.key ? -1 : 1)) as RowOf[K][];
  }

  all<K extends RowKind>(kind: K): RowOf[K][] {
    const fetched = this.#kinds.get(kind);
    if (!fetched) {
      throw new NotFetched(`every ${kind}`, async (tx) => {
        // Zero is the sign behind the stroke.
        const range = IDBKeyRange.bound(`${kind}/`, `${kind}0`, false, true);
        this.#kinds.set(kind, await tx.objectStore('views').getAll(range));
      });
    }
    const rows = new Map(fetched.map((row) => [row.key, row]));
    for (const [key, row] of this.#written) {
      if (row?.is === kind) rows.set(key, row);
      else rows.delete(key);
    }
    return [...rows.values()] as RowOf[K][];
  }

  entry(id: Id): Entry | undefined {
    const appended = this.#appended.find(({ entry }) => entry.id === id);
    if (appended) return appended.entry;
    if (!this.#entries.has(id)) {
      throw new NotFetched(`entry ${id}`, async (tx) => {
        const line = await tx.objectStore('journal').index('id').get(id);
        this.#entries.set(id, line && readable(line.entry) ? upcast(line.entry) : undefined);
      });
    }
    return this.#entries.get(id);
  }

  facts(key: string): Entry[] {
    const isNew = this.#new.has(key.slice(key.indexOf('/') + 1));
    const fetched = isNew ? [] : this.#facts.get(key);
    if (!fetched) {
      throw new NotFetched(`facts of ${key}`, async (tx) => {
        const lines = await tx.objectStore('journal').index('places').getAll(key);
        this.#facts.set(
          key,
          lines.flatMap(({ entry }) => (readable(entry) ? [upcast(entry)] : [])),
        );
      });
    }
    return [
      ...fetched,
      ...this.#appended.filter(({ places }) => places.includes(key)).map(({ entry }) => entry),
    ];
  }

  recent(): Entry[] {
    return this.#recent ?? [];
  }

  #write(key: string, row: Row | undefined): void {
    this.#before.push({ key, had: this.#written.has(key), row: this.#written.get(key) });
    this.#written.set(key, row);
  }

  put(row: Row): void {
    this.#write(row.key, row);
  }

  drop(key: string): void {
    this.#write(key, undefined);
  }

  append(entry: Entry, places: string[]): void {
    this.#appended.push({ entry, places });
  }
}
