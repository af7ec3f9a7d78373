import type { Entry, Id } from '../../journal/entries.ts';
import { copyName } from '../../words/copyWords.ts';
import { dayWords } from '../../words/phrases.ts';
import { type ArchiveContent, writeArchive } from '../archive/writeArchive.ts';
import type { CopyProgress, Work } from './copy.ts';

/** A folder that the person chose, as far as it is needed here. */
export interface ChosenFolder {
  name: string;
  getFileHandle(
    name: string,
    options?: { create?: boolean },
  ): Promise<{
    createWritable(): Promise<WritableStream<Uint8Array<ArrayBuffer>>>;
    getFile(): Promise<{ size: number }>;
  }>;
  removeEntry(name: string): Promise<void>;
}

/** What is kept of the folder and of the copies in it. */
export interface FolderKept {
  folder: ChosenFolder;
  /** Files in it that this logbook wrote, the newest last. */
  files: string[];
  /** When the newest was written, ms UTC. */
  atMs?: number;
  /** The last entry in it. */
  lastId?: Id;
  /** Why the last try failed; absent after one that did not. */
  failed?: string;
}

/** As many copies stay: the newest, and the one before in case the newest turns out wrong. */
const COPIES = 2;

interface Lines {
  linesAfter(seq: number): Promise<{ seq: number; entry: Entry }[]>;
  seqUnder(entryId: Id): Promise<number | undefined>;
}

/**
 * Whether a build day is over that the copy in the folder does not hold: an entry after it was written on an earlier day
 * than today.
 * @param zone in which days begin and end
 */
export async function folderIsBehind(
  { lastId }: FolderKept,
  lines: Lines,
  { nowMs, zone }: { nowMs: number; zone: string },
): Promise<boolean> {
  const seq = lastId === undefined ? undefined : await lines.seqUnder(lastId);
  const today = dayWords(nowMs, zone);
  const rest = await lines.linesAfter(seq ?? 0);
  return rest.some(
    ({ entry: { writtenAtMs } }) => writtenAtMs <= nowMs && dayWords(writtenAtMs, zone) !== today,
  );
}

/**
 * A name of today that no other file of the folder has. One that this logbook wrote today is written again, and so is an
 * empty file: it is what is left of a copy that was cut off.
 */
async function nameIn({ folder, files }: FolderKept, atMs: number): Promise<string> {
  const there = async (name: string) => {
    try {
      return (await (await folder.getFileHandle(name)).getFile()).size > 0;
    } catch {
      return false;
    }
  };
  for (let number = 1; ; number += 1) {
    const name = copyName(atMs, number === 1 ? 'zip' : `${number}.zip`);
    if (files.includes(name) || !(await there(name))) return name;
  }
}

/**
 * Writes a copy into the folder. A file takes the place of the one before only when all of it is written; the oldest of
 * its own are thrown away, unless this logbook lacks what the newest of them holds: then it is not its successor.
 * @returns what is to be kept from now on, and how much was written
 * @throws what the browser throws when the folder is gone or full, or the reason of the signal
 */
export async function copyToFolder(
  kept: FolderKept,
  content: ArchiveContent,
  lines: Lines,
  work: Work = {},
): Promise<{ kept: FolderKept; written: CopyProgress }> {
  const { folder, lastId: before } = kept;
  const follows = before === undefined || (await lines.seqUnder(before)) !== undefined;
  const files = follows ? kept.files : [];
  const name = await nameIn({ folder, files }, content.madeAtMs);
  let lastId = before;
  async function* entries() {
    for await (const batch of content.entries) {
      lastId = batch.at(-1)?.id ?? lastId;
      yield batch;
    }
  }
  const file = await folder.getFileHandle(name, { create: true });
  let written: CopyProgress;
  try {
    written = await writeArchive({ ...content, entries: entries() }, await file.createWritable(), work);
  } catch (thrown) {
    // Of a file that was begun for this nothing but its name is there.
    if (!files.includes(name)) await folder.removeEntry(name).catch(() => {});
    throw thrown;
  }
  const all = [...files.filter((one) => one !== name), name];
  for (const old of all.slice(0, -COPIES)) await folder.removeEntry(old).catch(() => {});
  return {
    kept: {
      ...{ folder, files: all.slice(-COPIES), atMs: content.madeAtMs },
      ...(lastId === undefined ? {} : { lastId }),
    },
    written,
  };
}
