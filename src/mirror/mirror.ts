import type { Entry, Id } from '../journal/entries.ts';
import { asyncFiles, type Files, mirrorFolder } from './files.ts';
import { filesIn } from './inWorker.ts';
import { lineOf, readLines } from './lines.ts';

export interface MirroredLine {
  seq: number;
  entry: Entry;
}

export interface MirroredPhoto {
  photoId: Id;
  type: string;
  widthPx: number;
  heightPx: number;
  /** SHA-256 of its bytes in hexadecimal digits; the file goes by it. */
  hash: string;
}

/** Everything the mirror holds, by line number; each number and each photo once. */
export interface Mirrored {
  lines: MirroredLine[];
  photos: MirroredPhoto[];
  /** Lines that were torn or bent. */
  unreadable: number;
}

/** A second copy of the journal outside IndexedDB. It only grows, but for `startOver`. */
export interface Mirror {
  /** Adds lines; resolves when they are flushed. Rejects when they could not be written: the file is full, or gone. */
  appendLines(lines: readonly MirroredLine[]): Promise<void>;
  /** What lies flushed: the highest number, and how many lines. Fewer than the journal has means that some are missing. */
  flushed(): Promise<{ last: number; count: number }>;
  readAll(): Promise<Mirrored>;
  /** Keeps a photo; the same bytes twice are one file. */
  keepPhoto(photo: Omit<MirroredPhoto, 'hash'> & { buf: ArrayBuffer }): Promise<void>;
  /** The bytes of a photo; undefined when they are not there as they were. */
  readPhoto(hash: string): Promise<ArrayBuffer | undefined>;
  /** Begins anew with these lines alone, as after entries were taken out. Until all is flushed the old copy counts. */
  startOver(lines: readonly MirroredLine[]): Promise<void>;
  /** How it is written; a worker flushes by itself, the browser's own writer copies the file each time. */
  writes: 'in a worker' | 'by the browser';
}

const LOCK = 'pinchbolt-mirror';
/** The file of lines by the number of its making; the highest whole one counts. */
const JOURNAL = /^journal-(\d+)$/;
const photoFile = (hash: string) => `photo-${hash}`;

/** The first line of a file: a file made anew counts once it holds as many lines as it began with. */
interface Beginning {
  begins: number;
}
type Content = MirroredLine | MirroredPhoto | Beginning;

const isLine = (content: Content): content is MirroredLine => 'entry' in content;
const isPhoto = (content: Content): content is MirroredPhoto => 'hash' in content;

async function sha256Hex(bytes: ArrayBuffer): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...hash].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

function joined(pieces: Uint8Array[]): Uint8Array {
  const all = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}

/**
 * Opens the mirror.
 * @param startWorker starts `worker.ts` as a dedicated worker; without it, or where it cannot write, the browser's
 *   own writer is used
 * @returns undefined where the browser has no private files: then there is no second copy
 */
