import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { isDemo } from '../../../src/journal/demoIds.ts';
import { type Logbook, logbookFor } from '../../../src/logbook.ts';
import { openMirror } from '../../../src/mirror/mirror.ts';
import { keepSecondCopy } from '../../../src/mirror/secondCopy.ts';
import { DATABASE_VERSION, openDatabase } from '../../../src/store/database.ts';
import * as writer from '../../../src/store/writer.ts';
import { photoOf } from '../exchange/aCopy.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';
import { type MemoryFolder, memoryFolder, turnsInMemory } from './memoryFolder.ts';

const realOpen = indexedDB.open.bind(indexedDB);
const realDelete = indexedDB.deleteDatabase.bind(indexedDB);
let attempts = 0;

/** Lets the opening of a store fail as a browser does, until the store is deleted or the test heals it. */
function breakStore(name: string): { heal(): void } {
  const heal = () => {
    indexedDB.open = realOpen;
  };
  indexedDB.open = (asked, version) => {
    if (asked !== name) return realOpen(asked, version);
    // An upgrade that is given up is an opening that fails.
    attempts += 1;
    const request = realOpen(`cannot-open-${attempts}`, 1);
    request.addEventListener('upgradeneeded', (event) => {
      event.stopImmediatePropagation();
      request.transaction?.abort();
    });
    return request;
  };
  indexedDB.deleteDatabase = (asked) => {
    if (asked === name) heal();
    return realDelete(asked);
  };
  return { heal };
}

let opened: Logbook[] = [];
beforeEach(() => {
  opened = [];
});
afterEach(() => {
  indexedDB.open = realOpen;
  indexedDB.deleteDatabase = realDelete;
  for (const logbook of opened) logbook.close();
});

const turns = turnsInMemory();

async function start(name: string, folder: MemoryFolder | undefined, nowMs = Date.UTC(2026, 4, 4)) {
  const logbook = logbookFor({ name, now: () => nowMs, zone: () => 'UTC', loadWriter: async () => writer });
  opened.push(logbook);
  await logbook.opened;
  const copy = keepSecondCopy({
    source: logbook.copies,
    mirror: async () => folder && openMirror({ folder: folder.handle, turns }),
    now: () => nowMs,
    ofDemo: isDemo,
  });
  return { logbook, copy };
}

async function heldBy(name: string) {
  const db = await openDatabase(name);
  const held = {
    lines: await db.getAll('journal'),
    rows: await db.getAll('views'),
    photos: await db.getAll('photos'),
  };
  db.close();
  return held;
}

/** A logbook with a photo, all of it in the second copy, and its page closed. */
async function aClosedLogbook() {
  const { logbook, clock, name } = await openTestLogbook();
  const folder = memoryFolder();
  const copy = keepSecondCopy({
    source: logbook.copies,
    mirror: () => openMirror({ folder: folder.handle, turns }),
    now: () => clock.nowMs,
    ofDemo: isDemo,
  });
  await done(logbook, { type: 'start-bike', bikeId: 'b1', name: 'Magpie' });
  clock.nowMs += 5000;
  await logbook.run({ type: 'add-note', bikeId: 'b1', words: 'as found', photoIds: ['ph1'] }, [photoOf(1)]);
  clock.nowMs += 5000;
  await done(logbook, { type: 'start-bike', bikeId: 'b2', name: 'Ferry' });
  await copy.follow();
  logbook.close();
  return { name, folder, atMs: clock.nowMs, before: await heldBy(name) };
}

/** Opens a store past the app; nothing closes it but its holder. */
const holdOpen = (name: string) =>
  new Promise<IDBDatabase>((end) => {
    const request = realOpen(name, DATABASE_VERSION);
    request.onsuccess = () => end(request.result);
  });

/** Leaves a store of the right version in which nothing is. */
async function emptyOut(name: string): Promise<void> {
  await new Promise((end) => {
    realDelete(name).onsuccess = end;
  });
  (await holdOpen(name)).close();
}

