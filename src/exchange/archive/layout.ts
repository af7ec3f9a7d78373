/**
 * Version of how a copy is laid out. Raise it together with a way to read the one before, and a fixture. What no version
 * may change is what tells an older app that it has to be updated: a ZIP without the larger form, and in it
 * `archive.json` with `what` and `format`.
 * 1 to 2: entries may carry the name of the phone, and the head says how much the schema of the entries knows.
 */
export const FORMAT = 2;

export const ARCHIVE = 'Pinchbolt archive';

/** Names of the files inside an archive. */
export const archivePaths = {
  head: 'archive.json',
  sums: 'checksums.sha256',
  readme: 'README.txt',
  schema: 'entry.schema.json',
  photos: 'photos.jsonl',
} as const;

export const journalPath = (number: number): string => `journal/${String(number).padStart(5, '0')}.jsonl`;

const endings: Record<string, string> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
  'image/gif': 'gif',
  'image/avif': 'avif',
};

/** The kind of a picture as it is written down: pictures made of dots keep theirs, anything else is mere bytes. */
export const pictureType = (type: string): string =>
  Object.hasOwn(endings, type) ? type : 'application/octet-stream';

export const photoPath = (sha256: string, type: string): string =>
  `photos/${sha256}.${endings[pictureType(type)] ?? 'bin'}`;

/** A bike's name as the name of a file, safe on every file system. @example fileWord('Ferry!') //=> 'ferry' */
export function fileWord(bikeName: string): string {
  const words = bikeName
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .slice(0, 40)
    .replaceAll(/^-+|-+$/g, '');
  return words || 'bike';
}

/** @example sheetPath(1, 'Ferry!') //=> 'sheets/01-ferry.html' */
export const sheetPath = (number: number, bikeName: string): string =>
  `sheets/${String(number).padStart(2, '0')}-${fileWord(bikeName)}.html`;

/** Every name a file of an archive may have, and the most bytes it may unpack to. */
const allowed: readonly [RegExp, mostBytes: number][] = [
  [/^archive\.json$/, 100_000],
  [/^checksums\.sha256$/, 32_000_000],
  [/^README\.txt$/, 100_000],
  [/^entry\.schema\.json$/, 4_000_000],
  [/^photos\.jsonl$/, 32_000_000],
  [/^journal\/\d{5}\.jsonl$/, 32_000_000],
  [/^photos\/[0-9a-f]{64}\.(jpg|png|webp|gif|avif|bin)$/, 32_000_000],
  [/^sheets\/\d{2,4}-[a-z0-9-]{1,40}\.html$/, 32_000_000],
];

/** The most bytes a file of this name may unpack to; undefined for a name that is none of an archive's. */
export const mostBytesOf = (path: string): number | undefined =>
  allowed.find(([name]) => name.test(path))?.[1];

/** A piece of the journal is closed when it has grown to this many characters, or to this many lines. */
export const PIECE_CHARS = 1_000_000;
export const PIECE_LINES = 5000;

/** The longest line, characters; a note of a million signs fits in it. */
export const LINE_CHARS = 8_000_000;

/** More files than this would need the larger form of a ZIP, which not every phone opens. */
export const MOST_FILES = 60_000;
/** A ZIP without the larger form ends at 4 GiB. */
export const MOST_ARCHIVE_BYTES = 4_000_000_000;
/** Unpacked bytes a packed one may stand for, all files together, over what a small logbook may have by chance. */
export const MOST_RATIO = 200;
export const RATIO_SLACK_BYTES = 32_000_000;

/** What stands in README.txt. */
export const readme = `This is a copy of a Pinchbolt logbook. It can be read without the app.

journal/*.jsonl     every entry, oldest first, one JSON object a line (JSON Lines, UTF-8)
entry.schema.json   JSON Schema 2020-12 of such a line
photos/             photos, named after the SHA-256 of their bytes
photos.jsonl        which photo of the journal is which file
sheets/             the build sheet of each bike, to be opened in any browser
checksums.sha256    check all files with: sha256sum -c checksums.sha256
archive.json        the version of this layout, when the copy was made, how much is in it

An entry is never changed. What a later entry of the type entry-corrected says counts instead.
To restore: open the app, Settings, Restore from a copy, and choose the whole file.
`;
