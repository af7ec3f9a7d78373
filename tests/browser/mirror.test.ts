import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type * as mirrors from '../../src/mirror/mirror.ts';
import { openPhone, type Phone, type Served, serveDist } from './product.ts';

type Mirror = mirrors.Mirror;

/** The mirror as one script for a page, and its worker: nothing of the product uses it yet. */
async function script(entry: string, name: string): Promise<string> {
  const scratch = mkdtempSync(join(tmpdir(), 'pinchbolt-mirror-'));
  try {
    await build({
      configFile: false,
      logLevel: 'error',
      publicDir: false,
      build: {
        outDir: scratch,
        target: 'es2022',
        lib: { entry, formats: ['iife'], name, fileName: () => 'built.js' },
      },
    });
    return readFileSync(join(scratch, 'built.js'), 'utf8');
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}

let pageScript = '';
let workerScript = '';
let served: Served;
let phone: Phone;

beforeAll(async () => {
  pageScript = `${await script('src/mirror/mirror.ts', 'mirrors')};globalThis.mirrors = mirrors;`;
  workerScript = await script('src/mirror/worker.ts', 'worker');
});

beforeEach(async () => {
  served = await serveDist();
  served.answer((path) => {
    if (path === '/worker.js') return { body: workerScript, headers: { 'content-type': 'text/javascript' } };
    return path === '/page.js'
      ? { body: pageScript, headers: { 'content-type': 'text/javascript' } }
      : { body: '<!doctype html><script src="/page.js"></script>' };
  });
  phone = await openPhone(served.origin);
  await open();
});

afterEach(async () => {
  await phone.close();
  await served.stop();
});

const open = (page = phone.page) => page.goto(`${served.origin}/empty`);

type Way = 'in a worker' | 'by the browser';
const WAYS: Way[] = ['in a worker', 'by the browser'];

/** Does something with the mirror in the page, opened afresh as a start of the app would. */
function withMirror<T, A>(
  way: Way,
  work: (mirror: Mirror, given: A) => Promise<T>,
  given: A,
  page = phone.page,
) {
  return page.evaluate(
    async ({ source, inWorker, with: what }) => {
      const { openMirror } = (globalThis as unknown as { mirrors: typeof mirrors }).mirrors;
      const mirror = await openMirror(inWorker ? () => new Worker('/worker.js') : undefined);
      if (!mirror) throw new Error('no private files');
      return new Function('mirror', 'given', `return (${source})(mirror, given)`)(mirror, what);
    },
    { source: work.toString(), inWorker: way === 'in a worker', with: given },
  ) as Promise<T>;
}

const head = { v: 1, writtenAtMs: 0, happenedAtMs: 0, zone: 'UTC' };
/** Lines as the journal has them, with letters that need more than one byte. */
const linesFrom = (from: number, count: number) =>
  Array.from({ length: count }, (_, at) => {
    const seq = from + at;
    const entry = { ...head, id: `e${seq}`, type: 'bike-started', bikeId: 'b', name: `Rad Ü${seq} 自転車` };
    return { seq, entry } as unknown as mirrors.MirroredLine;
  });

/** Cuts bytes off the end of the newest file of lines, or changes one of its bytes. */
const damage = (cut: number, bend?: number) =>
  phone.page.evaluate(
    async ([bytes, at]) => {
      const top = await navigator.storage.getDirectory();
      const folder = await top.getDirectoryHandle('pinchbolt-mirror');
      const names: string[] = [];
      for await (const name of (folder as unknown as { keys(): AsyncIterable<string> }).keys())
        if (name.startsWith('journal-')) names.push(name);
      const file = await folder.getFileHandle(names.sort().at(-1) ?? '');
      const whole = new Uint8Array(await (await file.getFile()).arrayBuffer());
      if (at !== undefined) whole[at] = (whole[at] ?? 0) ^ 1;
      const writable = await file.createWritable();
      await writable.write(whole.slice(0, whole.length - (bytes ?? 0)));
      await writable.close();
      return whole.length;
    },
    [cut, bend] as const,
  );

describe.each(WAYS)('the mirror, written %s', (way) => {
  const append = (lines: mirrors.MirroredLine[], page = phone.page) =>
    withMirror(way, (mirror, given) => mirror.appendLines(given), lines, page);
  const flushed = () => withMirror(way, (mirror) => mirror.flushed(), undefined);
  const readAll = () => withMirror(way, (mirror) => mirror.readAll(), undefined);

  test('is written that way, and gives back what was written, also after a restart', async () => {
    expect(await withMirror(way, async (mirror) => mirror.writes, undefined)).toBe(way);
    expect(await flushed()).toEqual({ last: 0, count: 0 });
    const lines = linesFrom(1, 300);
    await append(lines.slice(0, 100));
    await append(lines.slice(100));
    await open();
    expect(await flushed()).toEqual({ last: 300, count: 300 });
    expect(await readAll()).toEqual({ lines, photos: [], unreadable: 0 });
  });

  test('with its end torn off at any byte keeps every whole line, and goes on behind it', async () => {
    const lines = linesFrom(1, 3);
    await append(lines);
    for (const cut of [1, 2, 40, 90]) {
      await damage(cut);
      const { lines: left, unreadable } = await readAll();
      expect(left).toEqual(lines.slice(0, left.length));
      expect(left.length).toBeGreaterThanOrEqual(1);
      expect(left.length).toBeLessThan(3);
      expect(unreadable).toBe(1);
      await append(lines);
      expect((await readAll()).lines).toEqual(lines);
      expect(await flushed()).toEqual({ last: 3, count: 3 });
      await withMirror(way, (mirror, given) => mirror.startOver(given), lines);
    }
  });

  test('with one bent bit loses that line and no other, and tells how many it has', async () => {
    const lines = linesFrom(1, 5);
    await append(lines);
    await damage(0, 200);
    const { lines: left, unreadable } = await readAll();
    expect(left).toHaveLength(4);
    expect(lines).toEqual(expect.arrayContaining(left));
    expect(unreadable).toBe(1);
    expect((await flushed()).count).toBe(4);
  });

  test('that begins anew holds those lines alone; one that was cut short on the way does not count', async () => {
    await append(linesFrom(1, 10));
    await withMirror(way, (mirror, given) => mirror.startOver(given), linesFrom(20, 5));
    expect((await readAll()).lines).toEqual(linesFrom(20, 5));
    await phone.page.evaluate(async () => {
      const top = await navigator.storage.getDirectory();
      const folder = await top.getDirectoryHandle('pinchbolt-mirror');
      const next = await folder.getFileHandle('journal-9', { create: true });
      const last = await (await (await folder.getFileHandle('journal-2')).getFile()).arrayBuffer();
      const writable = await next.createWritable();
      await writable.write(last.slice(0, last.byteLength - 5));
      await writable.close();
    });
    await open();
    await append(linesFrom(25, 1));
    expect((await readAll()).lines).toEqual(linesFrom(20, 6));
  });

  test('takes lines of two pages at once, and each page knows of both', async () => {
    const other = await phone.context.newPage();
    await open(other);
    const all = linesFrom(1, 60);
    const odd = all.filter(({ seq }) => seq % 2 === 1);
    const even = all.filter(({ seq }) => seq % 2 === 0);
    const oneByOne = async (mirror: Mirror, given: mirrors.MirroredLine[]) => {
      for (const line of given) await mirror.appendLines([line]);
      return mirror.flushed();
    };
    await Promise.all([withMirror(way, oneByOne, odd), withMirror(way, oneByOne, even, other)]);
    expect(await flushed()).toEqual({ last: 60, count: 60 });
    expect(await readAll()).toEqual({ lines: all, photos: [], unreadable: 0 });
  });

  test('keeps a photo once by its bytes, and gives none that was changed', async () => {
    const kept = await withMirror(
      way,
      async (mirror) => {
        const photo = { type: 'image/jpeg', widthPx: 1, heightPx: 1 };
        for (const photoId of ['p1', 'p2'])
          await mirror.keepPhoto({
            ...photo,
            photoId,
            buf: new TextEncoder().encode('abc').buffer as ArrayBuffer,
          });
        const { photos } = await mirror.readAll();
        const bytes = await mirror.readPhoto(photos[0]?.hash ?? '');
        return { photos, text: new TextDecoder().decode(bytes) };
      },
      undefined,
    );
    // FIPS 180-4, example of SHA-256 for the message "abc".
    const hash = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
    expect(kept.photos).toEqual(
      ['p1', 'p2'].map((photoId) => ({ photoId, type: 'image/jpeg', widthPx: 1, heightPx: 1, hash })),
    );
    expect(kept.text).toBe('abc');
    await phone.page.evaluate(async (name) => {
      const top = await navigator.storage.getDirectory();
      const folder = await top.getDirectoryHandle('pinchbolt-mirror');
      const writable = await (await folder.getFileHandle(name)).createWritable();
      await writable.write('abd');
      await writable.close();
    }, `photo-${hash}`);
    expect(await withMirror(way, (mirror, given) => mirror.readPhoto(given), hash)).toBeUndefined();
  });
});

test('lines whose writing was acknowledged are there after every process of the browser was killed', async () => {
  const acknowledged = await withMirror(
    'in a worker',
    async (mirror, given) => {
      const seen = globalThis as unknown as { flushed: number };
      seen.flushed = 0;
      void (async () => {
        for (const line of given) {
          await mirror.appendLines([line]);
          seen.flushed = line.seq;
        }
      })();
      await new Promise((later) => setTimeout(later, 1500));
      return seen.flushed;
    },
    linesFrom(1, 3000),
  );
  expect(acknowledged).toBeGreaterThan(5);
  const { profile } = phone;
  await phone.kill();
  phone = await openPhone(served.origin, { profile });
  await open();
  const { lines, unreadable } = await withMirror('in a worker', (mirror) => mirror.readAll(), undefined);
  expect(lines.length).toBeGreaterThanOrEqual(acknowledged);
  expect(lines).toEqual(linesFrom(1, lines.length));
  expect(unreadable).toBeLessThanOrEqual(1);
});

test('a browser without private files has no mirror, and that is told', async () => {
  const opened = await phone.page.evaluate(async () => {
    navigator.storage.getDirectory = () => Promise.reject(new DOMException('no', 'SecurityError'));
    const { openMirror } = (globalThis as unknown as { mirrors: typeof mirrors }).mirrors;
    return (await openMirror()) === undefined;
  });
  expect(opened).toBe(true);
});