describe('[K5] a store that does not open', () => {
  test('leaves the second copy readable, with the instant it was written at; nothing is written to it', async () => {
    const { name, folder, atMs, before } = await aClosedLogbook();
    const file = folder.files.get('journal-1');
    breakStore(name);
    const { logbook, copy } = await start(name, folder);
    expect(logbook.state()).toMatchObject({ is: 'lost' });
    await copy.follow();
    expect(copy.state().is).toBe('unread');
    const held = await copy.read();
    expect(held?.entries).toEqual(before.lines.map(({ entry }) => entry));
    expect(held).toMatchObject({ unreadable: 0, lacking: 0, writtenAtMs: atMs });
    expect(await held?.photo(held.photos[0]!)).toEqual(photoOf(1));
    expect(folder.files.get('journal-1')).toEqual(file);
  });

  test('is opened again where the browser had trouble for a while', async () => {
    const { name, folder, before } = await aClosedLogbook();
    const { heal } = breakStore(name);
    const { logbook } = await start(name, folder);
    await logbook.openAgain();
    expect(logbook.state().is).toBe('lost');
    heal();
    await logbook.openAgain();
    expect(logbook.state()).toEqual({ is: 'open' });
    expect(await heldBy(name)).toEqual(before);
  });

  test('is replaced by a new one with every entry, row and photo of the second copy, and goes on', async () => {
    const { name, folder, before } = await aClosedLogbook();
    breakStore(name);
    const { logbook, copy } = await start(name, folder);
    expect(await copy.beginAnew(() => {})).toEqual({ entries: 3, photos: 1, photosLost: 0 });
    expect(logbook.state()).toEqual({ is: 'open' });
    expect(await heldBy(name)).toEqual(before);
    expect(copy.state()).toMatchObject({ is: 'level', entries: 3, missing: { entries: 0, photos: 0 } });
    await done(logbook, { type: 'start-bike', bikeId: 'b3', name: 'Third' });
    await copy.follow();
    expect(copy.state()).toMatchObject({ is: 'level', entries: 4 });
  });

  test('that opens and cannot be read is replaced as well', async () => {
    const { name, folder, before } = await aClosedLogbook();
    await emptyOut(name);
    const { logbook, copy } = await start(name, folder);
    expect(logbook.state().is).toBe('lost');
    await copy.beginAnew(() => {});
    expect(await heldBy(name)).toEqual(before);
    expect((await logbook.read('bikes', {})).map(({ bikeId }) => bikeId).sort()).toEqual(['b1', 'b2']);
  });

  test('is replaced once where two pages ask for it at the same time', async () => {
    const { name, folder, before } = await aClosedLogbook();
    await emptyOut(name);
    const pages = [await start(name, folder), await start(name, folder)];
    let deletions = 0;
    indexedDB.deleteDatabase = (asked) => {
      deletions += 1;
      return realDelete(asked);
    };
    const filled = await Promise.all(pages.map(({ copy }) => copy.beginAnew(() => {})));
    expect(filled).toEqual([{ entries: 3, photos: 1, photosLost: 0 }, undefined]);
    expect(deletions).toBe(1);
    expect(await heldBy(name)).toEqual(before);
    for (const { logbook } of pages) await logbook.openAgain();
    expect(pages.map(({ logbook }) => logbook.state())).toEqual([{ is: 'open' }, { is: 'open' }]);
  });

  test('and that another page holds is said to be held, and replaced once that page lets go', async () => {
    const { name, folder, before } = await aClosedLogbook();
    await emptyOut(name);
    const { logbook, copy } = await start(name, folder);
    const holder = await holdOpen(name);
    const told = new Promise((end) => logbook.onState(({ is }) => is === 'blocked' && end(is)));
    const filled = copy.beginAnew(() => {});
    expect(await told).toBe('blocked');
    holder.close();
    expect(await filled).toEqual({ entries: 3, photos: 1, photosLost: 0 });
    expect(logbook.state()).toEqual({ is: 'open' });
    expect(await heldBy(name)).toEqual(before);
  });

  test('is not deleted when it opens after all, though the second copy lacks an entry', async () => {
    const { name, folder } = await aClosedLogbook();
    const alone = await start(name, undefined);
    await done(alone.logbook, { type: 'start-bike', bikeId: 'b3', name: 'Third' });
    alone.logbook.close();
    const before = await heldBy(name);
    const { heal } = breakStore(name);
    const { logbook, copy } = await start(name, folder);
    heal();
    expect(await copy.beginAnew(() => {})).toBeUndefined();
    expect(logbook.state()).toEqual({ is: 'open' });
    expect(await heldBy(name)).toEqual(before);
    expect(copy.state()).toMatchObject({ is: 'level', entries: 4 });
  });

  test('is not deleted without a second copy, nor for one that makes no logbook', async () => {
    const { name, folder, before } = await aClosedLogbook();
    const { heal } = breakStore(name);
    const without = await start(name, undefined);
    await expect(without.copy.beginAnew(() => {})).rejects.toThrow('no second copy');
    const empty = await start(name, memoryFolder());
    await expect(empty.copy.beginAnew(() => {})).rejects.toThrow('no second copy');
    const unfoldable = { ...before.lines[0]?.entry, happenedAtMs: Symbol('bent') } as never;
    const none = (async function* () {})();
    await expect(
      empty.logbook.copies.beginAnew({ entries: [unfoldable], photos: none }, () => {}),
    ).rejects.toThrow();
    heal();
    expect(await heldBy(name)).toEqual(before);
    expect((await start(name, folder)).logbook.state()).toEqual({ is: 'open' });
  });

  test('whose filling is cut short is empty, and the next start still has the second copy to restore', async () => {
    const { name, folder, before } = await aClosedLogbook();
    breakStore(name);
    const { copy } = await start(name, folder);
    const cut = () => {
      throw new Error('killed on the way');
    };
    await expect(copy.beginAnew(cut)).rejects.toThrow('killed on the way');
    expect((await heldBy(name)).lines).toEqual([]);
    const next = await start(name, folder);
    await next.copy.restore(() => {});
    expect(await heldBy(name)).toEqual(before);
  });
});
