import { whenText } from './dayText.ts';
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

const DAY_MS = 86_400_000;

/**
 * The copy in the folder that the person chose, with its age.
 * @param asks the browser gives leave for the folder no longer, until the person is asked again
 * @param nowMs clock, ms UTC
 * @example folderWords({ name: 'Backups' }, 0).title //=> 'Copy in the folder Backups'
 */
export function folderWords(
  { name, atMs, failed, asks }: { name: string; atMs?: number; failed?: string; asks?: boolean },
  nowMs: number,
  zone?: string,
): { title: string; detail: string } {
  const title = `Copy in the folder ${name}`;
  const days = atMs === undefined ? 0 : Math.floor((nowMs - atMs) / DAY_MS);
  const age = days > 0 ? `, ${countWords(days, 'day')} ago` : '';
  const saved = atMs === undefined ? 'Not saved yet.' : `Saved ${whenText(atMs, zone)}${age}.`;
  const last = failed === undefined ? '' : ` The last try failed: ${failed}`;
  const leave = asks ? ' The browser asks before it writes there again: update it here.' : '';
  return { title, detail: `${saved}${last}${leave}` };
}
