import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, test } from 'vitest';
import { loadDemo } from '../../../src/demo/loadDemo.ts';
import { isDemo } from '../../../src/journal/demoIds.ts';
import type { Logbook } from '../../../src/logbook.ts';
import { heldBefore, readMark } from '../../../src/mirror/mark.ts';
import { openMirror } from '../../../src/mirror/mirror.ts';
import { keepSecondCopy } from '../../../src/mirror/secondCopy.ts';
import type { Source } from '../../../src/mirror/source.ts';
import { openDatabase } from '../../../src/store/database.ts';
import { photoOf } from '../exchange/aCopy.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';
import { type MemoryFolder, memoryFolder, turnsInMemory } from './memoryFolder.ts';

/** The two places of the mark. */
function placesOfMark() {
  const texts = new Map<string, string>();
  const kept = new Map<string, string>();
  Object.assign(globalThis, {
    localStorage: {
      getItem: (key: string) => texts.get(key) ?? null,
      setItem: (key: string, text: string) => void texts.set(key, text),
    },
    caches: {
      open: async () => ({
        put: async (path: string, response: Response) => void kept.set(path, await response.text()),
      }),
      match: async (path: string) => (kept.has(path) ? new Response(kept.get(path)) : undefined),
    },
  });
  return { texts, kept };
}

let places: ReturnType<typeof placesOfMark>;
beforeEach(() => {
  places = placesOfMark();
});

const turns = turnsInMemory();
const noMirror = async () => false;

function copyOf(logbook: Logbook, folder: MemoryFolder | undefined, source: Source = logbook.copies) {
  return keepSecondCopy({
    source,
    mirror: async () => folder && openMirror({ folder: folder.handle, turns }),
    now: () => logbook.now(),
    ofDemo: isDemo,
  });
}

async function raw(name: string) {
  return openDatabase(name, { onNewer() {}, onDeleted() {}, onMade() {}, onBlocked() {}, onLost() {} });
}

async function heldBy(name: string) {
  const db = await raw(name);
  const byId = <T>(list: T[], id: (one: T) => string) => list.sort((a, b) => (id(a) < id(b) ? -1 : 1));
  const held = {
    entries: (await db.getAll('journal')).map(({ entry }) => entry),
    rows: byId(await db.getAll('views'), ({ key }) => key),
    photos: byId(await db.getAll('photos'), ({ photoId }) => photoId),
  };
  db.close();
  return held;
}

async function startBike({ logbook, clock }: Awaited<ReturnType<typeof openTestLogbook>>, bikeId: string) {
  clock.nowMs += 5000;
  await done(logbook, { type: 'start-bike', bikeId, name: `Bike ${bikeId}` });
}

async function addPhoto({ logbook, clock }: Awaited<ReturnType<typeof openTestLogbook>>, one: number) {
  clock.nowMs += 5000;
  const photo = photoOf(one);
  await logbook.run({ type: 'add-note', bikeId: 'b1', words: 'as found', photoIds: [photo.photoId] }, [
    photo,
  ]);
}

/** A phone with a few entries and a photo, all of it in the second copy. */
async function aPhone() {
  const phone = await openTestLogbook();
  const folder = memoryFolder();
  const copy = copyOf(phone.logbook, folder);
  await startBike(phone, 'b1');
  await copy.follow();
  await addPhoto(phone, 1);
  await startBike(phone, 'b2');
  await copy.follow();
  return { phone, folder, copy };
}

