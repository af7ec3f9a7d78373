import { describe, expect, test } from 'vitest';
import type { Entry } from '../../../src/journal/entries.ts';
import { type Content, type HeldMirror, openMirror } from '../../../src/mirror/mirror.ts';
import { type MemoryFolder, memoryFolder, turnsInMemory } from './memoryFolder.ts';

const head = { v: 1, writtenAtMs: 0, happenedAtMs: 0, zone: 'UTC' };
/** Entries with letters that need more than one byte. */
const entriesFrom = (from: number, count: number) =>
  Array.from(
    { length: count },
    (_, at) =>
      ({
        ...{ ...head, id: `e${from + at}`, type: 'bike-started', bikeId: 'b' },
        name: `Rad Ü${from + at} 自転車`,
      }) as Entry,
  );
const lines = (entries: Entry[]): Content[] => entries.map((entry) => ({ entry }));
const level = (entries: number) => ({ level: { upTo: `e${entries}`, entries, photos: 0, atMs: 1 } });

async function opened(folder: MemoryFolder) {
  const mirror = await openMirror({ folder: folder.handle, turns: turnsInMemory() });
  if (!mirror) throw new Error('no mirror');
  return mirror;
}

async function contentsOf(held: HeldMirror) {
  const entries: Entry[] = [];
  const unreadable = await held.read((content) => {
    if ('entry' in content) entries.push(content.entry);
  });
  return { entries, unreadable };
}

const readAll = async (folder: MemoryFolder) => (await opened(folder)).alone(contentsOf);

function damage(folder: MemoryFolder, change: (bytes: Uint8Array) => Uint8Array): void {
  const name = folder.journal();
  folder.files.set(name, change(Uint8Array.from(folder.files.get(name) ?? [])));
}

describe('[K4] the second copy as a file of lines', () => {
  test('gives back what was written, and tells how far it has come', async () => {
    const folder = memoryFolder();
    const mirror = await opened(folder);
    await mirror.alone((held) => held.add([...lines(entriesFrom(1, 3)), level(3)]));
    expect(await readAll(folder)).toEqual({ entries: entriesFrom(1, 3), unreadable: 0 });
    expect(await (await opened(folder)).alone((held) => held.level())).toEqual(level(3).level);
  });

  test('with its end torn off at any byte keeps every whole line, claims no level, and goes on behind it', async () => {
    const whole = memoryFolder();
    const all = entriesFrom(1, 3);
    await (await opened(whole)).alone((held) => held.add([...lines(all), level(3)]));
    const bytes = whole.files.get('journal-1') ?? new Uint8Array(0);
    for (let cut = 1; cut < bytes.length; cut += 7) {
      const folder = memoryFolder();
      folder.files.set('journal-1', bytes.slice(0, -cut));
      const mirror = await opened(folder);
      expect(await mirror.alone((held) => held.level())).toBeUndefined();
      const left = await mirror.alone(contentsOf);
      expect(left.entries).toEqual(all.slice(0, left.entries.length));
      await mirror.alone((held) => held.add(lines(entriesFrom(9, 1))));
      const { entries } = await readAll(folder);
      // A line that lacked its end alone is whole again.
      expect(entries.length - left.entries.length).toBeLessThanOrEqual(2);
      expect(entries).toEqual([...all.slice(0, entries.length - 1), ...entriesFrom(9, 1)]);
    }
  });

  test('with one bent bit loses that line and no other', async () => {
    const folder = memoryFolder();
    await (await opened(folder)).alone((held) => held.add(lines(entriesFrom(1, 5))));
    damage(folder, (bytes) => bytes.map((byte, at) => (at === 200 ? byte ^ 1 : byte)));
    const { entries, unreadable } = await readAll(folder);
    expect(entries).toHaveLength(4);
    expect(unreadable).toBe(1);
  });

  test('that begins anew holds those lines alone; killed at any byte on the way the old one counts', async () => {
    const folder = memoryFolder();
    const mirror = await opened(folder);
    await mirror.alone((held) => held.add(lines(entriesFrom(1, 4))));
    const old = folder.files.get('journal-1') ?? new Uint8Array(0);
    const anew = entriesFrom(20, 2);
    await mirror.alone((held) =>
      held.startOver(
        2,
        (async function* () {
          yield lines(anew);
        })(),
      ),
    );
    expect([...folder.files.keys()]).toEqual(['journal-2']);
    expect((await readAll(folder)).entries).toEqual(anew);
    const made = folder.files.get('journal-2') ?? new Uint8Array(0);
    for (let length = 0; length < made.length; length += 9) {
      const killed = memoryFolder();
      killed.files.set('journal-1', old);
      killed.files.set('journal-2', made.slice(0, length));
      expect((await readAll(killed)).entries, `killed at byte ${length}`).toEqual(entriesFrom(1, 4));
    }
    const late = memoryFolder();
    late.files.set('journal-1', old);
    late.files.set('journal-2', made);
    expect((await readAll(late)).entries, 'killed before the old one was thrown away').toEqual(anew);
  });

  test('keeps a photo once by its bytes, and gives none that was changed', async () => {
    const folder = memoryFolder();
    const mirror = await opened(folder);
    const buf = new TextEncoder().encode('abc').buffer as ArrayBuffer;
    const keep = (photoId: string) =>
      mirror.alone((held) => held.keepPhoto({ photoId, buf, type: 'image/jpeg', widthPx: 1, heightPx: 1 }));
    // FIPS 180-4, example of SHA-256 for the message "abc".
    const hash = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
    expect((await keep('p1')).photo.hash).toBe(hash);
    expect((await keep('p2')).known).toBe(true);
    expect([...folder.files.keys()].filter((name) => name.startsWith('photo-'))).toEqual([`photo-${hash}`]);
    expect(await mirror.alone((held) => held.readPhoto(hash))).toEqual(buf);
    folder.files.set(`photo-${hash}`, new TextEncoder().encode('abd'));
    expect(await mirror.alone((held) => held.readPhoto(hash))).toBeUndefined();
    expect((await keep('p1')).known, 'and is written again').toBe(false);
  });
});
