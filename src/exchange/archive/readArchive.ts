import type { Photo } from '../../journal/commands.ts';
import type { Entry } from '../../journal/entries.ts';
import type { ByteSource } from '../byteSource.ts';
import type { Copy, PhotoListed, Work } from '../copy/copy.ts';
import { JournalCheck } from '../entries/journalCheck.ts';
import { refuseFile } from '../refusing.ts';
import { compile } from '../schema/conform.ts';
import { exactly, id, optional, record, type Shape, text, whole } from '../schema/shape.ts';
import { sha256 } from './digest.ts';
import { ARCHIVE, archivePaths, FORMAT, journalPath, mostBytesOf, photoPath, pictureType } from './layout.ts';
import { checkNames, listFiles, readFile, type ZipListing } from './zipIn.ts';

interface Head {
  what: typeof ARCHIVE;
  format: number;
  entryVersion: number;
  /** `schemaWords` of the app that wrote it; format 1 does not say. */
  schemaWords?: number;
  madeAtMs: number;
  entries: number;
  photos: number;
}

const MOST = 9_999_999_999_999;
const headShape: Shape<Head> = record<Head>({
  what: exactly(ARCHIVE),
  format: whole(1, FORMAT),
  entryVersion: whole(1, 10_000),
  schemaWords: optional(whole(0, 1_000_000)),
  madeAtMs: whole(0, MOST),
  entries: whole(0, MOST),
  photos: whole(0, MOST),
});
const checkHead = compile(headShape.json, { defs: {} });

const photoShape = record<PhotoListed>({
  photoId: id,
  sha256: { json: { type: 'string', pattern: '^[0-9a-f]{64}$' } },
  type: text,
  widthPx: whole(0, 100_000),
  heightPx: whole(0, 100_000),
  bytes: whole(0, 32_000_000),
});
const checkPhoto = compile(photoShape.json, { defs: {} });

/** The files of an archive, each held against its checksum whenever it is read. */
class ArchiveFiles {
  readonly listed: ReadonlyMap<string, ZipListing>;
  readonly #source: ByteSource;
  #sums: ReadonlyMap<string, string> = new Map();

  constructor(source: ByteSource, listed: ReadonlyMap<string, ZipListing>) {
    this.#source = source;
    this.listed = listed;
  }

