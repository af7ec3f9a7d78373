import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import { isDemo } from '../../../src/journal/demoIds.ts';
import { openMirror } from '../../../src/mirror/mirror.ts';
import { keepSecondCopy, type SecondCopy } from '../../../src/mirror/secondCopy.ts';
import { type Database, type JournalLine, openDatabase } from '../../../src/store/database.ts';
import { flawsOf } from '../../../src/words/checkWords.ts';
import { photoOf } from '../exchange/aCopy.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';
import { memoryFolder, turnsInMemory } from './memoryFolder.ts';

async function aLogbook(withCopy = true) {
  const phone = await openTestLogbook();
  const { logbook, clock } = phone;
  const folder = memoryFolder();
  const turns = turnsInMemory();
  const copy = keepSecondCopy({
    source: logbook.copies,
    mirror: async () => (withCopy ? openMirror({ folder: folder.handle, turns }) : undefined),
    now: () => logbook.now(),
    ofDemo: isDemo,
  });
  await done(logbook, { type: 'start-bike', bikeId: 'b1', name: 'Magpie' });
  for (const one of [1, 2]) {
    clock.nowMs += 5000;
    await logbook.run({ type: 'add-note', bikeId: 'b1', words: `note ${one}`, photoIds: [`ph${one}`] }, [
      photoOf(one),
    ]);
  }
  clock.nowMs += 5000;
  await done(logbook, { type: 'describe-bike', bikeId: 'b1', name: 'Magpie II' });
  clock.nowMs += 5000;
  await done(logbook, { type: 'start-bike', bikeId: 'b2', name: 'Ferry' });
  await copy.follow();
  const db = await openDatabase(phone.name, {
    ...{ onNewer() {}, onDeleted() {}, onMade() {}, onBlocked() {}, onLost() {} },
  });
  const find = async () => flawsOf(await logbook.check(), await copy.compare());
  return { ...phone, copy, db, find };
}

type At = Awaited<ReturnType<typeof aLogbook>>;

async function lineAt(db: Database, place: number): Promise<JournalLine> {
  const line = (await db.getAll('journal'))[place];
  if (!line) throw new Error('no such line');
  return line;
}

const changed = (line: JournalLine, change: object): JournalLine => ({
  ...line,
  entry: { ...line.entry, ...change } as JournalLine['entry'],
});

/** What can be done to a store from outside, and whether it is noticed without a second copy as well. */
const manipulations: Record<string, { act(at: At): Promise<unknown>; alone: boolean }> = {
  'a line deleted in the middle': { act: ({ db }) => db.delete('journal', 2), alone: true },
  'the last line deleted': {
    act: async ({ db }) => db.delete('journal', (await lineAt(db, 4)).seq),
    alone: true,
  },
  'the whole journal emptied': { act: ({ db }) => db.clear('journal'), alone: true },
  'a word of a note bent': {
    act: async ({ db }) => db.put('journal', changed(await lineAt(db, 1), { words: 'other' })),
    alone: false,
  },
  'a name bent': {
    act: async ({ db }) =>
      db.put('journal', changed(await lineAt(db, 0), { name: 'Other', type: 'bike-started' })),
    alone: false,
  },
  'a time bent': {
    act: async ({ db }) => db.put('journal', changed(await lineAt(db, 4), { happenedAtMs: 5 })),
    alone: true,
  },
  'a line without an entry': {
    act: ({ db }) => db.put('journal', { seq: 3, places: [] } as unknown as JournalLine),
    alone: true,
  },
  'a line that is not found in the history': {
    act: async ({ db }) => db.put('journal', { ...(await lineAt(db, 1)), places: [] }),
    alone: true,
  },
  'a row altered': {
    act: async ({ db }) => {
      const row = await db.get('views', 'bike/b1');
      return db.put('views', { ...row, name: 'Another person' } as never);
    },
    alone: true,
  },
  'a row deleted': { act: ({ db }) => db.delete('views', 'bike/b2'), alone: true },
  'a row too many': {
    act: async ({ db }) =>
      db.put('views', { ...(await db.get('views', 'bike/b2')), key: 'bike/b7' } as never),
    alone: true,
  },
  'a photo deleted': { act: ({ db }) => db.delete('photos', 'ph1'), alone: true },
  'a photo emptied': {
    act: ({ db }) => db.put('photos', { ...photoOf(1), buf: new ArrayBuffer(0) }),
    alone: true,
  },
  'a photo bent': { act: ({ db }) => db.put('photos', { ...photoOf(2), photoId: 'ph1' }), alone: false },
  'the note of the version dropped': { act: ({ db }) => db.clear('meta'), alone: true },
};

async function heldBy(db: Database) {
  const byKey = (a: { key: string }, b: { key: string }) => (a.key < b.key ? -1 : 1);
  const lines = (await db.getAll('journal')).map(({ entry, places }) => ({ entry, places }));
  return {
    lines: lines.sort((a, b) => (a.entry.id < b.entry.id ? -1 : 1)),
    rows: (await db.getAll('views')).sort(byKey),
    photos: await db.getAll('photos'),
  };
}

async function mend(logbook: At['logbook'], copy: SecondCopy): Promise<void> {
  await copy.restore(() => {});
  await logbook.sortAnew(() => {});
}

describe('[K6] the check of the logbook', () => {
  test('finds nothing in a whole one', async () => {
    const { find } = await aLogbook();
    expect(await find()).toEqual([]);
  });

  test.each(Object.entries(manipulations))('notices %s', async (_name, { act }) => {
    const at = await aLogbook();
    await act(at);
    expect(await at.find()).not.toEqual([]);
  });

  const alone = Object.entries(manipulations).filter(([, one]) => one.alone);
  test.each(alone)('notices %s also where there is no second copy', async (_name, { act }) => {
    const at = await aLogbook(false);
    expect(await at.find()).toEqual([]);
    await act(at);
    expect(await at.find()).not.toEqual([]);
  });

  test.each(Object.entries(manipulations))(
    'mends %s from the second copy and by sorting anew',
    async (_name, { act }) => {
      const at = await aLogbook();
      const before = await heldBy(at.db);
      await act(at);
      await mend(at.logbook, at.copy);
      expect(await heldBy(at.db)).toEqual(before);
      expect(await at.find()).toEqual([]);
    },
  );
});