describe('[K4] the second copy follows the logbook', () => {
  test('entry by entry and photo by photo, and is level', async () => {
    const { phone, folder, copy } = await aPhone();
    expect(copy.state()).toMatchObject({ is: 'level', entries: 3, photos: 1, missing: { entries: 0 } });
    const held = await copy.read();
    const { entries, photos } = await heldBy(phone.name);
    expect(held?.entries).toEqual(entries);
    expect(held?.photos.map(({ photoId }) => photoId)).toEqual(photos.map(({ photoId }) => photoId));
    expect(await held?.photo(held.photos[0]!)).toEqual(photos[0]);
    const before = folder.files.get('journal-1')?.length;
    await copy.follow();
    expect(folder.files.get('journal-1')?.length, 'what is level is not written again').toBe(before);
  });

  test('a page that died between commit and copy: the next start adds what is lacking', async () => {
    const { phone, folder } = await aPhone();
    await startBike(phone, 'b3');
    const next = copyOf(phone.logbook, folder);
    await next.follow();
    expect((await next.read())?.entries).toEqual((await heldBy(phone.name)).entries);
  });

  test('killed at any byte of the writing, the next start makes it level', async () => {
    const { phone, folder } = await aPhone();
    const whole = folder.files.get('journal-1') ?? new Uint8Array(0);
    const { entries } = await heldBy(phone.name);
    for (let length = 0; length < whole.length; length += 23) {
      folder.files.set('journal-1', whole.slice(0, length));
      const next = copyOf(phone.logbook, folder);
      await next.follow();
      expect(next.state()).toMatchObject({ is: 'level', entries: 3, photos: 1, missing: { entries: 0 } });
      const ids = (await next.read())?.entries.map(({ id }) => id).sort();
      expect(ids).toEqual(entries.map(({ id }) => id).sort());
    }
  });

  test('of several pages at once, each entry lies in it once', async () => {
    const { phone, folder } = await aPhone();
    const pages = [1, 2, 3].map(() => copyOf(phone.logbook, folder));
    for (const bikeId of ['b3', 'b4', 'b5']) {
      await startBike(phone, bikeId);
      await Promise.all(pages.map((page) => page.follow()));
    }
    const text = new TextDecoder().decode(folder.files.get('journal-1'));
    expect(text.match(/"entry":/g)).toHaveLength(6);
    expect(pages[0]?.state().entries).toBe(6);
  });

  test('switched on late it takes in all that is there', async () => {
    const phone = await openTestLogbook();
    await startBike(phone, 'b1');
    await addPhoto(phone, 1);
    const copy = copyOf(phone.logbook, memoryFolder());
    await copy.follow();
    expect(copy.state()).toMatchObject({ is: 'level', entries: 2, photos: 1 });
  });

  test('the demo goes out of it with the removal, and nothing of the own; no alarm is raised', async () => {
    const { phone, folder, copy } = await aPhone();
    await loadDemo(phone.logbook);
    await copy.follow();
    expect(copy.state().entries).toBeGreaterThan(100);
    phone.clock.nowMs += 5000;
    await phone.logbook.removeDemo();
    // The page died before the copy heard of it.
    const next = copyOf(phone.logbook, folder);
    await next.follow();
    expect(next.state()).toMatchObject({
      is: 'level',
      entries: 4,
      photos: 1,
      missing: { entries: 0, photos: 0 },
    });
    expect((await next.read())?.entries).toEqual((await heldBy(phone.name)).entries);
    expect((await readMark())?.entries).toBe(4);
  });

  test('with no room for a photo the entries still go in, and the photo later', async () => {
    const { phone, folder, copy } = await aPhone();
    folder.full = 'photo-';
    await addPhoto(phone, 2);
    await copy.follow();
    expect(copy.state()).toMatchObject({ is: 'level', entries: 4, photos: 1 });
    folder.full = undefined;
    await copyOf(phone.logbook, folder).follow();
    expect((await copy.read())?.photos).toHaveLength(2);
  });

  test('that cannot be written says so, and goes on once it can', async () => {
    const { phone, folder, copy } = await aPhone();
    folder.full = 'journal-';
    await startBike(phone, 'b3');
    await copy.follow();
    expect(copy.state()).toMatchObject({ is: 'failed', why: expect.stringContaining('no room') });
    folder.full = undefined;
    await copy.follow();
    expect(copy.state()).toMatchObject({ is: 'level', entries: 4 });
  });
});

