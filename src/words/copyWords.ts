import { countWords, listWords } from './phrases.ts';

/**
 * How much a copy holds. @param done photos left out where there are none to speak of
 * @example copyCounts({ entries: 2, photos: 1 }) //=> '2 entries, 1 photo'
 */
export function copyCounts({ entries, photos = 0 }: { entries: number; photos?: number }, what = ''): string {
  const counts = [
    countWords(entries, 'entry', 'entries'),
    ...(photos > 0 ? [countWords(photos, 'photo')] : []),
  ];
  return `${counts.join(', ')}${what ? ` ${what}` : ''}`;
}

/** A file name with the day in it. @example copyName(Date.UTC(2026, 4, 3), 'zip') //=> 'pinchbolt-2026-05-03.zip' */
export const copyName = (atMs: number, ending: string): string =>
  `pinchbolt-${new Date(atMs).toISOString().slice(0, 10)}.${ending}`;

interface NewInCopy {
  newEntries: number;
  newPhotos: number;
  newBikes: readonly string[];
}

/** @example wouldAddWords({ newEntries: 0, newPhotos: 0, newBikes: [] }) //=> 'Nothing new in this copy' */
export function wouldAddWords({ newEntries, newPhotos, newBikes }: NewInCopy): string {
  if (newEntries + newPhotos === 0) return 'Nothing new in this copy';
  const bikes = newBikes.length > 0 ? `; new bikes: ${listWords(newBikes)}` : '';
  return `This copy adds ${copyCounts({ entries: newEntries, photos: newPhotos })}${bikes}`;
}
