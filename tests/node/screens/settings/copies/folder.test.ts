import { afterEach, beforeEach, expect, test } from 'vitest';
import type { FolderKept } from '../../../../../src/exchange/copy/folderCopy.ts';
import type { Logbook } from '../../../../../src/logbook.ts';
import {
  asksFirst,
  canChooseFolder,
  chooseFolder,
  keptFolder,
  leaveFolder,
  refreshFolder,
  writeFolder,
} from '../../../../../src/screens/settings/copies/folder.ts';
import { opened } from '../../../exchange/aCopy.ts';
import { done, openTestLogbook } from '../../../logbook/openTestLogbook.ts';

const DAY = 86_400_000;
const platform = Object.getOwnPropertyDescriptor(globalThis, 'navigator');
let files: Map<string, Blob>;
let leave: PermissionState;
let asked: string[];
let gone = false;

/** A folder as the platform gives it: it asks the person before it is written to. */
const folder = {
  name: 'Backups',
  async getFileHandle(name: string, { create = false } = {}) {
    if (gone || (!create && !files.has(name))) throw new DOMException('the folder is gone', 'NotFoundError');
    return {
      getFile: async () => files.get(name) ?? new Blob([]),
      async createWritable() {
        const pieces: Blob[] = [];
        return new WritableStream<Uint8Array<ArrayBuffer>>({
          write: (piece) => void pieces.push(new Blob([piece])),
          close: () => void files.set(name, new Blob(pieces)),
        });
      },
    };
  },
  removeEntry: async (name: string) => void files.delete(name),
  async queryPermission() {
    asked.push('query');
    return leave;
  },
  async requestPermission() {
    asked.push('request');
    return leave;
  },
};

let noted = 0;
const safeguards = {
  savedCopy: () => ({
    passing: <T>(entries: AsyncIterable<T>) => entries,
    note() {
      noted += 1;
    },
  }),
};

beforeEach(() => {
  files = new Map();
  leave = 'granted';
  asked = [];
  gone = false;
  noted = 0;
  Object.assign(globalThis, { showDirectoryPicker: async () => folder });
  const request = async <T>(_name: string, _how: object, work: (lock: object) => Promise<T>) => work({});
  Object.defineProperty(globalThis, 'navigator', { configurable: true, value: { locks: { request } } });
});
afterEach(() => {
  Reflect.deleteProperty(globalThis, 'showDirectoryPicker');
  if (platform) Object.defineProperty(globalThis, 'navigator', platform);
});

/** A logbook with a bike of yesterday. Its notes lie in memory here: no store of a test holds a folder. */
async function ofYesterday(): Promise<Logbook> {
  const { logbook, clock } = await openTestLogbook();
  const notes = new Map<string, unknown>();
  logbook.copies.noted = async <T>(name: string) => notes.get(name) as T | undefined;
  logbook.copies.note = async (name, value) => void notes.set(name, value);
  await done(logbook, { type: 'start-bike', name: 'Wagtail' });
  clock.nowMs += DAY;
  return logbook;
}

test('a folder is chosen, the copy in it refreshed after a build day, and left again', async () => {
  const logbook = await ofYesterday();
  expect(canChooseFolder()).toBe(true);
  await refreshFolder(logbook, safeguards);
  expect(asked, 'without a folder nothing is asked').toEqual([]);
  await chooseFolder(logbook);
  await refreshFolder(logbook, safeguards);
  expect(asked, 'a start asks no person').toEqual(['query']);
  expect([...files.keys()]).toEqual(['pinchbolt-2026-05-04.zip']);
  expect((await opened(files.get('pinchbolt-2026-05-04.zip') as Blob)).entries).toBe(1);
  expect(noted).toBe(1);
  await refreshFolder(logbook, safeguards);
  expect(asked, 'nothing new: not again').toEqual(['query']);
  expect(await keptFolder(logbook)).toMatchObject({
    atMs: logbook.now(),
    files: ['pinchbolt-2026-05-04.zip'],
  });
  await leaveFolder(logbook);
  expect(await keptFolder(logbook)).toBeUndefined();
  expect(files.size, 'the copy stays').toBe(1);
});

test('without leave nothing is written and nothing noted; a tap asks for it', async () => {
  const logbook = await ofYesterday();
  await chooseFolder(logbook);
  leave = 'prompt';
  expect(await asksFirst((await keptFolder(logbook)) as FolderKept)).toBe(true);
  asked = [];
  await refreshFolder(logbook, safeguards);
  expect(files.size).toBe(0);
  expect((await keptFolder(logbook))?.failed).toBeUndefined();
  leave = 'granted';
  expect(await writeFolder(logbook, safeguards, true)).toMatchObject({ files: ['pinchbolt-2026-05-04.zip'] });
  expect(asked).toEqual(['query', 'request', 'query']);
});

test('a folder that is gone is told with the reason, and the next try that does it takes that away', async () => {
  const logbook = await ofYesterday();
  await chooseFolder(logbook);
  gone = true;
  await refreshFolder(logbook, safeguards);
  expect((await keptFolder(logbook)) as FolderKept).toMatchObject({
    failed: 'the folder is gone',
    files: [],
  });
  expect(noted).toBe(0);
  gone = false;
  await refreshFolder(logbook, safeguards);
  expect(await keptFolder(logbook)).not.toHaveProperty('failed');
});

test('a picker that is closed leaves all as it was; without a picker there is no choice', async () => {
  const logbook = await ofYesterday();
  Object.assign(globalThis, {
    showDirectoryPicker: () => Promise.reject(new DOMException('closed', 'AbortError')),
  });
  expect(await chooseFolder(logbook)).toBeUndefined();
  expect(await keptFolder(logbook)).toBeUndefined();
  Reflect.deleteProperty(globalThis, 'showDirectoryPicker');
  expect(canChooseFolder()).toBe(false);
});

test('to stop copying waits for the copy that is being written, and nothing is written after it', async () => {
  const logbook = await ofYesterday();
  await chooseFolder(logbook);
  // Locks that are waited for, one after the other.
  let last: Promise<unknown> = Promise.resolve();
  const request = <T>(_name: string, _how: object, work: (lock: object) => Promise<T>) => {
    const mine = last.then(() => work({}));
    last = mine.catch(() => {});
    return mine;
  };
  Object.defineProperty(globalThis, 'navigator', { configurable: true, value: { locks: { request } } });
  await Promise.all([refreshFolder(logbook, safeguards), leaveFolder(logbook)]);
  expect(await keptFolder(logbook)).toBeUndefined();
  await refreshFolder(logbook, safeguards);
  expect(files.size).toBe(1);
});
