import type { Photo } from '../journal/commands.ts';
import type { Entry, Id } from '../journal/entries.ts';
import { cachePlace } from './cachePlace.ts';
import { asyncFiles, type Files, joined, type MirrorPlace, mirrorFolder, placeInFiles } from './files.ts';
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
}

export type Turns = <T>(work: () => Promise<T>) => Promise<T>;

const LOCK = 'pinchbolt-mirror';
/** The file of lines by the number of its making; the highest whole one counts. */
export const JOURNAL = /^journal-(\d+)$/;
const PHOTO = 'photo-';
/** Longer than a line that tells the level. */
const TAIL_BYTES = 1024;
const LINE_END = 0x0a;

const turnsOfBrowser: Turns = (work) => navigator.locks.request(LOCK, work) as ReturnType<typeof work>;

export interface MirrorOptions {
  /** Starts `worker.ts` as a dedicated worker; without it, or where it cannot write, the browser's own writer is used. */
  startWorker?: () => Worker;
  /** Where it lies; the browser's private files unless given. */
  folder?: FileSystemDirectoryHandle;
  /** Where it lies when there are no private files; the browser's cache storage unless given. */
  caches?: CacheStorage;
  /** Lets one piece of work through at a time; over all pages unless given. */
  turns?: Turns;
}

/**
 * Opens the mirror: in private files, else in the cache storage.
 * @returns undefined where the browser has neither: then there is no second copy
 */
export async function openMirror(options: MirrorOptions = {}): Promise<Mirror | undefined> {
  const folder = options.folder ?? (await mirrorFolder());
  const place = folder
    ? placeInFiles(folder, await writerFor(folder, options.startWorker))
    : await cachePlace(options.caches ?? globalThis.caches);
  if (!place) return undefined;
  const turns = options.turns ?? turnsOfBrowser;
  let known = 0;
  return {
    alone: (work) =>
      turns(async () => {
        known = (await place.has(journalName(known))) ? known : await currentFile(place);
        const held = holdMirror(place, known, (next) => {
          known = next;
        });
        return work(held);
      }),
  };
}

const journalName = (number: number) => `journal-${number}`;

/** The number of the file that counts: the newest whole one; where none is whole, the one that holds most. */
async function currentFile(place: MirrorPlace): Promise<number> {
  const numbers = (await place.names()).flatMap((name) => {
    const number = JOURNAL.exec(name)?.[1];
    return number === undefined ? [] : [Number(number)];
  });
  numbers.sort((a, b) => b - a);
  if (numbers.length === 1) return numbers[0] as number;
  let most = { number: 0, lines: -1 };
  for (const number of numbers) {
    let begins = Number.POSITIVE_INFINITY;
    let lines = 0;
    await readLines(((await place.whole(journalName(number))) ?? new Blob([])).stream(), (read) => {
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
    await place.write(journalName(1), lineOf({ begins: 0 } satisfies Beginning));
    return 1;
  }
  for (const number of numbers) if (number !== most.number) await place.remove(journalName(number));
  return most.number;
}

function holdMirror(place: MirrorPlace, first: number, onMoved: (number: number) => void): HeldMirror {
  let number = first;
  const put = (to: number, contents: readonly Content[]) =>
    place.append(journalName(to), joined(contents.map(lineOf)));
  return {
    async level() {
      const tail = await place.tail(journalName(number), TAIL_BYTES);
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
      const whole = (await place.whole(journalName(number))) ?? new Blob([]);
      const { unreadable } = await readLines(whole.stream(), (content, sum) =>
        visit(content as Content, sum),
      );
      return unreadable;
    },
    async keepPhoto({ buf, photoId, type, widthPx, heightPx }) {
      const hash = await sha256Hex(buf);
      const known = (await photoBytes(place, hash)) !== undefined;
      if (!known) await place.write(`${PHOTO}${hash}`, new Uint8Array(buf));
      return { photo: { photoId, type, widthPx, heightPx, hash }, known };
    },
    readPhoto: (hash) => photoBytes(place, hash),
    async startOver(count, batches) {
      const old = number;
      const next = number + 1;
      const named = new Set<string>();
      // Without its beginning, or with fewer lines than that says, the file does not count yet.
      await place.write(journalName(next), lineOf({ begins: count } satisfies Beginning));
      for await (const batch of batches) {
        for (const content of batch) if ('photo' in content) named.add(`${PHOTO}${content.photo.hash}`);
        await put(next, batch);
      }
      number = next;
      onMoved(next);
      await place.remove(journalName(old));
      for (const name of await place.names())
        if (name.startsWith(PHOTO) && !named.has(name)) await place.remove(name);
    },
  };
}

/** SHA-256 of bytes in hexadecimal digits. */
export async function sha256Hex(bytes: ArrayBuffer): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...hash].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

export async function photoBytes(place: MirrorPlace, hash: string): Promise<ArrayBuffer | undefined> {
  try {
    const bytes = await (await place.whole(`${PHOTO}${hash}`))?.arrayBuffer();
    return bytes && (await sha256Hex(bytes)) === hash ? bytes : undefined;
  } catch {
    return undefined;
  }
}

/** A worker flushes by itself; the browser's own writer copies the file each time. */
async function writerFor(
  folder: FileSystemDirectoryHandle,
  startWorker: (() => Worker) | undefined,
): Promise<Files> {
  try {
    const worker = startWorker?.();
    if (worker) {
      const files = filesIn(worker);
      await files.able();
      return files;
    }
  } catch {
    // The browser's own writer does it, more slowly.
  }
  return asyncFiles(folder);
}
