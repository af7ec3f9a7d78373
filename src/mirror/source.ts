import type { Photo } from '../journal/commands.ts';
import type { Entry, Id } from '../journal/entries.ts';

/** The logbook that the mirror is a copy of. */
export interface Source {
  /** Lines of the journal after a number, in order, a batch at a time; none at the end. */
  linesAfter(seq: number): Promise<{ seq: number; entry: Entry }[]>;
  /** Under which number an entry stands. */
  seqUnder(entryId: Id): Promise<number | undefined>;
  /** How many entries there are, those up to a number where one is given, and how many photos. */
  counts(upToSeq?: number): Promise<{ entries: number; photos: number }>;
  photoIds(): Promise<Id[]>;
  photoUnder(photoId: Id): Promise<Photo | undefined>;
  keepPhoto(photo: Photo): Promise<void>;
  /** Puts back entries and photos that no longer say what they said; `renumbered` were taken in again just before. */
  mend(mending: { entries: readonly Entry[]; photos: readonly Photo[]; renumbered: number }): Promise<void>;
  takeIn(entries: readonly Entry[], onProgress: (share: number) => void): Promise<number>;
  /** Fills a new store with these where the old one cannot be used; false when it can: then nothing was deleted. */
  beginAnew(
    filling: { entries: readonly Entry[]; photos: AsyncIterable<Photo> },
    onProgress: (share: number) => void,
  ): Promise<boolean>;
}

/** The photos that an entry names. */
export const photosNamed = (entry: Entry): Id[] => (entry as { photoIds?: Id[] }).photoIds ?? [];

/** Every line of the journal after a number, a batch at a time. */
export async function* journalBatches(source: Source, fromSeq = 0) {
  for (let seq = fromSeq; ; ) {
    const lines = await source.linesAfter(seq);
    const last = lines.at(-1);
    if (!last) return;
    yield lines;
    seq = last.seq;
  }
}
