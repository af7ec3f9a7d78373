import type { Page } from 'playwright-core';

/** One entry as it lies in the journal; only what the checks read is named. */
export interface StoredEntry {
  id: string;
  type: string;
  happenedAtMs: number;
  /** Where it stands in the order, where that is not when it happened. */
  orderMs?: number;
  writtenAtMs: number;
  bikeId?: string;
  partId?: string;
  jointId?: string;
  stepId?: string;
  waitId?: string;
  rideId?: string;
  noteId?: string;
  recheckId?: string;
  toolId?: string;
  wheelId?: string;
  defectId?: string;
  photoId?: string;
  photoIds?: string[];
  name?: string;
  title?: string;
  kind?: string;
  words?: string;
  km?: number;
  place?: StoredPlace;
  to?: StoredPlace;
  applied?: { value: number; unit: string };
  movedAt?: { value: number; unit: string };
  mark?: { mark: string };
  splitInto?: string[];
  corrects?: string;
  becomes?: Record<string, unknown> | null;
}

export interface StoredPlace {
  on: string;
  bikeId?: string;
}

/** One row as it lies among the views. */
export interface StoredRow {
  key: string;
  is: string;
  [field: string]: unknown;
}

/** What lies in the store `pinchbolt`, all of it read in one transaction, in the order of its keys. */
export interface Stored {
  /** False where the browser has no such store, or one without a journal. */
  there: boolean;
  lines: { entry: StoredEntry }[];
  rows: StoredRow[];
  photoIds: string[];
  meta: { name: string; value: unknown }[];
}

const NAME = 'pinchbolt';

/** Reads the store past the product: what its own code says of itself proves nothing. */
export async function readStored(page: Page): Promise<Stored> {
  const text = await page.evaluate(async (name) => {
    const none = { there: false, lines: [], rows: [], photoIds: [], meta: [] };
    // Opening a store that is not there would make an empty one, which the product would then meet.
    if (!(await indexedDB.databases()).some((one) => one.name === name)) return JSON.stringify(none);
    const answer = <T>(request: IDBRequest<T>) =>
      new Promise<T>((done, failed) => {
        request.onsuccess = () => done(request.result);
        request.onerror = () => failed(request.error);
      });
    const db = await answer(indexedDB.open(name));
    try {
      const stores = [...db.objectStoreNames];
      if (!stores.includes('journal')) return JSON.stringify(none);
      const tx = db.transaction(['journal', 'views', 'meta', 'photos']);
      const [lines, rows, meta, photoIds] = await Promise.all([
        answer(tx.objectStore('journal').getAll()),
        answer(tx.objectStore('views').getAll()),
        answer(tx.objectStore('meta').getAll()),
        answer(tx.objectStore('photos').getAllKeys()),
      ]);
      return JSON.stringify({ there: true, lines, rows, meta, photoIds });
    } finally {
      db.close();
    }
  }, NAME);
  return JSON.parse(text) as Stored;
}

/** One raw change of the store. */
export type RawChange = { store: 'journal' | 'views' | 'meta' | 'photos' } & (
  | { put: object }
  /** The record itself, or its key where the record was never read. */
  | { remove: object | string }
);

/** Changes the store past the product, as damage or an older version would have left it. */
export async function changeStored(page: Page, changes: RawChange[]): Promise<void> {
  await page.evaluate(
    async ([name, list]) => {
      const db = await new Promise<IDBDatabase>((done, failed) => {
        const request = indexedDB.open(name);
        request.onsuccess = () => done(request.result);
        request.onerror = () => failed(request.error);
      });
      const tx = db.transaction(['journal', 'views', 'meta', 'photos'], 'readwrite', {
        durability: 'strict',
      });
      for (const change of list) {
        const store = tx.objectStore(change.store);
        if ('put' in change) store.put(change.put);
        else if (typeof change.remove === 'string') store.delete(change.remove);
        else {
          const path = String(store.keyPath).split('.');
          const key = path.reduce<unknown>(
            (record, field) => (record as Record<string, unknown>)[field],
            change.remove,
          );
          store.delete(key as IDBValidKey);
        }
      }
      await new Promise<void>((done, failed) => {
        tx.oncomplete = () => done();
        tx.onabort = () => failed(tx.error);
      });
      db.close();
    },
    [NAME, changes] as const,
  );
}
