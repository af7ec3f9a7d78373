import type { SheetLine } from '../../documents/sheetLine.ts';
import type { Photo } from '../../journal/commands.ts';
import { ENTRY_VERSION, type Entry } from '../../journal/entries.ts';
import { type ByteSink, sinkOf } from '../byteSink.ts';
import type { CopyProgress, PhotoListed, Work } from '../copy/copy.ts';
import { documentPage } from '../documentPage.ts';
import { entrySchema, schemaWords } from '../schema/entrySchema.ts';
import { lockedSink } from '../seal/lock.ts';
import {
  ARCHIVE,
  archivePaths,
  FORMAT,
  journalPath,
  photoPath,
  pictureType,
  readme,
  sheetPath,
} from './layout.ts';
import { piecesOf } from './piecesOf.ts';
import { ZipOut } from './zipOut.ts';

/** What goes into an archive, as it comes: nothing of it is ever held whole. */
export interface ArchiveContent {
  /** Entries as they are stored, in the order of the journal, in batches of any size. */
  entries: AsyncIterable<readonly Entry[]>;
  photos: AsyncIterable<Photo>;
  /** The build sheet of each bike. */
  sheets: AsyncIterable<{ bikeName: string; lines: readonly SheetLine[] }>;
  madeAtMs: number;
}

export interface WriteOptions extends Work {
  /** Locks the archive; empty or absent leaves it open to be read by every holder of the file. */
  passphrase?: string | undefined;
}

const text = new TextEncoder();

/**
 * Writes a logbook as one file, piece by piece: a ZIP that can be read without the app, or that ZIP locked.
 * @param stream takes the bytes, and slows the writing down where it cannot keep up; aborted when the work fails
 * @returns how much was written
 * @throws the reason of the signal when it is aborted; RangeError when no archive can hold so much
 * @example writeArchive({ entries, photos, sheets, madeAtMs }, stream) //=> Promise of { entries: 3, photos: 1, bytes: 9000 }
 */
export async function writeArchive(
  content: ArchiveContent,
  stream: WritableStream<Uint8Array<ArrayBuffer>>,
  options: WriteOptions = {},
): Promise<CopyProgress> {
  const bare = sinkOf(stream);
  try {
    const sink = options.passphrase ? await lockedSink(bare, options.passphrase) : bare;
    const written = await writeZip(content, sink, options);
    await sink.close();
    return written;
  } catch (thrown) {
    // A stream that failed by itself cannot be aborted any more.
    await bare.abort(thrown).catch(() => {});
    throw thrown;
  }
}

async function writeZip(
  content: ArchiveContent,
  sink: ByteSink,
  { signal, onProgress }: Work,
): Promise<CopyProgress> {
  const { madeAtMs } = content;
  const zip = new ZipOut(sink, madeAtMs);
  let entries = 0;
  const listed: PhotoListed[] = [];
  const now = (): CopyProgress => ({ entries, photos: listed.length, bytes: zip.bytes });
  const went = () => {
    signal?.throwIfAborted();
    onProgress?.(now());
  };
  const addText = async (path: string, whole: string) => {
    await zip.addText(path, text.encode(whole));
    went();
  };
  went();
  await addText(archivePaths.readme, readme);
  await addText(archivePaths.schema, `${JSON.stringify(entrySchema(), null, 1)}\n`);
  let piece = 0;
  for await (const { lines, count } of piecesOf(content.entries)) {
    entries += count;
    piece += 1;
    await addText(journalPath(piece), lines);
  }
  for await (const photo of content.photos) {
    listed.push(await addPhoto(zip, photo));
    went();
  }
  await addText(archivePaths.photos, listed.map((photo) => `${JSON.stringify(photo)}\n`).join(''));
  let sheet = 0;
  for await (const { bikeName, lines } of content.sheets) {
    sheet += 1;
    await addText(sheetPath(sheet, bikeName), documentPage(lines));
  }
  const versions = { format: FORMAT, entryVersion: ENTRY_VERSION, schemaWords: schemaWords() };
  const head = { what: ARCHIVE, ...versions, madeAtMs, entries, photos: listed.length };
  await addText(archivePaths.head, `${JSON.stringify(head, null, 1)}\n`);
  await zip.end();
  went();
  return now();
}

async function addPhoto(zip: ZipOut, photo: Photo): Promise<PhotoListed> {
  const { photoId, buf, widthPx, heightPx } = photo;
  const bytes = new Uint8Array(buf);
  const type = pictureType(photo.type);
  const sum = await zip.addPicture(bytes, (digest) => photoPath(digest, type));
  return { photoId, sha256: sum, type, widthPx, heightPx, bytes: bytes.length };
}
