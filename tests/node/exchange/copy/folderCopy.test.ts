import { describe, expect, test } from 'vitest';
import {
  type ChosenFolder,
  copyToFolder,
  type FolderKept,
  folderIsBehind,
} from '../../../../src/exchange/copy/folderCopy.ts';
import type { Entry } from '../../../../src/journal/entries.ts';
import { folderWords } from '../../../../src/words/copyWords.ts';
import { content, opened, whole } from '../aCopy.ts';
import { idOf } from '../entriesOfEveryKind.ts';

const DAY = 86_400_000;
const NOON = Date.UTC(2026, 4, 3, 12);

/** A folder in memory: a file is there once it was closed. */
function aFolder(): { folder: ChosenFolder; files: Map<string, Blob>; fail(why: Error | undefined): void } {
  const files = new Map<string, Blob>();
  let failing: Error | undefined;
  const folder: ChosenFolder = {
    name: 'Backups',
    async getFileHandle(name, { create = false } = {}) {
      if (!files.has(name)) {
        if (!create) throw new DOMException('none', 'NotFoundError');
        files.set(name, new Blob([]));
      }
      return {
        getFile: async () => files.get(name) ?? new Blob([]),
        async createWritable() {
          const pieces: Blob[] = [];
          return new WritableStream({
            write(piece) {
              if (failing && pieces.length > 2) throw failing;
              pieces.push(new Blob([piece]));
            },
            close: () => void files.set(name, new Blob(pieces)),
          });
        },
      };
    },
    async removeEntry(name) {
      files.delete(name);
    },
  };
  return {
    folder,
    files,
    fail(why) {
      failing = why;
    },
  };
}

/** Notes of one a day, from the third of May on. */
const entries: Entry[] = Array.from({ length: 5 }, (_, at) => ({
  id: idOf(at + 1),
  v: 2,
  writtenAtMs: NOON + at * DAY,
  happenedAtMs: NOON + at * DAY,
  zone: 'UTC',
  type: 'note-added',
  noteId: `n${at}`,
  words: `day ${at}`,
}));

/** A journal of the first so many of them. */
const journal = (count: number) => ({
  linesAfter: async (seq: number) =>
    entries.slice(seq, count).map((entry, at) => ({ seq: seq + at + 1, entry })),
  async seqUnder(id: string) {
    const at = entries.slice(0, count).findIndex((entry) => entry.id === id);
    return at < 0 ? undefined : at + 1;
  },
});

const written = (count: number, kept: FolderKept, madeAtMs: number) =>
  copyToFolder(kept, { ...content(entries.slice(0, count), []), madeAtMs }, journal(count));

