import { createHash } from 'node:crypto';
import { unzipSync } from 'fflate';
import { beforeAll, describe, expect, test } from 'vitest';
import { writeArchive } from '../../../src/exchange/archive/writeArchive.ts';
import type { CopyProgress } from '../../../src/exchange/copy/copy.ts';
import { openCopy } from '../../../src/exchange/copy/openCopy.ts';
import { entrySchema } from '../../../src/exchange/schema/entrySchema.ts';
import type { Entry } from '../../../src/journal/entries.ts';
import { archiveOf, content, each, memory, opened, photoOf, whole } from './aCopy.ts';
import { allEntries, idOf } from './entriesOfEveryKind.ts';

describe('an archive without the app', () => {
  // The outside here: another program's way of reading a ZIP, and the platform's own SHA-256.
  let files: Record<string, Uint8Array> = {};
  const inside = (path: string) => new TextDecoder().decode(files[path]);

  beforeAll(async () => {
    files = unzipSync(new Uint8Array(await (await archiveOf()).arrayBuffer()));
  });

  test('holds the checksum of every file, in the form that sha256sum -c reads', () => {
    const lines = inside('checksums.sha256').trim().split('\n');
    const { 'checksums.sha256': _sums, ...others } = files;
    const sums = Object.entries(others).map(
      ([path, bytes]) => `${createHash('sha256').update(bytes).digest('hex')}  ${path}`,
    );
    expect(lines.length).toBeGreaterThan(7);
    expect(lines.toSorted()).toEqual(sums.toSorted());
  });

  test('holds every entry as a line, with the schema that entrySchema.test.ts holds against the standard', () => {
    expect(JSON.parse(inside('entry.schema.json'))).toEqual(entrySchema());
    const lines = inside('journal/00001.jsonl').trim().split('\n');
    expect(lines.map((line) => JSON.parse(line))).toEqual(allEntries);
  });

  test('holds photos as files under their checksum, and a list of which is which', () => {
    const listed = inside('photos.jsonl')
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(listed.map(({ photoId }) => photoId)).toEqual(['ph1', 'ph2']);
    for (const [at, { sha256 }] of listed.entries()) {
      expect(files[`photos/${sha256}.jpg`]).toEqual(new Uint8Array(photoOf(at + 1).buf));
    }
  });

  test('holds a sheet of each bike in which text stays text', () => {
    const sheets = Object.keys(files).filter((path) => path.startsWith('sheets/'));
    expect(sheets).toEqual(['sheets/01-magpie.html', 'sheets/02-b-ferry.html']);
    const page = inside('sheets/02-b-ferry.html');
    expect(page).toContain('<h1>&lt;script&gt;alert(1)&lt;/script&gt;</h1>');
    expect(page).not.toContain('<script');
  });
});

describe('writing and reading an archive', () => {
  test.each([
    ['open', undefined],
    ['locked', 'blue spoke key'],
  ])('%s: entries and photos come back as they were', async (_name, passphrase) => {
    const copy = await opened(await archiveOf(content(), passphrase), passphrase);
    const { entries, photos } = await whole(copy);
    expect(entries).toEqual(allEntries);
    expect(photos).toEqual([photoOf(1), photoOf(2)]);
    expect(copy).toMatchObject({ entries: allEntries.length, madeAtMs: content().madeAtMs, astray: [] });
  });

  test('many pieces: lines stay in order over all of them', async () => {
    const many = Array.from({ length: 6000 }, (_, at) => noteOf(at));
    const { entries } = await whole(await opened(await archiveOf(content(many, []))));
    expect(entries.map((entry) => JSON.stringify(entry))).toEqual(many.map((entry) => JSON.stringify(entry)));
  });

  test('an empty logbook can be copied', async () => {
    const copy = await opened(await archiveOf(content([], [])));
    expect(await whole(copy)).toEqual({ entries: [], photos: [] });
  });

  test('a picture that two entries brought in stands in it once, and comes back twice', async () => {
    const twice = [photoOf(1, 50_000), { ...photoOf(1, 50_000), photoId: 'other' }];
    const [one, two] = [await archiveOf(content([], [twice[0]!])), await archiveOf(content([], twice))];
    expect(two.size - one.size).toBeLessThan(500);
    expect((await whole(await opened(two))).photos).toEqual(twice);
  });

  test('a kind of picture that is none is kept as mere bytes', async () => {
    const odd = { ...photoOf(1), type: 'image/svg+xml' };
    const { photos } = await whole(await opened(await archiveOf(content([], [odd]))));
    expect(photos).toEqual([{ ...odd, type: 'application/octet-stream' }]);
  });

  test('progress is told, up to everything', async () => {
    const told: CopyProgress[] = [];
    const kept = memory();
    const written = await writeArchive(content(), kept.stream, { onProgress: (now) => told.push(now) });
    expect(told.at(-1)).toEqual(written);
    expect(written).toEqual({ entries: allEntries.length, photos: 2, bytes: kept.blob().size });
    const read: CopyProgress[] = [];
    await openCopy(kept.blob(), { onProgress: (now) => read.push(now) });
    expect(read.at(-1)).toMatchObject({ entries: allEntries.length, photos: 2 });
  });

  test('cancelled: the stream is aborted, and the reason comes back', async () => {
    const stop = new AbortController();
    const kept = memory();
    const reason = new Error('changed my mind');
    const onProgress = ({ entries }: CopyProgress) => {
      if (entries > 0) stop.abort(reason);
    };
    const work = writeArchive(content(), kept.stream, { signal: stop.signal, onProgress });
    await expect(work).rejects.toBe(reason);
    expect(kept.aborted()).toBe(reason);
    const whole = await archiveOf();
    await expect(openCopy(whole, { signal: AbortSignal.abort(reason) })).rejects.toBe(reason);
  });

  test('a sink that fails ends the work with its own error', async () => {
    const full = new Error('no room left');
    let pieces = 0;
    const stream = new WritableStream<Uint8Array<ArrayBuffer>>({
      write() {
        pieces += 1;
        if (pieces > 5) throw full;
      },
    });
    await expect(writeArchive(content(), stream)).rejects.toBe(full);
  });

  test('a source that fails leaves no archive that looks whole', async () => {
    const broken = new Error('unreadable');
    const kept = memory();
    const from = {
      ...content(),
      photos: (async function* () {
        yield photoOf(1);
        throw broken;
      })(),
      sheets: each([]),
    };
    await expect(writeArchive(from, kept.stream)).rejects.toBe(broken);
    expect(kept.aborted()).toBe(broken);
    expect(await openCopy(kept.blob())).toHaveProperty('refused');
  });
});

const noteOf = (at: number): Entry => ({
  id: idOf(at + 1000),
  v: 1,
  writtenAtMs: 1_777_000_000_000 + at,
  happenedAtMs: 1_777_000_000_000 + at,
  zone: 'UTC',
  type: 'note-added',
  noteId: `n${at}`,
  words: `number ${at}, ${'ä'.repeat(at % 50)} 🔧`,
});
