import 'fake-indexeddb/auto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import type { Entry } from '../../../src/journal/entries.ts';
import { ENTRY_VERSION } from '../../../src/journal/entries.ts';
import { foldAll } from '../../../src/journal/fold.ts';
import { MemoryRows } from '../../../src/journal/memoryRows.ts';
import { upcast, upcasts } from '../../../src/journal/upcasts.ts';
import { logbookFor } from '../../../src/logbook.ts';
import { DATABASE_VERSION, STORE_VERSION } from '../../../src/store/database.ts';
import * as writer from '../../../src/store/writer.ts';

/** A store as a past version left it, lines, rows, pictures and all. Made once, when that version shipped. */
interface PastLogbook {
  databaseVersion: number;
  entryVersion: number;
  schema: {
    name: string;
    keyPath: string;
    indexes: { name: string; keyPath: string; unique: boolean; multiEntry: boolean }[];
  }[];
  stores: Record<string, Record<string, unknown>[]>;
  /** What a person would look for in it. */
  holds: { bikes: string[]; lines: number; parts: number; photos: number };
}

const folder = fileURLToPath(new URL('../../fixtures/logbooks', import.meta.url));
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
const readPast = (name: string) => JSON.parse(readFileSync(join(folder, name), 'utf8')) as PastLogbook;

/** Pictures are bytes; a fixture holds them as base64. */
function revived(value: Record<string, unknown>): Record<string, unknown> {
  if (typeof value['buf'] !== 'string') return value;
  const bytes = Uint8Array.from(Buffer.from(value['buf'], 'base64'));
  return { ...value, buf: bytes.buffer };
}

async function lay(name: string, past: PastLogbook): Promise<void> {
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    const request = indexedDB.open(name, past.databaseVersion);
    request.onupgradeneeded = () => {
      for (const { name: store, keyPath, indexes } of past.schema) {
        const made = request.result.createObjectStore(store, { keyPath });
        for (const { name: index, keyPath: path, unique, multiEntry } of indexes) {
          made.createIndex(index, path, { unique, multiEntry });
        }
      }
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const tx = db.transaction(Object.keys(past.stores), 'readwrite');
  for (const [store, values] of Object.entries(past.stores)) {
    for (const value of values) tx.objectStore(store).put(revived(value));
  }
  await new Promise((done) => {
    tx.oncomplete = done;
  });
  db.close();
}

test('[X1] every shipped store and entry version keeps a fixture', () => {
  const versions = files.map(readPast);
  const stores = new Set(versions.map(({ databaseVersion }) => Math.floor(databaseVersion / 1000)));
  const entries = new Set(versions.map(({ entryVersion }) => entryVersion));
  for (let version = 1; version <= STORE_VERSION; version += 1) expect(stores).toContain(version);
  for (let version = 1; version <= ENTRY_VERSION; version += 1) expect(entries).toContain(version);
});

test('[J2] there is one step from each entry version to the next', () => {
  expect(upcasts).toHaveLength(ENTRY_VERSION - 1);
  expect(() => upcast({ v: ENTRY_VERSION + 1 } as Entry)).toThrow(RangeError);
});

describe.each(files)('%s', (file) => {
  const past = readPast(file);

  test('[X1] opens today with everything in it', async () => {
    const name = `past-${file}`;
    await lay(name, past);
    const logbook = logbookFor({ name, zone: () => 'UTC', loadWriter: async () => writer });
    await logbook.opened;
    expect(logbook.state()).toEqual({ is: 'open' });
    const bikes = await logbook.read('bikes', {});
    expect(bikes.map(({ name: bike }) => bike).sort()).toEqual(past.holds.bikes);
    expect(await logbook.read('size', {})).toEqual({ entries: past.holds.lines, photos: past.holds.photos });
    let parts = 0;
    for (const { bikeId } of bikes) {
      const view = await logbook.read('bike', { bikeId });
      parts += view?.parts.length ?? 0;
      expect((await logbook.read('as-built', { bikeId, atMs: Date.UTC(2100, 0) })).joints).toHaveLength(
        view?.joints.length ?? -1,
      );
      const { lines } = await logbook.read('history', { place: `b:${bikeId}`, limit: 10_000 });
      expect(lines.length).toBeGreaterThan(0);
    }
    expect(parts).toBe(past.holds.parts);
    // And it can be written on.
    const [bike] = bikes;
    const result = await logbook.run({ type: 'add-note', bikeId: bike?.bikeId ?? '', words: 'still here' });
    expect(result).toHaveProperty('entries');
    logbook.close();
  });

  test('[J2] its lines are read as they are, and folded to the rows a fresh start gives', () => {
    const rows = new MemoryRows();
    const entries = (past.stores['journal'] ?? []).map(({ entry }) => upcast(entry as Entry));
    expect(() => foldAll(rows, entries)).not.toThrow();
    expect(rows.rows.size).toBeGreaterThan(0);
  });
});

test('[X1] a store of a newer version is left alone, and the app says so', async () => {
  const name = 'from-the-future';
  await new Promise<void>((done) => {
    const request = indexedDB.open(name, DATABASE_VERSION + 1);
    request.onsuccess = () => {
      request.result.close();
      done();
    };
  });
  const logbook = logbookFor({ name, zone: () => 'UTC', loadWriter: async () => writer });
  await logbook.opened;
  expect(logbook.state()).toEqual({ is: 'newer-version' });
  await expect(logbook.run({ type: 'start-bike', name: 'x' })).rejects.toThrow(/newer version/);
  logbook.close();
});

test('a store that is deleted under a page is named as deleted, not as a newer version', async () => {
  const name = 'deleted-under-a-page';
  const logbook = logbookFor({ name, zone: () => 'UTC', loadWriter: async () => writer });
  await logbook.opened;
  await new Promise((done) => {
    indexedDB.deleteDatabase(name).onsuccess = done;
  });
  expect(logbook.state()).toEqual({ is: 'deleted' });
  await expect(logbook.run({ type: 'start-bike', name: 'x' })).rejects.toThrow(/was deleted/);
  logbook.close();
});

test('a page whose connection was lost and whose store is gone writes into no new, empty one', async () => {
  const name = 'cleared-under-a-page';
  let opened: IDBDatabase | undefined;
  const { open } = indexedDB;
  indexedDB.open = (...asked) => {
    const request = open.apply(indexedDB, asked);
    request.addEventListener('success', () => {
      opened ??= request.result;
    });
    return request;
  };
  const logbook = logbookFor({ name, zone: () => 'UTC', loadWriter: async () => writer });
  await logbook.opened;
  indexedDB.open = open;
  // A browser that clears the data of a site closes the connection and deletes the store.
  opened?.close();
  await new Promise((done) => {
    indexedDB.deleteDatabase(name).onsuccess = done;
  });
  await expect(logbook.run({ type: 'start-bike', name: 'x' })).rejects.toThrow(/was deleted/);
  expect(logbook.state()).toEqual({ is: 'deleted' });
  logbook.close();
});
