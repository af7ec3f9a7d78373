import type { Photo } from '../journal/commands.ts';
import type { Entry, Id } from '../journal/entries.ts';
import { asyncFiles, type Files, mirrorFolder } from './files.ts';
import { filesIn } from './inWorker.ts';
import { contentOf, lineOf, readLines } from './lines.ts';

export interface MirroredPhoto {
  photoId: Id;
  type: string;
  widthPx: number;
  heightPx: number;
  /** SHA-256 of its bytes in hexadecimal digits; the file goes by it. */
  hash: string;
}

/** How far the mirror has come: it holds every line of the journal up to this one. */
export interface Level {
  /** The last line of the journal that lies in the mirror, with all before it; absent while there is none. */
  upTo?: Id;
  /** Entries and photos of the mirror, each counted once. */
  entries: number;
  photos: number;
  /** When it was written, ms UTC. */
  atMs: number;
}

/** The first line of a file: a file made anew counts once it holds as many lines as it began with. */
interface Beginning {
  begins: number;
}

/** What a line of the file holds. */
export type Content = { entry: Entry } | { photo: MirroredPhoto } | { level: Level } | Beginning;

/** The mirror while one owner holds it; nothing of it may be used after that. */
export interface HeldMirror {
  /** What the last line says; undefined where that line says nothing: writing was cut short, or nothing was written yet. */
  level(): Promise<Level | undefined>;
  /** Adds lines at the end; resolves when they are flushed. Rejects when they could not be written. */
  add(contents: readonly Content[]): Promise<void>;
  /** Reads every line, in the order of writing. @returns how many are torn or bent */
  read(visit: (content: Content, sum: number) => void): Promise<number>;
  /** The entries under these ids, in the order they were written. */
  entriesUnder(ids: Iterable<Id>): Promise<Entry[]>;
  /** Writes the bytes of a photo, once for the same bytes. @returns its line, and whether the bytes were there before */
  keepPhoto(photo: Photo): Promise<{ photo: MirroredPhoto; known: boolean }>;
  /** The bytes of a photo; undefined when they are not there as they were. */
  readPhoto(hash: string): Promise<ArrayBuffer | undefined>;
  /**
   * Begins anew with these lines alone. Until all are flushed the old file counts; afterwards photos that no line
   * names are thrown away.
   * @param count how many lines come
   */
  startOver(count: number, batches: AsyncIterable<readonly Content[]>): Promise<void>;
}

/** A second copy of the journal outside IndexedDB. */
export interface Mirror {
  /** Holds the mirror for one piece of work; all pages of the app take turns. */
  alone<T>(work: (held: HeldMirror) => Promise<T>): Promise<T>;
  /** How it is written; a worker flushes by itself, the browser's own writer copies the file each time. */
  writes: 'in a worker' | 'by the browser';
}

export type Turns = <T>(work: () => Promise<T>) => Promise<T>;

const LOCK = 'pinchbolt-mirror';
/** The file of lines by the number of its making; the highest whole one counts. */
const JOURNAL = /^journal-(\d+)$/;
const PHOTO = 'photo-';
/** Longer than a line that tells the level. */
const TAIL_BYTES = 1024;
const LINE_END = 0x0a;

const turnsOfBrowser: Turns = (work) => navigator.locks.request(LOCK, work) as ReturnType<typeof work>;

/**
 * Opens the mirror.
 * @param options.startWorker starts `worker.ts` as a dedicated worker; without it, or where it cannot write, the
 *   browser's own writer is used
 * @param options.folder where it lies; the browser's private files unless given
 * @param options.turns lets one piece of work through at a time; over all pages unless given
 * @returns undefined where the browser has no private files: then there is no second copy
 */
export async function openMirror(
  options: { startWorker?: () => Worker; folder?: FileSystemDirectoryHandle; turns?: Turns } = {},
): Promise<Mirror | undefined> {
  const folder = options.folder ?? (await mirrorFolder());
  if (!folder) return undefined;
  const { files, writes } = await writerFor(folder, options.startWorker);
  const turns = options.turns ?? turnsOfBrowser;
  let known = 0;
  return {
    writes,
    alone: (work) =>
      turns(async () => {
        known = (await fileOf(folder, known)) ? known : await currentFile(folder, files);
        const held = holdMirror(folder, files, known, (next) => {
          known = next;
        });
        return work(held);
      }),
  };
}

const journalName = (number: number) => `journal-${number}`;

