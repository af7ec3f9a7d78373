import type { Page } from 'playwright-core';
import type { Entry, EntryOf, EntryType } from '../../../src/journal/entries.ts';
import type { Row } from '../../../src/journal/rows.ts';

/** A photo as it lies in the store, its bytes as numbers. */
export interface StoredPhoto {
  photoId: string;
  type: string;
  widthPx: number;
  heightPx: number;
  bytes: number[];
}

/** Everything in one store, read past the product: what its own code says of itself proves nothing. */
function everything(page: Page, store: string, database = 'pinchbolt'): Promise<unknown[]> {
  return page.evaluate(
    async ([name, from]) => {
      const open = indexedDB.open(from);
      const db = await new Promise<IDBDatabase>((done, failed) => {
        open.onsuccess = () => done(open.result);
        open.onerror = () => failed(open.error);
      });
      const all = db.transaction(name).objectStore(name).getAll();
      const found = await new Promise<Record<string, unknown>[]>((done, failed) => {
        all.onsuccess = () => done(all.result);
        all.onerror = () => failed(all.error);
      });
      db.close();
      return found.map((one) => {
        if (!(one['buf'] instanceof ArrayBuffer)) return one;
        const { buf, ...rest } = one;
        return { ...rest, bytes: [...new Uint8Array(buf as ArrayBuffer)] };
      });
    },
    [store, database] as const,
  );
}

/** Every entry of the journal, oldest first. */
export async function journal(page: Page): Promise<Entry[]> {
  const lines = (await everything(page, 'journal')) as { seq: number; entry: Entry }[];
  return lines.toSorted((a, b) => a.seq - b.seq).map(({ entry }) => entry);
}

/** The entries of one type, oldest first. */
export async function entries<T extends EntryType>(page: Page, type: T): Promise<EntryOf<T>[]> {
  const isOfType = (entry: Entry): entry is Entry & EntryOf<T> => entry.type === type;
  return (await journal(page)).filter(isOfType);
}

/** The rows of one kind, as they are stored. */
export async function rows<I extends Row['is']>(page: Page, is: I): Promise<Extract<Row, { is: I }>[]> {
  const all = (await everything(page, 'views')) as Row[];
  return all.filter((row): row is Extract<Row, { is: I }> => row.is === is);
}

export const photos = (page: Page) => everything(page, 'photos') as Promise<StoredPhoto[]>;

/** What is half typed, by the key of its form. */
export async function drafts(page: Page): Promise<Map<string, unknown>> {
  const all = (await everything(page, 'drafts', 'pinchbolt-drafts')) as { key: string; text?: string }[];
  // Photos not yet saved lie there too, without words.
  return new Map(all.flatMap(({ key, text }) => (text === undefined ? [] : [[key, JSON.parse(text)]])));
}
