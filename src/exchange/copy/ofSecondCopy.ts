import type { Photo } from '../../journal/commands.ts';
import type { Entry } from '../../journal/entries.ts';
import type { ArchiveContent } from '../archive/writeArchive.ts';

interface ReadOut<Listed> {
  entries: readonly Entry[];
  photos: readonly Listed[];
  photo(one: Listed): Promise<Photo | undefined>;
}

/**
 * What the second copy holds, to be written as an archive where the store itself cannot be read: every entry, and each
 * photo whose bytes are as they were. Build sheets are not in it, since they are made from the rows.
 * @param madeAtMs clock, ms UTC
 * @example writeArchive(ofSecondCopy(held, nowMs), stream) //=> Promise of { entries: 3, photos: 1, bytes: 9000 }
 */
export function ofSecondCopy<Listed>(held: ReadOut<Listed>, madeAtMs: number): ArchiveContent {
  async function* photos() {
    for (const one of held.photos) {
      const photo = await held.photo(one);
      if (photo) yield photo;
    }
  }
  return {
    entries: (async function* () {
      if (held.entries.length > 0) yield held.entries;
    })(),
    photos: photos(),
    sheets: (async function* () {})(),
    madeAtMs,
  };
}