describe('a copy in a folder', () => {
  test('is behind once a build day is over that it does not hold', async () => {
    const { folder } = aFolder();
    const kept: FolderKept = { folder, files: [] };
    const at = (nowMs: number, zone = 'UTC') => ({ nowMs, zone });
    expect(await folderIsBehind(kept, journal(0), at(NOON)), 'nothing is written down').toBe(false);
    expect(await folderIsBehind(kept, journal(1), at(NOON + 3_600_000)), 'the same day').toBe(false);
    expect(await folderIsBehind(kept, journal(1), at(NOON + DAY / 2)), 'after midnight').toBe(true);
    expect(await folderIsBehind(kept, journal(1), at(NOON + DAY / 2, 'America/New_York'))).toBe(false);
    const held = { ...kept, lastId: idOf(1) };
    expect(await folderIsBehind(held, journal(1), at(NOON + 9 * DAY)), 'it holds all').toBe(false);
    expect(await folderIsBehind(held, journal(2), at(NOON + 9 * DAY))).toBe(true);
    expect(await folderIsBehind(held, journal(2), at(NOON)), 'a clock that was set back').toBe(false);
    const [first] = await journal(1).linesAfter(0);
    if (!first) throw new Error('one line is there');
    const ahead = { ...first, entry: { ...first.entry, writtenAtMs: NOON + 30 * DAY } };
    const mixed = { linesAfter: async () => [ahead, first], seqUnder: async () => undefined };
    expect(await folderIsBehind(kept, mixed, at(NOON + DAY)), 'after an entry dated ahead').toBe(true);
  });

  test('an empty file with the name of a copy is what was left of one: it is written over', async () => {
    const { folder, files } = aFolder();
    files.set('pinchbolt-2026-05-03.zip', new Blob([]));
    const { kept } = await written(1, { folder, files: [] }, NOON);
    expect(kept.files).toEqual(['pinchbolt-2026-05-03.zip']);
    expect([...files.keys()]).toEqual(['pinchbolt-2026-05-03.zip']);
    expect(files.get('pinchbolt-2026-05-03.zip')?.size).toBeGreaterThan(0);
  });

  test('holds the whole logbook, and of its own files two stay', async () => {
    const { folder, files } = aFolder();
    files.set('other.txt', new Blob(['mine']));
    let kept: FolderKept = { folder, files: [] };
    for (const count of [1, 2, 3, 4]) ({ kept } = await written(count, kept, NOON + count * DAY));
    expect([...files.keys()].sort()).toEqual([
      'other.txt',
      'pinchbolt-2026-05-06.zip',
      'pinchbolt-2026-05-07.zip',
    ]);
    expect(kept).toEqual({
      folder,
      files: ['pinchbolt-2026-05-06.zip', 'pinchbolt-2026-05-07.zip'],
      atMs: NOON + 4 * DAY,
      lastId: idOf(4),
    });
    const newest = await opened(files.get('pinchbolt-2026-05-07.zip') as Blob);
    expect((await whole(newest)).entries).toEqual(entries.slice(0, 4));
  });

  test('of one day is one file, but a file that is not its own is never written over', async () => {
    const { folder, files } = aFolder();
    files.set('pinchbolt-2026-05-03.zip', new Blob(['of another phone']));
    let { kept } = await written(1, { folder, files: [] }, NOON);
    ({ kept } = await written(2, kept, NOON + 60_000));
    expect(kept.files).toEqual(['pinchbolt-2026-05-03.2.zip']);
    expect(await files.get('pinchbolt-2026-05-03.zip')?.text()).toBe('of another phone');
    expect((await opened(files.get('pinchbolt-2026-05-03.2.zip') as Blob)).entries).toBe(2);
  });

  test('of a logbook that lacks what the copy holds throws none of the old ones away', async () => {
    const { folder, files } = aFolder();
    let { kept } = await written(4, { folder, files: [] }, NOON);
    ({ kept } = await written(5, kept, NOON + DAY));
    for (const days of [2, 3, 4]) ({ kept } = await written(days - 1, kept, NOON + days * DAY));
    expect([...files.keys()]).toEqual(['03', '04', '06', '07'].map((day) => `pinchbolt-2026-05-${day}.zip`));
    expect((await opened(files.get('pinchbolt-2026-05-04.zip') as Blob)).entries).toBe(5);
  });

  test('that could not be written leaves the one before as it was', async () => {
    const { folder, files, fail } = aFolder();
    const { kept } = await written(2, { folder, files: [] }, NOON);
    fail(new Error('no room left'));
    await expect(written(3, kept, NOON + 60_000)).rejects.toThrow('no room left');
    expect((await opened(files.get('pinchbolt-2026-05-03.zip') as Blob)).entries).toBe(2);
    await expect(written(3, kept, NOON + DAY)).rejects.toThrow('no room left');
    expect([...files.keys()], 'and no beginning of one').toEqual(['pinchbolt-2026-05-03.zip']);
  });
});

test('the age of the copy is told', () => {
  expect(folderWords({ name: 'Backups' }, NOON)).toEqual({
    title: 'Copy in the folder Backups',
    detail: 'Not saved yet.',
  });
  const saved = (nowMs: number, failed?: string) =>
    folderWords({ name: 'Backups', atMs: NOON, ...(failed ? { failed } : {}) }, nowMs, 'UTC').detail;
  expect(saved(NOON + 3_600_000)).toBe('Saved 3 May 2026, 12:00.');
  expect(saved(NOON + DAY)).toBe('Saved 3 May 2026, 12:00, 1 day ago.');
  expect(saved(NOON + 9 * DAY, 'the folder is gone')).toBe(
    'Saved 3 May 2026, 12:00, 9 days ago. The last try failed: the folder is gone',
  );
  expect(folderWords({ name: 'Backups', atMs: NOON, asks: true }, NOON, 'UTC').detail).toBe(
    'Saved 3 May 2026, 12:00. The browser asks before it writes there again: update it here.',
  );
});