export async function openMirror(startWorker?: () => Worker): Promise<Mirror | undefined> {
  const found = await mirrorFolder();
  if (!found) return undefined;
  const folder = found;
  const { files, writes } = await writerFor(folder, startWorker);

  /** One at a time over all pages: a file can be held by one only. */
  const alone = <T>(work: () => Promise<T>): Promise<T> => navigator.locks.request(LOCK, work) as Promise<T>;

  async function numbers(): Promise<number[]> {
    const made: number[] = [];
    for await (const name of (folder as unknown as { keys(): AsyncIterable<string> }).keys()) {
      const number = JOURNAL.exec(name)?.[1];
      if (number !== undefined) made.push(Number(number));
    }
    return made.sort((a, b) => b - a);
  }

  async function read(number: number, from = 0) {
    const file = await (await folder.getFileHandle(`journal-${number}`)).getFile();
    return readLines(file.slice(from).stream());
  }

  async function dropAllBut(kept: number): Promise<void> {
    for (const number of await numbers()) if (number !== kept) await folder.removeEntry(`journal-${number}`);
  }

  /** The file that counts, and what it holds: the newest whole one; where none is whole, the one that holds most. */
  async function current() {
    const found = [];
    for (const number of await numbers()) {
      const { contents, unreadable, bytes } = await read(number);
      const all = contents as Content[];
      const rest = all.filter((one) => !('begins' in one));
      const one = { number, contents: rest, unreadable, bytes };
      const [first] = all;
      if (first && 'begins' in first && rest.length >= first.begins) {
        await dropAllBut(number);
        return one;
      }
      found.push(one);
    }
    const [most] = found.sort((a, b) => b.contents.length - a.contents.length);
    if (most) return most;
    await files.write('journal-1', lineOf({ begins: 0 } satisfies Beginning));
    return { number: 1, contents: [] as Content[], unreadable: 0, bytes: 0 };
  }

  /** What this page knows of the file: it reads on from there. */
  let known = { number: 0, bytes: 0, lines: new Set<number>() };
  async function readOn(): Promise<typeof known> {
    const [newest] = await numbers();
    if (newest === undefined || newest !== known.number) {
      const { number, contents, bytes } = await current();
      known = { number, bytes, lines: new Set(contents.filter(isLine).map(({ seq }) => seq)) };
    } else {
      const { contents, bytes } = await read(known.number, known.bytes);
      for (const one of (contents as Content[]).filter(isLine)) known.lines.add(one.seq);
      known.bytes += bytes;
    }
    return known;
  }

  const append = async (contents: readonly Content[]) => {
    const { number } = known.number > 0 ? known : await readOn();
    const [newest = number] = await numbers();
    const to = newest === number ? number : (await readOn()).number;
    await files.append(`journal-${to}`, joined(contents.map(lineOf)));
  };

  return {
    writes,
    appendLines: (lines) => (lines.length === 0 ? Promise.resolve() : alone(() => append(lines))),
    flushed: () =>
      alone(async () => {
        const { lines } = await readOn();
        let last = 0;
        for (const seq of lines) last = Math.max(last, seq);
        return { last, count: lines.size };
      }),
    readAll: () =>
      alone(async () => {
        const { contents, unreadable } = await current();
        const lines = new Map(contents.filter(isLine).map((line) => [line.seq, line]));
        const photos = new Map(contents.filter(isPhoto).map((photo) => [photo.photoId, photo]));
        const sorted = [...lines.values()].sort((a, b) => a.seq - b.seq);
        return { lines: sorted, photos: [...photos.values()], unreadable };
      }),
    async keepPhoto({ buf, photoId, type, widthPx, heightPx }) {
      const hash = await sha256Hex(buf);
      await alone(async () => {
        if (!(await photoBytes(folder, hash))) await files.write(photoFile(hash), new Uint8Array(buf));
        await append([{ photoId, type, widthPx, heightPx, hash }]);
      });
    },
    readPhoto: (hash) => alone(() => photoBytes(folder, hash)),
    startOver: (lines) =>
      alone(async () => {
        const { number, contents } = await current();
        const kept = [...lines, ...contents.filter(isPhoto)];
        const next = number + 1;
        // Without its beginning, or with fewer lines than that says, the file does not count yet.
        await files.write(`journal-${next}`, joined([{ begins: kept.length }, ...kept].map(lineOf)));
        await dropAllBut(next);
      }),
  };
}

async function photoBytes(folder: FileSystemDirectoryHandle, hash: string): Promise<ArrayBuffer | undefined> {
  try {
    const file = await (await folder.getFileHandle(photoFile(hash))).getFile();
    const bytes = await file.arrayBuffer();
    return (await sha256Hex(bytes)) === hash ? bytes : undefined;
  } catch {
    return undefined;
  }
}

async function writerFor(
  folder: FileSystemDirectoryHandle,
  startWorker: (() => Worker) | undefined,
): Promise<{ files: Files; writes: Mirror['writes'] }> {
  try {
    const worker = startWorker?.();
    if (worker) {
      const files = filesIn(worker);
      await files.able();
      return { files, writes: 'in a worker' };
    }
  } catch {
    // The browser's own writer does it, more slowly.
  }
  return { files: asyncFiles(folder), writes: 'by the browser' };
}