describe('[K5] a store that was lost', () => {
  test('is told from a first day by a mark in two places and by the second copy', async () => {
    expect(await heldBefore(noMirror)).toBeUndefined();
    const { phone } = await aPhone();
    const last = (await heldBy(phone.name)).entries.at(-1)?.id;
    expect(await heldBefore(noMirror)).toEqual({ entries: 3, lastId: last, atMs: phone.clock.nowMs });
    places.texts.clear();
    expect(await heldBefore(noMirror), 'the cache storage alone tells it').toMatchObject({ entries: 3 });
    placesOfMark().texts.set('pinchbolt:mark', '{"entries":3,"atMs":1}');
    expect(await heldBefore(noMirror), 'localStorage alone tells it').toMatchObject({ entries: 3 });
  });

  test('comes back out of the second copy: same entries in the same order, same rows, same photos', async () => {
    const { phone, folder } = await aPhone();
    const before = await heldBy(phone.name);
    const fresh = await openTestLogbook(phone.clock.nowMs);
    const copy = copyOf(fresh.logbook, folder);
    await copy.follow();
    expect(copy.state().missing).toEqual({ entries: 3, photos: 1 });
    expect(await heldBefore(noMirror), 'the mark is not lowered').toMatchObject({ entries: 3 });
    expect(await copy.restore(() => {})).toEqual({ entries: 3, photos: 1, photosLost: 0 });
    expect(await heldBy(fresh.name)).toEqual(before);
    expect(copy.state()).toMatchObject({ is: 'level', entries: 3, missing: { entries: 0, photos: 0 } });
    expect(new TextDecoder().decode(folder.files.get('journal-1')).match(/"entry":/g)).toHaveLength(3);
    await startBike({ ...fresh, clock: phone.clock }, 'b9');
    await copy.follow();
    expect(copy.state()).toMatchObject({ is: 'level', entries: 4, missing: { entries: 0, photos: 0 } });
  });

  test('and written into before it was noticed keeps both: nothing new is lost, nothing old', async () => {
    const { phone, folder } = await aPhone();
    const before = await heldBy(phone.name);
    const fresh = await openTestLogbook(phone.clock.nowMs + 5000);
    await startBike(fresh, 'b9');
    const copy = copyOf(fresh.logbook, folder);
    await copy.follow();
    await startBike(fresh, 'b10');
    await copy.follow();
    expect(copy.state().missing).toEqual({ entries: 3, photos: 1 });
    expect(copy.state().entries).toBe(5);
    await copy.restore(() => {});
    const ids = (await heldBy(fresh.name)).entries.map(({ id }) => id);
    expect(ids).toHaveLength(5);
    expect(ids).toEqual(expect.arrayContaining(before.entries.map(({ id }) => id)));
    expect((await copy.read())?.entries).toHaveLength(5);
  });

  test('is compared once a start: after that each commit reads what is new, though entries are missing', async () => {
    const { phone, folder } = await aPhone();
    const fresh = await openTestLogbook(phone.clock.nowMs + 5000);
    await startBike(fresh, 'old');
    let read = 0;
    const source: Source = {
      ...fresh.logbook.copies,
      async linesAfter(seq) {
        const lines = await fresh.logbook.copies.linesAfter(seq);
        read += lines.length;
        return lines;
      },
    };
    const copy = copyOf(fresh.logbook, folder, source);
    await copy.follow();
    for (const bikeId of ['b7', 'b8', 'b9']) {
      read = 0;
      await startBike(fresh, bikeId);
      await copy.follow();
      // Once for the second copy, once for the mark.
      expect(read, bikeId).toBe(2);
      expect(copy.state().missing).toEqual({ entries: 3, photos: 1 });
    }
    expect(copy.state()).toMatchObject({ is: 'level', entries: 7, photos: 1 });
  });

  test('that gets its entries back otherwise, as from a saved copy, has each in the second copy once', async () => {
    const { phone, folder } = await aPhone();
    const before = await heldBy(phone.name);
    const fresh = await openTestLogbook(phone.clock.nowMs + 5000);
    await startBike(fresh, 'b7');
    const copy = copyOf(fresh.logbook, folder);
    await copy.follow();
    expect(copy.state().missing).toEqual({ entries: 3, photos: 1 });
    for (const photo of before.photos) await fresh.logbook.copies.keepPhoto(photo);
    await fresh.logbook.copies.takeIn(before.entries.slice(0, 2), () => {});
    await copy.follow();
    expect(copy.state().missing).toEqual({ entries: 1, photos: 0 });
    await fresh.logbook.copies.takeIn(before.entries, () => {});
    await startBike(fresh, 'b8');
    await copy.follow();
    expect(copy.state()).toMatchObject({ is: 'level', entries: 5, missing: { entries: 0, photos: 0 } });
    const ids = (await heldBy(fresh.name)).entries.map(({ id }) => id);
    const text = new TextDecoder().decode(folder.files.get(folder.journal()));
    expect([...text.matchAll(/"entry":\{"id":"([^"]+)"/g)].map(([, id]) => id).sort()).toEqual(ids.sort());
  });

  test('with its second copy gone as well is told by the mark, which no start lowers', async () => {
    const { phone } = await aPhone();
    const fresh = await openTestLogbook(phone.clock.nowMs);
    const folder = memoryFolder();
    for (const start of [1, 2]) {
      const copy = copyOf(fresh.logbook, folder);
      await copy.follow();
      expect(copy.state().missing.entries, `start ${start}`).toBe(3);
      expect(await heldBefore(noMirror), `start ${start}`).toMatchObject({ entries: 3 });
    }
    await startBike(fresh, 'b9');
    const copy = copyOf(fresh.logbook, folder);
    await copy.follow();
    expect(copy.state()).toMatchObject({ is: 'level', entries: 1, missing: { entries: 2 } });
  });

  test('a fold that fails on the way leaves the empty store as it was', async () => {
    const { folder } = await aPhone();
    const fresh = await openTestLogbook();
    const copy = copyOf(fresh.logbook, folder);
    const failing = () => {
      throw new Error('killed on the way');
    };
    await expect(copy.restore(failing)).rejects.toThrow('killed on the way');
    const held = await heldBy(fresh.name);
    expect([held.entries, held.rows]).toEqual([[], []]);
  });

  test('a new logbook that is wanted: copy and mark begin again, and nothing is told any more', async () => {
    const { folder } = await aPhone();
    const fresh = await openTestLogbook();
    const copy = copyOf(fresh.logbook, folder);
    await copy.follow();
    await copy.startOver();
    expect(copy.state()).toMatchObject({ is: 'level', entries: 0, missing: { entries: 0, photos: 0 } });
    expect(await heldBefore(noMirror)).toBeUndefined();
    await startBike(fresh, 'b9');
    await copy.follow();
    expect(copy.state()).toMatchObject({ entries: 1, missing: { entries: 0 } });
  });

  test('where the browser has no place for a copy the mark alone tells how many are gone', async () => {
    const phone = await openTestLogbook();
    const copy = copyOf(phone.logbook, undefined);
    await startBike(phone, 'b1');
    await loadDemo(phone.logbook);
    await copy.follow();
    phone.clock.nowMs += 5000;
    await phone.logbook.removeDemo();
    await copy.follow();
    expect(copy.state(), 'what left with the demo is not missed').toMatchObject({
      is: 'none',
      missing: { entries: 0 },
    });
    const fresh = await openTestLogbook();
    const next = copyOf(fresh.logbook, undefined);
    await next.follow();
    expect(next.state()).toMatchObject({ is: 'none', missing: { entries: 2 } });
    await startBike(fresh, 'b9');
    await next.follow();
    expect(next.state()).toMatchObject({ missing: { entries: 1 } });
  });
});