async function fileOf(folder: FileSystemDirectoryHandle, number: number): Promise<File | undefined> {
  try {
    return await (await folder.getFileHandle(journalName(number))).getFile();
  } catch {
    return undefined;
  }
}

async function namesIn(folder: FileSystemDirectoryHandle): Promise<string[]> {
  const names: string[] = [];
  for await (const name of (folder as unknown as { keys(): AsyncIterable<string> }).keys()) names.push(name);
  return names;
}

/** The number of the file that counts: the newest whole one; where none is whole, the one that holds most. */
async function currentFile(folder: FileSystemDirectoryHandle, files: Files): Promise<number> {
  const numbers = (await namesIn(folder)).flatMap((name) => {
    const number = JOURNAL.exec(name)?.[1];
    return number === undefined ? [] : [Number(number)];
  });
  numbers.sort((a, b) => b - a);
  if (numbers.length === 1) return numbers[0] as number;
  let most = { number: 0, lines: -1 };
  for (const number of numbers) {
    let begins = Number.POSITIVE_INFINITY;
    let lines = 0;
    await readLines((await fileOf(folder, number))?.stream() ?? new Blob([]).stream(), (read) => {
      const content = read as Content;
      if ('begins' in content) begins = content.begins;
      else if (!('level' in content)) lines += 1;
    });
    if (lines >= begins) {
      most = { number, lines };
      break;
    }
    if (lines > most.lines) most = { number, lines };
  }
  if (most.number === 0) {
    await files.write(journalName(1), lineOf({ begins: 0 } satisfies Beginning));
    return 1;
  }
  for (const number of numbers) if (number !== most.number) await folder.removeEntry(journalName(number));
  return most.number;
}

function holdMirror(
  folder: FileSystemDirectoryHandle,
  files: Files,
  first: number,
  onMoved: (number: number) => void,
): HeldMirror {
  let number = first;
  const file = async () => (await folder.getFileHandle(journalName(number))).getFile();
  const put = (to: number, contents: readonly Content[]) =>
    files.append(journalName(to), joined(contents.map(lineOf)));
  return {
    async level() {
      const whole = await file();
      const tail = new Uint8Array(await whole.slice(Math.max(0, whole.size - TAIL_BYTES)).arrayBuffer());
      if (tail.at(-1) !== LINE_END) return undefined;
      const line = tail.subarray(tail.lastIndexOf(LINE_END, tail.length - 2) + 1, -1);
      const content = contentOf(line) as Content | undefined;
      return content && 'level' in content ? content.level : undefined;
    },
    add: (contents) => put(number, contents),
    async entriesUnder(ids) {
      const sought = new Set(ids);
      const found = new Map<Id, Entry>();
      if (sought.size > 0)
        await this.read((content) => {
          if ('entry' in content && sought.has(content.entry.id)) found.set(content.entry.id, content.entry);
        });
      return [...found.values()];
    },
    async read(visit) {
      const { unreadable } = await readLines((await file()).stream(), (content, sum) =>
        visit(content as Content, sum),
      );
      return unreadable;
    },
    async keepPhoto({ buf, photoId, type, widthPx, heightPx }) {
      const hash = await sha256Hex(buf);
      const known = (await photoBytes(folder, hash)) !== undefined;
      if (!known) await files.write(`${PHOTO}${hash}`, new Uint8Array(buf));
      return { photo: { photoId, type, widthPx, heightPx, hash }, known };
    },
    readPhoto: (hash) => photoBytes(folder, hash),
    async startOver(count, batches) {
      const old = number;
      const next = number + 1;
      const named = new Set<string>();
      // Without its beginning, or with fewer lines than that says, the file does not count yet.
      await files.write(journalName(next), lineOf({ begins: count } satisfies Beginning));
      for await (const batch of batches) {
        for (const content of batch) if ('photo' in content) named.add(`${PHOTO}${content.photo.hash}`);
        await put(next, batch);
      }
      number = next;
      onMoved(next);
      await folder.removeEntry(journalName(old));
      for (const name of await namesIn(folder))
        if (name.startsWith(PHOTO) && !named.has(name)) await folder.removeEntry(name);
    },
  };
}

/** SHA-256 of bytes in hexadecimal digits. */
export async function sha256Hex(bytes: ArrayBuffer): Promise<string> {
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

async function photoBytes(folder: FileSystemDirectoryHandle, hash: string): Promise<ArrayBuffer | undefined> {
  try {
    const file = await (await folder.getFileHandle(`${PHOTO}${hash}`)).getFile();
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