  async readSums(): Promise<void> {
    const lines = linesOf(await this.#bytes(archivePaths.sums), archivePaths.sums);
    const sums = new Map<string, string>();
    for (const line of lines) {
      const [, sum, path] = /^([0-9a-f]{64}) {2}(\S+)$/.exec(line) ?? [];
      if (sum === undefined || path === undefined || sums.has(path)) refuseFile('damaged', archivePaths.sums);
      else sums.set(path, sum);
    }
    // A file that was taken out, and one that was put in.
    for (const path of sums.keys()) if (!this.listed.has(path)) refuseFile('damaged', `${path} is missing`);
    for (const path of this.listed.keys())
      if (path !== archivePaths.sums && !sums.has(path)) refuseFile('foreign-file', path);
    this.#sums = sums;
  }

  async #bytes(path: string): Promise<Uint8Array<ArrayBuffer>> {
    const file = this.listed.get(path) ?? refuseFile('damaged', `${path} is missing`);
    return readFile(this.#source, file);
  }

  async read(path: string): Promise<Uint8Array<ArrayBuffer>> {
    const bytes = await this.#bytes(path);
    if ((await sha256(bytes)) !== this.#sums.get(path)) refuseFile('damaged', path);
    return bytes;
  }

  /** The head, which says whether the rest can be understood; so it is read before its checksum can be. */
  async readHead(): Promise<Head> {
    const file = this.listed.get(archivePaths.head);
    if (!file) return refuseFile('not-a-copy');
    if (file.bytes > (mostBytesOf(archivePaths.head) ?? 0))
      return refuseFile('too-large', `The file ${archivePaths.head}`);
    const head = jsonOf(
      linesOf(await readFile(this.#source, file), archivePaths.head).join('\n'),
      `The file ${archivePaths.head}`,
    );
    const { what, format } = head as Partial<Head>;
    if (what !== ARCHIVE) return refuseFile('not-a-copy');
    if (typeof format === 'number' && format > FORMAT) return refuseFile('newer-format');
    return checkHead(head) === undefined ? (head as Head) : refuseFile('damaged', archivePaths.head);
  }
}

function linesOf(bytes: Uint8Array, path: string): string[] {
  let whole: string;
  try {
    whole = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return refuseFile('damaged', path);
  }
  const lines = whole.split('\n');
  if (lines.pop() !== '') return refuseFile('damaged', path);
  return lines;
}

function jsonOf(line: string, where: string): object {
  try {
    const value: unknown = JSON.parse(line);
    if (typeof value === 'object' && value !== null) return value;
  } catch {
    // Falls through to the refusal.
  }
  return refuseFile('line-not-json', where);
}

/** Names of the pieces of the journal, which are counted from one without a gap. */
function journalPieces(listed: ReadonlyMap<string, ZipListing>): string[] {
  const found = [...listed.keys()].filter((path) => path.startsWith('journal/'));
  const pieces = found.map((_, at) => journalPath(at + 1));
  for (const path of pieces) if (!listed.has(path)) refuseFile('damaged', `${path} is missing`);
  return pieces;
}

/**
 * Reads an archive through once: directory, checksums, every entry, every photo. Throws a refusal for the first
 * thing that is not as the app writes it.
 */
export async function readArchive(source: ByteSource, { signal, onProgress }: Work): Promise<Copy> {
  const files = new ArchiveFiles(source, await listFiles(source));
  const head = await files.readHead();
  checkNames(files.listed.values());
  await files.readSums();
  let bytes = 0;
  const check = new JournalCheck(head.schemaWords);
  const pieces = journalPieces(files.listed);
  let seenPhotos = 0;
  const went = (path: string) => {
    signal?.throwIfAborted();
    bytes += files.listed.get(path)?.packedBytes ?? 0;
    onProgress?.({ entries: check.count, photos: seenPhotos, bytes });
  };
  for (const path of pieces) {
    const lines = linesOf(await files.read(path), path);
    for (let at = 0; at < lines.length; at += 1) check.take(lines[at] ?? '', `Line ${at + 1} of ${path}`);
    went(path);
  }
  const astray = check.finish();
  const photos = readPhotoList(await files.read(archivePaths.photos));
  const pictures = new Set(photos.map(({ sha256: sum, type }) => photoPath(sum, type)));
  for (const { sha256: sum, type, bytes: size } of photos)
    if (files.listed.get(photoPath(sum, type))?.bytes !== size) refuseFile('damaged', archivePaths.photos);
  for (const path of files.listed.keys()) {
    if (path === archivePaths.sums || path.startsWith('journal/')) continue;
    if (path.startsWith('photos/')) {
      // Named after its own bytes: the checksum of the list must say the same.
      const sum = await sha256(await files.read(path));
      if (!pictures.has(path) || !path.includes(sum)) refuseFile('foreign-file', path);
      seenPhotos += 1;
    } else await files.read(path);
    went(path);
  }
  if (check.count !== head.entries || photos.length !== head.photos) refuseFile('damaged', archivePaths.head);
  return {
    madeAtMs: head.madeAtMs,
    entries: check.count,
    photos,
    astray,
    readEntries: () => entriesOf(files, pieces),
    readPhotos: () => photoMembers(files, photos),
  };
}

function readPhotoList(bytes: Uint8Array): PhotoListed[] {
  const seen = new Set<string>();
  return linesOf(bytes, archivePaths.photos).map((line, at) => {
    const where = `Line ${at + 1} of ${archivePaths.photos}`;
    const photo = jsonOf(line, where) as PhotoListed;
    if (checkPhoto(photo) !== undefined || pictureType(photo.type) !== photo.type || seen.has(photo.photoId))
      return refuseFile('entry-wrong', where);
    seen.add(photo.photoId);
    return photo;
  });
}

/** Once more, now to be taken in: the same bytes as before, or the checksum would refuse them. */
async function* entriesOf(files: ArchiveFiles, pieces: readonly string[]): AsyncGenerator<Entry[]> {
  for (const path of pieces)
    yield linesOf(await files.read(path), path).map((line) => JSON.parse(line) as Entry);
}

async function* photoMembers(files: ArchiveFiles, photos: readonly PhotoListed[]): AsyncGenerator<Photo> {
  for (const { photoId, sha256: sum, type, widthPx, heightPx } of photos) {
    const bytes = await files.read(photoPath(sum, type));
    yield { photoId, buf: bytes.buffer, type, widthPx, heightPx };
  }
}
