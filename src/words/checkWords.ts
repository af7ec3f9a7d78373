import { whenText } from './dayText.ts';
import { countedWords, countWords } from './phrases.ts';

/**
 * What is said where a logbook was and none is found.
 * @param mark how many entries there were and when that was written down; no entries where only a copy tells of it
 * @example lostWords({ entries: 3, atMs: 0 }, 'UTC') //=> 'It held 3 entries on 1 January 1970, 00:00. …'
 */
export function lostWords(mark: { entries: number; atMs: number }, zone?: string): string {
  const held =
    mark.entries > 0
      ? `It held ${countWords(mark.entries, 'entry', 'entries')} on ${whenText(mark.atMs, zone)}. `
      : '';
  return `${held}The browser has deleted its store, or found it damaged and begun an empty one.`;
}

/** What a check of the store found, as counts. */
export interface StoreFound {
  gaps: number;
  noEntry: readonly unknown[];
  newer: number;
  rows: readonly unknown[];
  places: readonly unknown[];
  photosMissing: readonly unknown[];
  versionLost: boolean;
  unfoldable?: string;
}

/** What a comparison with the second copy found. */
export interface CopyFound {
  missing: readonly unknown[];
  missingPhotos: readonly unknown[];
  differing: readonly unknown[];
  differingPhotos: readonly unknown[];
  unreadable: number;
}

/** One thing that is wrong; `by` tells what mends it. */
export interface Flaw {
  words: string;
  by: 'sorting' | 'second copy' | 'saved copy';
}

/**
 * What is wrong with the logbook, in sentences; empty where nothing is.
 * @param copy absent where there is no second copy to compare with
 */
export function flawsOf(store: StoreFound | undefined, copy: CopyFound | undefined): Flaw[] {
  const found: Flaw[] = [];
  const say = (count: number, by: Flaw['by'], words: string) => {
    if (count > 0) found.push({ words, by });
  };
  const entries = (count: number) => countWords(count, 'entry', 'entries');
  if (store) {
    const { gaps, noEntry, rows, places, photosMissing, versionLost, unfoldable } = store;
    say(gaps, 'saved copy', `${countWords(gaps, 'line')} of the journal missing`);
    say(noEntry.length, 'saved copy', `${countWords(noEntry.length, 'line')} of the journal damaged`);
    say(rows.length, 'sorting', `${countWords(rows.length, 'row')} not as the journal says`);
    say(places.length, 'sorting', `${entries(places.length)} not found in the history`);
    say(Number(versionLost), 'sorting', 'Not known which version of the app sorted the logbook');
    say(photosMissing.length, 'saved copy', `${countWords(photosMissing.length, 'photo')} missing`);
    if (unfoldable !== undefined)
      found.push({ words: `The journal cannot be sorted: ${unfoldable}`, by: 'second copy' });
  }
  if (copy) {
    const { missing, missingPhotos, differing, differingPhotos, unreadable } = copy;
    const lacking = { entries: missing.length, photos: missingPhotos.length };
    say(lacking.entries + lacking.photos, 'second copy', `Only in the second copy: ${countedWords(lacking)}`);
    const bent = { entries: differing.length, photos: differingPhotos.length };
    say(bent.entries + bent.photos, 'second copy', `Different in the second copy: ${countedWords(bent)}`);
    say(unreadable, 'saved copy', `${countWords(unreadable, 'line')} of the second copy unreadable`);
  }
  return found;
}

/**
 * What can be had from the second copy where the store does not open.
 * @param held how much it holds, when it was last level with the logbook, and how many entries the mark knows of besides
 * @example heldWords({ entries: 3, photos: 0, unreadable: 0, lacking: 0 }).title //=> 'The second copy holds 3 entries'
 */
export function heldWords(
  held: { entries: number; photos: number; unreadable: number; lacking: number; writtenAtMs?: number },
  zone?: string,
): { title: string; text: string } {
  const { unreadable, lacking, writtenAtMs } = held;
  const sentences = [
    ...(writtenAtMs === undefined ? [] : [`Last written ${whenText(writtenAtMs, zone)}.`]),
    ...(unreadable > 0 ? [`${countWords(unreadable, 'line')} of it could not be read.`] : []),
    ...(lacking > 0 ? [`${countWords(lacking, 'entry', 'entries')} logged on this phone not in it.`] : []),
    'Save it as a file first. After that a new store can be filled from it.',
  ];
  return { title: `The second copy holds ${countedWords(held)}`, text: sentences.join(' ') };
}
