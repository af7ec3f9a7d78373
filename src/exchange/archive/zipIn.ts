import type { ByteSource } from '../byteSource.ts';
import { refuseFile } from '../refusing.ts';
import { inflate } from './deflate.ts';
import { MOST_FILES, MOST_RATIO, mostBytesOf, RATIO_SLACK_BYTES } from './layout.ts';

/** A file as the directory at the end of a ZIP lists it. */
export interface ZipListing {
  path: string;
  packed: boolean;
  packedBytes: number;
  bytes: number;
  /** Where its own header begins. */
  at: number;
}

// Lengths and signatures of APPNOTE.TXT 6.3.10, sections 4.3.7, 4.3.9, 4.3.12 and 4.3.16.
const END_BYTES = 22;
const LISTED_BYTES = 46;
const HEADER_BYTES = 30;
const TRAILER_BYTES = 16;
/** Longer than any name of an archive. */
const LONGEST_NAME = 200;
const END = 0x06054b50;
const LISTED = 0x02014b50;
const HEADER = 0x04034b50;
const TRAILER = 0x08074b50;
const STORED = 0;
const DEFLATED = 8;
/** Sizes follow the file: the only flag the writer of an archive sets. */
const SIZES_FOLLOW = 0x0008;

const viewOf = (bytes: Uint8Array): DataView =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

const nameOf = (bytes: Uint8Array): string => String.fromCharCode(...bytes);

/**
 * The directory of an archive, as strictly as the app writes one: files follow each other without a gap, from the
 * first byte to the directory, so that no two share bytes and nothing hides between them.
 */
export async function listFiles(source: ByteSource): Promise<Map<string, ZipListing>> {
  if (source.size < END_BYTES) return refuseFile('cut-short');
  const end = viewOf(await source.read(source.size - END_BYTES, source.size));
  if (end.getUint32(0, true) !== END || end.getUint16(20, true) !== 0) return refuseFile('cut-short');
  const count = end.getUint16(10, true);
  const length = end.getUint32(12, true);
  const start = end.getUint32(16, true);
  if (start + length + END_BYTES !== source.size || end.getUint16(8, true) !== count)
    return refuseFile('damaged', 'its directory');
  if (count > MOST_FILES + 1) return refuseFile('too-large', 'The number of files');
  const directory = await source.read(start, start + length);
  const files = readDirectory(directory, count);
  checkGapless(files, start);
  checkRatio(files, source.size);
  return new Map(files.map((file) => [file.path, file]));
}

function readDirectory(directory: Uint8Array, count: number): ZipListing[] {
  const view = viewOf(directory);
  const files: ZipListing[] = [];
  let at = 0;
  for (let number = 0; number < count; number += 1) {
    if (at + LISTED_BYTES > directory.length || view.getUint32(at, true) !== LISTED)
      return refuseFile('damaged', 'its directory');
    const flags = view.getUint16(at + 8, true);
    const method = view.getUint16(at + 10, true);
    const nameBytes = view.getUint16(at + 28, true);
    // Extra fields, comments and other disks: an archive has none.
    const others = view.getUint32(at + 30, true) + view.getUint16(at + 34, true);
    const known = flags === SIZES_FOLLOW && (method === STORED || method === DEFLATED);
    if (!known || others !== 0 || nameBytes > LONGEST_NAME) return refuseFile('damaged', 'its directory');
    files.push({
      path: nameOf(directory.subarray(at + LISTED_BYTES, at + LISTED_BYTES + nameBytes)),
      packed: method === DEFLATED,
      packedBytes: view.getUint32(at + 20, true),
      bytes: view.getUint32(at + 24, true),
      at: view.getUint32(at + 42, true),
    });
    at += LISTED_BYTES + nameBytes;
  }
  return at === directory.length ? files : refuseFile('damaged', 'its directory');
}

function checkGapless(files: readonly ZipListing[], directoryAt: number): void {
  const seen = new Set<string>();
  let at = 0;
  for (const file of files) {
    if (file.at !== at || seen.has(file.path)) refuseFile('damaged', 'its directory');
    if (!file.packed && file.bytes !== file.packedBytes) refuseFile('damaged', 'its directory');
    seen.add(file.path);
    at += HEADER_BYTES + file.path.length + file.packedBytes + TRAILER_BYTES;
  }
  if (at !== directoryAt) refuseFile('damaged', 'its directory');
}

function checkRatio(files: readonly ZipListing[], archiveBytes: number): void {
  const bytes = files.reduce((sum, file) => sum + file.bytes, 0);
  if (bytes > archiveBytes * MOST_RATIO + RATIO_SLACK_BYTES) refuseFile('too-large', 'The unpacked copy');
}

/** Refuses names that are none of an archive's: paths out of it, foreign files, files larger than their kind. */
export function checkNames(files: Iterable<ZipListing>): void {
  for (const { path, bytes } of files) {
    const most = mostBytesOf(path);
    if (most === undefined) refuseFile('foreign-file', printable(path));
    else if (bytes > most) refuseFile('too-large', `The file ${path}`);
  }
}

/** A name that came from outside, cut to what a sentence can hold. */
const printable = (name: string): string =>
  name.replaceAll(/[^\x20-\x7e]/g, '?').slice(0, 60) || 'without a name';

/** One file, unpacked. What its own header says must be what the directory says. */
export async function readFile(source: ByteSource, file: ZipListing): Promise<Uint8Array<ArrayBuffer>> {
  const { path, packed, packedBytes, bytes, at } = file;
  const begins = HEADER_BYTES + path.length;
  const whole = await source.read(at, at + begins + packedBytes + TRAILER_BYTES);
  if (whole.length !== begins + packedBytes + TRAILER_BYTES) return refuseFile('cut-short');
  const view = viewOf(whole);
  const agrees =
    view.getUint32(0, true) === HEADER &&
    view.getUint16(6, true) === SIZES_FOLLOW &&
    view.getUint16(8, true) === (packed ? DEFLATED : STORED) &&
    view.getUint16(26, true) === path.length &&
    view.getUint16(28, true) === 0 &&
    nameOf(whole.subarray(HEADER_BYTES, begins)) === path &&
    view.getUint32(begins + packedBytes, true) === TRAILER &&
    view.getUint32(begins + packedBytes + 8, true) === packedBytes &&
    view.getUint32(begins + packedBytes + 12, true) === bytes;
  if (!agrees) return refuseFile('damaged', path);
  const data = whole.subarray(begins, begins + packedBytes);
  return packed ? inflate(data, bytes, path) : data.slice();
}
