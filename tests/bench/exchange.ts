import { deflateSync, inflateSync, Zip, ZipPassThrough } from 'fflate';
import { writeArchive } from '../../src/exchange/archive/writeArchive.ts';
import { listFiles } from '../../src/exchange/archive/zipIn.ts';
import { sourceOf } from '../../src/exchange/byteSource.ts';
import { openCopy } from '../../src/exchange/copy/openCopy.ts';
import type { Photo } from '../../src/journal/commands.ts';
import type { Entry } from '../../src/journal/entries.ts';

/** Runs in the page: a logbook of any size written as an archive and read back, against the bare library. */

type Bytes = Uint8Array<ArrayBuffer>;

const START_MS = Date.UTC(2020, 0, 1);
const BATCH = 1000;

const hex = (number: number, digits: number) => number.toString(16).padStart(digits, '0');

/** Digits that look thrown and come out the same every time. */
const mixed = (number: number): number => Math.imul(number ^ (number >>> 15), 0x2c1b3c6d) >>> 0;

function idOf(atMs: number, number: number): string {
  const time = hex(atMs, 12);
  return `${time.slice(0, 8)}-${time.slice(8)}-7${hex(mixed(number) % 4096, 3)}-8${hex(mixed(number + 7) % 4096, 3)}-${hex(mixed(number + 13), 8)}${hex(number % 65536, 4)}`;
}

/** Two torques, a note, a ride: what years of a workshop mostly hold. */
function entryOf(number: number): Entry {
  const atMs = START_MS + number * 61_000;
  const bikeId = idOf(START_MS, number % 200);
  const head = { id: idOf(atMs, number), v: 1, writtenAtMs: atMs, happenedAtMs: atMs, zone: 'Europe/Berlin' };
  const jointId = idOf(START_MS, 1000 + (number % 2400));
  if (number % 4 === 0) {
    const words = `Looked at it after ${number} km, a little play at first, none after taking it up ${mixed(number) % 90}°`;
    return { ...head, by: 'the builder', type: 'note-added', noteId: head.id, bikeId, jointId, words };
  }
  if (number % 4 === 1) {
    const km = 1 + (mixed(number) % 900) / 10;
    return {
      ...head,
      type: 'ride-logged',
      rideId: head.id,
      bikeId,
      km,
      minutes: 1 + (number % 200),
      first: false,
    };
  }
  return {
    ...{ ...head, by: 'the builder', type: 'torque-applied', jointId, bikeId, entered: 'tap' },
    ...{ applied: { value: 5, unit: 'N.m', typed: '5' }, bolts: 2, passes: 2, marked: true, matters: true },
    tool: { toolId: 'tool-small', name: 'Small click wrench', minNm: 2, maxNm: 14, state: 'checked' },
  } as Entry;
}

const noise = (() => {
  const bytes = new Uint8Array(300_000);
  for (let at = 0; at < bytes.length; at += 50_000) crypto.getRandomValues(bytes.subarray(at, at + 50_000));
  return bytes;
})();

/** As heavy as a photo of the app may be, and as hard to pack. */
function photoOf(number: number): Photo {
  const bytes = noise.slice();
  new DataView(bytes.buffer).setUint32(0, number);
  return {
    photoId: idOf(START_MS, 5000 + number),
    buf: bytes.buffer,
    type: 'image/jpeg',
    widthPx: 1600,
    heightPx: 1200,
  };
}

/** What a step took, ms, but for the making of what goes in. */
class Watch {
  ms = 0;
  #since = 0;
  start(): void {
    this.#since = performance.now();
  }
  stop(): void {
    this.ms += performance.now() - this.#since;
  }
}

async function* entriesUpTo(count: number, watch: Watch): AsyncGenerator<Entry[]> {
  for (let at = 0; at < count; at += BATCH) {
    watch.stop();
    const batch = Array.from({ length: Math.min(BATCH, count - at) }, (_, index) => entryOf(at + index));
    watch.start();
    yield batch;
  }
}

