import { whenText } from './dayText.ts';
import { countedWords, countWords } from './phrases.ts';

interface Counts {
  entries: number;
  photos: number;
}

/**
 * How the second copy on the phone stands, in a title and a sentence.
 * @example secondCopyWords({ is: 'none', entries: 0, photos: 0 }).title //=> 'No second copy on this phone'
 */
export function secondCopyWords(
  copy: Counts & {
    is: 'opening' | 'none' | 'level' | 'failed' | 'unread';
    writtenAtMs?: number;
    why?: string;
  },
  zone?: string,
): { title: string; detail: string } {
  switch (copy.is) {
    case 'opening':
      return { title: 'Second copy on this phone', detail: 'Looking for it.' };
    case 'none':
      return {
        title: 'No second copy on this phone',
        detail: 'This browser cannot keep one. Save a copy after each build day.',
      };
    case 'unread':
      return {
        title: 'Second copy on this phone',
        detail: 'It stays as it is while the logbook cannot be read.',
      };
    case 'failed':
      return {
        title: 'The second copy could not be written',
        detail: `${copy.why ?? 'Unknown reason'}. Save a copy now.`,
      };
    case 'level': {
      const when = copy.writtenAtMs === undefined ? '' : `, last written ${whenText(copy.writtenAtMs, zone)}`;
      return {
        title: 'Second copy on this phone',
        detail: `${countedWords(copy)}${when}. It helps when the browser loses its store, not when the phone is lost.`,
      };
    }
  }
}

/**
 * That entries are missing which were there.
 * @param copied whether the second copy holds them
 * @example missingWords(1, true).title //=> '1 entry is missing from the logbook'
 */
export function missingWords(entries: number, copied: boolean): { title: string; text: string } {
  const title = `${countWords(entries, 'entry', 'entries')} ${entries === 1 ? 'is' : 'are'} missing from the logbook`;
  const text = copied
    ? 'The second copy on this phone holds what is missing. Check the logbook to bring it back.'
    : 'The browser lost something, and this phone has no second copy. Restore from a copy in the settings.';
  return { title, text };
}

/** Entries on this phone alone are spoken of from this age on. Own choice: a build day and the week after it. */
const OLD_MS = 7 * 86_400_000;
/** Further than this is not counted. */
export const COUNTED_MOST = 5000;

/**
 * Entries that exist on this phone alone, once the oldest of them is a week old.
 * @example onlyHereWords({ entries: 3, sinceMs: 0 }, 864_000_000) //=> '3 entries are on this phone only, the oldest for 10 days.'
 */
export function onlyHereWords(
  { entries, sinceMs }: { entries: number; sinceMs: number },
  nowMs: number,
): string | undefined {
  if (nowMs - sinceMs < OLD_MS) return undefined;
  const count =
    entries > COUNTED_MOST ? `More than ${COUNTED_MOST} entries` : countWords(entries, 'entry', 'entries');
  const days = countWords(Math.floor((nowMs - sinceMs) / 86_400_000), 'day');
  return `${count} ${entries === 1 ? 'is' : 'are'} on this phone only, the oldest for ${days}.`;
}
