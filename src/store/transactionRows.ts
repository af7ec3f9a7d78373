import type { IDBPTransaction } from 'idb';
import type { Entry, Id } from '../journal/entries.ts';
import type { Rows } from '../journal/fold.ts';
import type { Row, RowKind, RowOf } from '../journal/rows.ts';
import { upcast } from '../journal/upcasts.ts';
import type { Schema } from './database.ts';

export type WriteTransaction = IDBPTransaction<Schema, ('journal' | 'views' | 'photos')[], 'readwrite'>;

/** Thrown when a decision or a fold reads what has not been fetched; the writer fetches it and runs them again. */
export class Missing extends Error {
  readonly fetch: (tx: WriteTransaction) => Promise<void>;
  constructor(what: string, fetch: (tx: WriteTransaction) => Promise<void>) {
    super(`not fetched: ${what}`);
    this.fetch = fetch;
  }
}

/** The store as one transaction sees it: what was fetched, and over it what has been decided so far. */
export class TransactionRows implements Rows {
  readonly #fetched = new Map<string, Row | undefined>();
  readonly #groups = new Map<string, Row[]>();
  readonly #kinds = new Map<RowKind, Row[]>();
  readonly #entries = new Map<Id, Entry | undefined>();
  readonly #facts = new Map<string, Entry[]>();
  #written = new Map<string, Row | undefined>();
  #appended: { entry: Entry; places: string[] }[] = [];
  readonly #new = new Set<Id>();
  readonly #beforeSeq: number;

  #known: ReadonlyMap<string, Row | undefined>;

  /**
   * @param known rows that need not be fetched
   * @param beforeSeq entries from this number on are not there yet; only a rebuild needs it
   */
  constructor(known: ReadonlyMap<string, Row | undefined> = new Map(), beforeSeq = Number.POSITIVE_INFINITY) {
    this.#known = known;
    this.#beforeSeq = beforeSeq;
  }

  /** Rows read so far; worth remembering once the transaction is committed. */
  get fetched(): ReadonlyMap<string, Row | undefined> {
    return this.#fetched;
  }

  /** Rows to be written, and keys to be deleted. */
  get written(): ReadonlyMap<string, Row | undefined> {
    return this.#written;
  }

  /** What was known turned out to be old; from here on everything is fetched. */
  distrust(): void {
    this.#known = new Map();
  }

  /** Tells that an id was made just now, so that no row needs to be asked for. */
  expectNothingAt(id: Id): void {
    this.#new.add(id);
  }

  /** Forgets what was decided, keeps what was fetched. */
  reset(): void {
    this.#written = new Map();
    this.#appended = [];
  }

  async prefetch(tx: WriteTransaction, keys: string[]): Promise<void> {
    await Promise.all(keys.map((key) => this.#fetchRow(tx, key)));
  }

  /** All rows of a group, each to be asked for by its key; the group itself stays unread. */
  async prefetchGroup(tx: WriteTransaction, group: string): Promise<void> {
    for (const row of await tx.objectStore('views').index('group').getAll(group))
      this.#fetched.set(row.key, row);
  }

  async #fetchRow(tx: WriteTransaction, key: string): Promise<void> {
    this.#fetched.set(key, await tx.objectStore('views').get(key));
  }

  get<K extends RowKind>(kind: K, id: Id): RowOf[K] | undefined {
    const key = `${kind}/${id}`;
    if (this.#written.has(key)) return this.#written.get(key) as RowOf[K] | undefined;
    if (this.#new.has(id)) return undefined;
    if (this.#known.has(key)) return this.#known.get(key) as RowOf[K] | undefined;
    if (!this.#fetched.has(key)) throw new Missing(key, (tx) => this.#fetchRow(tx, key));
    return this.#fetched.get(key) as RowOf[K] | undefined;
  }

  group<K extends RowKind>(_kind: K, group: string): RowOf[K][] {
    const fetched = this.#groups.get(group);
    if (!fetched) {
      throw new Missing(group, async (tx) => {
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
      throw new Missing(`every ${kind}`, async (tx) => {
        // Zero is the sign behind the stroke. What is found is not remembered as single rows: there may be thousands.
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
      throw new Missing(`entry ${id}`, async (tx) => {
        const line = await tx.objectStore('journal').index('id').get(id);
        this.#entries.set(id, line && line.seq < this.#beforeSeq ? upcast(line.entry) : undefined);
      });
    }
    return this.#entries.get(id);
  }

  facts(key: string): Entry[] {
    const fetched = this.#facts.get(key);
    if (!fetched) {
      throw new Missing(`facts of ${key}`, async (tx) => {
        const lines = await tx.objectStore('journal').index('places').getAll(key);
        const seen = lines.filter(({ seq }) => seq < this.#beforeSeq);
        this.#facts.set(
          key,
          seen.map(({ entry }) => upcast(entry)),
        );
      });
    }
    return [
      ...fetched,
      ...this.#appended.filter(({ places }) => places.includes(key)).map(({ entry }) => entry),
    ];
  }

  put(row: Row): void {
    this.#written.set(row.key, row);
  }

  drop(key: string): void {
    this.#written.set(key, undefined);
  }

  append(entry: Entry, places: string[]): void {
    this.#appended.push({ entry, places });
  }
}
