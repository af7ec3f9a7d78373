import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import { isDemo } from '../../../src/journal/demoIds.ts';
import type { Logbook } from '../../../src/logbook.ts';
import { cachePlace } from '../../../src/mirror/cachePlace.ts';
import { openMirror } from '../../../src/mirror/mirror.ts';
import { keepSecondCopy } from '../../../src/mirror/secondCopy.ts';
import { gathered, photoOf } from '../exchange/aCopy.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';
import { type MemoryCaches, memoryCaches } from './memoryCaches.ts';
import { turnsInMemory } from './memoryFolder.ts';

const bytes = (length: number, first: number) => Uint8Array.from({ length }, (_, at) => (first + at) % 251);

async function aPlace(memory = memoryCaches()) {
  const place = await cachePlace(memory.storage);
  if (!place) throw new Error('no place');
  return { memory, place };
}

const read = async (blob: Blob | undefined) => blob && new Uint8Array(await blob.arrayBuffer());

describe('[K4] a file in the cache storage', () => {
  test('gives back what was added, over several pieces, and its end without reading the whole', async () => {
    const { memory, place } = await aPlace();
    const added = [70_000, 10, 66_000, 1, 300].map((length, at) => {
      const piece = bytes(length, at);
      piece[length - 1] = 0x0a;
      return piece;
    });
    for (const piece of added) await place.append('journal-1', piece);
    const all = new Uint8Array(Buffer.concat(added));
    const same = (found: Uint8Array | undefined, asked: Uint8Array) =>
      found !== undefined && Buffer.compare(found, asked) === 0;
    expect(same(await read(await place.whole('journal-1')), all)).toBe(true);
    expect(memory.kept.size).toBe(3);
    for (const count of [1, 302, 70_000, 500_000])
      expect(same(await place.tail('journal-1', count), all.slice(-count)), `${count} bytes`).toBe(true);
    expect(await place.names()).toEqual(['journal-1']);
    expect([await place.has('journal-1'), await place.has('journal-2')]).toEqual([true, false]);
  });

  test('whose end was torn off goes on on a line of its own', async () => {
    const { place } = await aPlace();
    await place.append('journal-1', bytes(5, 1));
    await place.append('journal-1', bytes(2, 7));
    expect(await read(await place.whole('journal-1'))).toEqual(Uint8Array.of(1, 2, 3, 4, 5, 0x0a, 7, 8));
  });

  test('written anew holds that alone, and removed holds nothing', async () => {
    const { memory, place } = await aPlace();
    await place.append('journal-1', bytes(70_000, 1));
    await place.append('journal-1', bytes(20, 1));
    await place.append('journal-12', bytes(4, 9));
    await place.write('journal-1', bytes(3, 5));
    expect(await read(await place.whole('journal-1'))).toEqual(bytes(3, 5));
    await place.remove('journal-1');
    expect(await place.whole('journal-1')).toBeUndefined();
    expect(await place.tail('journal-1', 10)).toHaveLength(0);
    expect([...memory.kept.keys()]).toEqual(['/:mirror/journal-12/0000']);
  });

  test('killed while it is written anew or removed is the beginning of what it was', async () => {
    for (const act of ['write', 'remove'] as const) {
      const { memory, place } = await aPlace();
      const pieces = [70_000, 66_000, 300].map((length, at) => {
        const piece = bytes(length, at);
        piece[length - 1] = 0x0a;
        return piece;
      });
      for (const piece of pieces) await place.append('journal-1', piece);
      const cache = await memory.storage.open('any');
      const { delete: deleting } = cache;
      let deletions = 0;
      cache.delete = async (path) => {
        if (deletions === 1) throw new Error('killed on the way');
        deletions += 1;
        return deleting(path);
      };
      const acted = act === 'write' ? place.write('journal-1', bytes(3, 5)) : place.remove('journal-1');
      await expect(acted).rejects.toThrow('killed on the way');
      const beginning = Buffer.concat(pieces.slice(0, 2));
      expect(Buffer.compare((await read(await place.whole('journal-1')))!, beginning), act).toBe(0);
    }
  });

  test('is not to be had where there is no cache storage, or none that opens', async () => {
    expect(await cachePlace(undefined)).toBeUndefined();
    const closed = { open: () => Promise.reject(new DOMException('private', 'SecurityError')) };
    expect(await cachePlace(closed as unknown as CacheStorage)).toBeUndefined();
    expect(await openMirror({ caches: closed as unknown as CacheStorage })).toBeUndefined();
  });
});

const turns = turnsInMemory();

function copyIn(logbook: Logbook, memory: MemoryCaches) {
  return keepSecondCopy({
    source: logbook.copies,
    mirror: () => openMirror({ caches: memory.storage, turns }),
    now: () => logbook.now(),
    ofDemo: isDemo,
  });
}

/** A phone whose browser has no private files. */
async function aPhone() {
  const phone = await openTestLogbook();
  const memory = memoryCaches();
  const copy = copyIn(phone.logbook, memory);
  await done(phone.logbook, { type: 'start-bike', bikeId: 'b1', name: 'Magpie' });
  phone.clock.nowMs += 5000;
  await phone.logbook.run({ type: 'add-note', bikeId: 'b1', words: 'as found', photoIds: ['ph1'] }, [
    photoOf(1),
  ]);
  await copy.follow();
  return { ...phone, memory, copy };
}

describe('[K4] [K5] a second copy in the cache storage', () => {
  test('follows the logbook, and a lost store comes back out of it whole', async () => {
    const { logbook, clock, memory, copy } = await aPhone();
    clock.nowMs += 5000;
    await done(logbook, { type: 'start-bike', bikeId: 'b2', name: 'Ferry' });
    await copy.follow();
    expect(copy.state()).toMatchObject({ is: 'level', entries: 3, photos: 1 });
    const before = await gathered(logbook.copies.entries());
    const fresh = await openTestLogbook(clock.nowMs);
    const restored = copyIn(fresh.logbook, memory);
    expect(await restored.restore(() => {})).toEqual({ entries: 3, photos: 1, photosLost: 0 });
    expect(await gathered(fresh.logbook.copies.entries())).toEqual(before);
    expect(await fresh.logbook.copies.photoUnder('ph1')).toEqual(photoOf(1));
  });

  test('that has no room says so, keeps what it held, and goes on once there is room', async () => {
    const { logbook, clock, memory, copy } = await aPhone();
    memory.full = true;
    clock.nowMs += 5000;
    await done(logbook, { type: 'start-bike', bikeId: 'b2', name: 'Ferry' });
    await copy.follow();
    expect(copy.state()).toMatchObject({ is: 'failed', why: expect.stringContaining('no room') });
    expect((await copy.read())?.entries).toHaveLength(2);
    memory.full = false;
    await copy.follow();
    expect(copy.state()).toMatchObject({ is: 'level', entries: 3, photos: 1 });
  });

  test('begun anew leaves nothing of the old one behind', async () => {
    const { memory, copy } = await aPhone();
    const old = [...memory.kept.keys()];
    await copy.startOver();
    expect(copy.state()).toMatchObject({ is: 'level', entries: 2, photos: 1 });
    expect([...memory.kept.keys()].filter((path) => old.includes(path) && path.includes('journal'))).toEqual(
      [],
    );
  });
});