async function* photosUpTo(count: number, watch: Watch): AsyncGenerator<Photo> {
  for (let number = 0; number < count; number += 1) {
    watch.stop();
    const photo = photoOf(number);
    watch.start();
    yield photo;
  }
}

async function* noSheets() {}

export interface Written {
  ms: number;
  bytes: number;
}

let kept: Blob | undefined;

/** Writes the archive; keeps it for reading, or lets every piece go as a file on disk would. Where it goes is not counted. */
export async function write(
  entries: number,
  photos: number,
  keep: boolean,
  passphrase?: string,
): Promise<Written> {
  let pieces: Blob[] = [];
  const watch = new Watch();
  const stream = new WritableStream<Bytes>({
    write(piece) {
      if (!keep) return;
      watch.stop();
      pieces.push(new Blob([piece]));
      // Blobs of blobs, so that the browser may move what there is out of the page.
      if (pieces.length > 200) pieces = [new Blob(pieces)];
      watch.start();
    },
  });
  watch.start();
  const content = {
    entries: entriesUpTo(entries, watch),
    photos: photosUpTo(photos, watch),
    sheets: noSheets(),
    madeAtMs: START_MS,
  };
  const { bytes } = await writeArchive(content, stream, { passphrase });
  watch.stop();
  if (keep) kept = new Blob(pieces);
  return { ms: watch.ms, bytes };
}

export interface Read {
  checkMs: number;
  readMs: number;
  entries: number;
  photos: number;
}

/** Reads it: once through with every check, then again as it would be taken in. */
export async function read(passphrase?: string): Promise<Read> {
  if (!kept) throw new Error('nothing was written');
  const start = performance.now();
  const copy = await openCopy(kept, { passphrase });
  if ('refused' in copy) throw new Error(`${copy.refused} ${copy.about ?? ''}`);
  const checked = performance.now();
  let [entries, photos] = [0, 0];
  for await (const batch of copy.readEntries()) entries += batch.length;
  for await (const { buf } of copy.readPhotos()) photos += buf.byteLength > 0 ? 1 : 0;
  return { checkMs: checked - start, readMs: performance.now() - checked, entries, photos };
}

/** The library alone: the same bytes packed and put into an archive, nothing else. */
export async function barePack(entries: number, photos: number): Promise<Written> {
  const watch = new Watch();
  let bytes = 0;
  const zip = new Zip((error, piece) => {
    if (error) throw error;
    bytes += piece.length;
  });
  const put = (path: string, whole: Bytes, packed: Bytes | undefined) => {
    const file = new ZipPassThrough(path);
    zip.add(file);
    file.push(packed ?? whole, true);
  };
  const text = new TextEncoder();
  const PIECE = 3000;
  for (let at = 0; at < entries; at += PIECE) {
    const lines = Array.from({ length: Math.min(PIECE, entries - at) }, (_, index) =>
      JSON.stringify(entryOf(at + index)),
    );
    const whole = text.encode(`${lines.join('\n')}\n`) as Bytes;
    watch.start();
    put(`journal/${at}`, whole, deflateSync(whole) as Bytes);
    watch.stop();
    await new Promise((rest) => setTimeout(rest));
  }
  for (let number = 0; number < photos; number += 1) {
    const whole = new Uint8Array(photoOf(number).buf);
    watch.start();
    put(`photos/${number}`, whole, undefined);
    watch.stop();
  }
  zip.end();
  return { ms: watch.ms, bytes };
}

/** The library alone: every file of the archive that was kept, read from where it lies and unpacked. */
export async function bareUnpack(): Promise<{ ms: number; files: number }> {
  if (!kept) throw new Error('nothing was written');
  const source = sourceOf(kept);
  const listed = await listFiles(source);
  const start = performance.now();
  for (const { at, path, packedBytes, packed, bytes } of listed.values()) {
    const from = at + 30 + path.length;
    const data = await source.read(from, from + packedBytes);
    if (packed) inflateSync(data, { out: new Uint8Array(bytes) });
  }
  return { ms: performance.now() - start, files: listed.size };
}
