import 'fake-indexeddb/auto';
import { afterEach, describe, expect, test } from 'vitest';
import { writeArchive } from '../../../src/exchange/archive/writeArchive.ts';
import { ofSecondCopy } from '../../../src/exchange/copy/ofSecondCopy.ts';
import { isDemo } from '../../../src/journal/demoIds.ts';
import { copyLeft, linesLeft } from '../../../src/mirror/copyLeft.ts';
import { heldBefore } from '../../../src/mirror/mark.ts';
import { openMirror } from '../../../src/mirror/mirror.ts';
import { keepSecondCopy } from '../../../src/mirror/secondCopy.ts';
import { leftTrace } from '../../../src/mirror/trace.ts';
import { memory, opened, photoOf, whole } from '../exchange/aCopy.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';
import { type MemoryCaches, memoryCaches } from './memoryCaches.ts';
import { type MemoryFolder, memoryFolder, turnsInMemory } from './memoryFolder.ts';

/** The browser's private files, with the folder of the mirror in them or without. */
const topWith = (folder: MemoryFolder | undefined) =>
  ({
    async getDirectoryHandle(name: string, { create = false } = {}) {
      if (name !== 'pinchbolt-mirror' || create || !folder) throw new DOMException('none', 'NotFoundError');
      return folder.handle;
    },
  }) as unknown as FileSystemDirectoryHandle;

type Places = { folder?: MemoryFolder; caches?: MemoryCaches };

/** A phone with two bikes and a photo, all of it in a second copy that lies where it is asked for. */
async function aSecondCopy({ folder, caches }: Places) {
  const { logbook, clock } = await openTestLogbook();
  const copy = keepSecondCopy({
    source: logbook.copies,
    mirror: () =>
      openMirror({
        turns: turnsInMemory(),
        ...(folder ? { folder: folder.handle } : {}),
        ...(caches ? { caches: caches.storage } : {}),
      }),
    now: () => clock.nowMs,
    ofDemo: isDemo,
  });
  await copy.follow();
  const empty = await linesLeft(folder && topWith(folder), caches?.storage);
  for (const bikeId of ['b1', 'b2']) {
    clock.nowMs += 5000;
    await done(logbook, { type: 'start-bike', bikeId, name: `Bike ${bikeId}` });
  }
  clock.nowMs += 5000;
  const photo = photoOf(1);
  await logbook.run({ type: 'add-note', bikeId: 'b1', words: 'as found', photoIds: [photo.photoId] }, [
    photo,
  ]);
  await copy.follow();
  const entries = (await logbook.copies.linesAfter(0)).map(({ entry }) => entry);
  logbook.close();
  return { entries, empty };
}

describe('what is left of a second copy, read past the app', () => {
  test.each([
    ['in private files', () => ({ folder: memoryFolder() })],
    ['in the cache storage', () => ({ caches: memoryCaches() })],
  ])('%s: every entry and photo, as an archive that the app opens', async (_where, make) => {
    const places: Places = make();
    const { entries, empty } = await aSecondCopy(places);
    const asked = [places.folder && topWith(places.folder), places.caches?.storage] as const;
    expect(empty, 'a second copy of no entries').toBe(false);
    expect(await linesLeft(...asked)).toBe(true);
    const left = await copyLeft(...asked);
    if (!left) throw new Error('nothing is left');
    expect(left).toMatchObject({ entries, unreadable: 0 });
    const kept = memory();
    await writeArchive(ofSecondCopy(left, Date.UTC(2026, 4, 4)), kept.stream);
    const read = await whole(await opened(kept.blob()));
    expect(read).toEqual({ entries, photos: [photoOf(1)] });
  });

  test('a bent line and a photo with other bytes are counted, and the rest is read', async () => {
    const folder = memoryFolder();
    const { entries } = await aSecondCopy({ folder });
    const lines = folder.files.get('journal-1') as Uint8Array;
    const at = new TextDecoder('latin1').decode(lines).indexOf('Bike b2');
    lines[at] = (lines[at] ?? 0) ^ 1;
    const photo = [...folder.files.keys()].find((name) => name.startsWith('photo-')) ?? '';
    (folder.files.get(photo) as Uint8Array)[0] = 0xff;
    const left = await copyLeft(topWith(folder), undefined);
    expect(left?.unreadable).toBe(1);
    expect(left?.entries).toEqual(
      entries.filter((entry) => JSON.stringify(entry).includes('Bike b2') === false),
    );
    expect(await left?.photo(left.photos[0]!)).toBeUndefined();
  });

  test('with both the files and the answers each entry comes once', async () => {
    const places = { folder: memoryFolder(), caches: memoryCaches() };
    const inFiles = await aSecondCopy({ folder: places.folder });
    const inAnswers = await aSecondCopy({ caches: places.caches });
    // The same lines once more, as a file made anew and given up leaves them.
    places.folder.files.set('journal-2', (places.folder.files.get('journal-1') as Uint8Array).slice());
    const left = await copyLeft(topWith(places.folder), places.caches.storage);
    expect(left?.entries).toEqual([...inFiles.entries, ...inAnswers.entries]);
  });

  test('where there is none nothing is made, and nothing is said', async () => {
    const caches = memoryCaches();
    expect(await copyLeft(topWith(undefined), caches.storage)).toBeUndefined();
    expect(await linesLeft(topWith(undefined), caches.storage)).toBe(false);
    expect(caches.made).toBe(false);
    expect(await copyLeft(undefined, undefined)).toBeUndefined();
  });
});

describe('[K5] an empty store without a mark', () => {
  const platform = Object.getOwnPropertyDescriptor(globalThis, 'navigator');
  afterEach(() => {
    if (platform) Object.defineProperty(globalThis, 'navigator', platform);
    Reflect.deleteProperty(globalThis, 'caches');
  });

  /** What the first screen asks, on a phone with these places. */
  async function asked(top: FileSystemDirectoryHandle | undefined, storage: CacheStorage) {
    Object.assign(globalThis, { caches: { ...storage, match: async () => undefined } });
    const getDirectory = async () => {
      if (!top) throw new DOMException('none', 'SecurityError');
      return top;
    };
    Object.defineProperty(globalThis, 'navigator', {
      configurable: true,
      value: { storage: { getDirectory } },
    });
    const trace = await leftTrace();
    return { trace, found: trace ? await heldBefore(() => linesLeft(top, storage)) : undefined };
  }

  test.each([
    ['in private files', () => ({ folder: memoryFolder() })],
    ['in the cache storage', () => ({ caches: memoryCaches() })],
  ])('beside a second copy %s is no first day', async (_where, make) => {
    const places: Places = make();
    await aSecondCopy(places);
    const storage = places.caches?.storage ?? memoryCaches().storage;
    const found = await asked(places.folder && topWith(places.folder), storage);
    expect(found).toEqual({ trace: true, found: { entries: 0, atMs: 0 } });
  });

  test('beside a second copy of no entries is one', async () => {
    const caches = memoryCaches();
    await caches.storage.open('pinchbolt-mirror');
    expect(await asked(undefined, caches.storage)).toEqual({ trace: true, found: undefined });
  });

  test('on a first visit there is no trace, and nothing more is loaded to find that out', async () => {
    expect(await asked(topWith(undefined), memoryCaches().storage)).toEqual({
      trace: false,
      found: undefined,
    });
  });
});
