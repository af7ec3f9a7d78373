import type { Photo } from '../journal/commands.ts';
import type { Entry, Id } from '../journal/entries.ts';
import { cachePlace } from './cachePlace.ts';
import { type MirrorPlace, placeInFiles } from './files.ts';
import { readLines } from './lines.ts';
import { type Content, JOURNAL, type MirroredPhoto, photoBytes } from './mirror.ts';
import { MIRROR } from './trace.ts';

/** What a second copy holds, as it lies there. */
export interface CopyLeft {
  entries: Entry[];
  photos: MirroredPhoto[];
  /** Lines that could not be read. */
  unreadable: number;
  /** The photo with its bytes; undefined when they are not there as they were. */
  photo(one: MirroredPhoto): Promise<Photo | undefined>;
}

/** More than the beginning of a mirror and one level; an entry alone is longer. */
const BEGUN_BYTES = 250;

const readOnly = () => Promise.reject(new Error('it is only read here'));

/** Where a second copy may lie, those places that are there. Makes none. */
async function placesThere(top?: FileSystemDirectoryHandle, storage?: CacheStorage): Promise<MirrorPlace[]> {
  const places = await Promise.all(
    [
      top
        ?.getDirectoryHandle(MIRROR)
        .then((folder) => placeInFiles(folder, { append: readOnly, write: readOnly })),
      storage?.has(MIRROR).then((there) => (there ? cachePlace(storage) : undefined)),
    ].map((place) => place?.catch(() => undefined)),
  );
  return places.filter((place) => place !== undefined);
}

const journalsOf = async (place: MirrorPlace) => {
  const names = (await place.names()).filter((one) => JOURNAL.test(one)).sort();
  return (await Promise.all(names.map((name) => place.whole(name)))).filter((whole) => whole !== undefined);
};

/**
 * Whether a second copy is left, wherever it lies. Makes none, and reads no more than sizes.
 * @param top the browser's private files, where it has any
 * @param storage its cache storage, likewise
 */
export async function linesLeft(
  top: FileSystemDirectoryHandle | undefined,
  storage: CacheStorage | undefined,
): Promise<boolean> {
  const places = await placesThere(top, storage);
  const journals = (await Promise.all(places.map(journalsOf))).flat();
  return journals.some(({ size }) => size > BEGUN_BYTES);
}

/**
 * Reads what is left of the second copy, wherever it lies, without the app and without writing anything: every line of
 * every file that is as it was written, each entry once. For the rescue page, which no store and no other page may hold up.
 * @param top the browser's private files, where it has any
 * @param storage its cache storage, likewise
 * @returns undefined where no entry is left
 * @example copyLeft(await navigator.storage.getDirectory(), caches) //=> Promise of { entries, photos, unreadable, photo }
 */
export async function copyLeft(
  top: FileSystemDirectoryHandle | undefined,
  storage: CacheStorage | undefined,
): Promise<CopyLeft | undefined> {
  const places = await placesThere(top, storage);
  const entries = new Map<Id, Entry>();
  const photos = new Map<Id, MirroredPhoto>();
  let unreadable = 0;
  for (const place of places) {
    // What can be read is read: this is for the day on which something is broken.
    for (const whole of await journalsOf(place).catch(() => [])) {
      const read = await readLines(whole.stream(), (line) => {
        const content = line as Content;
        if ('entry' in content) entries.set(content.entry.id, content.entry);
        else if ('photo' in content) photos.set(content.photo.photoId, content.photo);
      }).catch(() => ({ unreadable: 1 }));
      unreadable += read.unreadable;
    }
  }
  if (entries.size === 0) return undefined;
  return {
    ...{ entries: [...entries.values()], photos: [...photos.values()], unreadable },
    async photo({ hash, ...one }) {
      for (const place of places) {
        const buf = await photoBytes(place, hash);
        if (buf) return { ...one, buf };
      }
      return undefined;
    },
  };
}
