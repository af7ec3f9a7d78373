import { MARK_CACHE, MARK_KEY } from './trace.ts';

/** That there was a logbook on this phone, written down outside the store that may be lost. */
export interface LogbookMark {
  entries: number;
  /** The last entry; absent where there was none. */
  lastId?: string;
  /** When this was written, ms UTC. */
  atMs: number;
}

/** Its one address in the cache storage. */
export const MARK_PATH = '/:mark';

const parsed = (text: string | null | undefined): LogbookMark | undefined => {
  try {
    const mark = JSON.parse(text ?? '') as LogbookMark;
    return typeof mark?.entries === 'number' ? mark : undefined;
  } catch {
    return undefined;
  }
};

function inPage(): LogbookMark | undefined {
  try {
    return parsed(localStorage.getItem(MARK_KEY));
  } catch {
    return undefined;
  }
}

async function inCache(): Promise<LogbookMark | undefined> {
  try {
    return parsed(await (await caches.match(MARK_PATH, { cacheName: MARK_CACHE }))?.text());
  } catch {
    return undefined;
  }
}

/** The newer of the two marks. */
export async function readMark(): Promise<LogbookMark | undefined> {
  const [here, there] = [inPage(), await inCache()];
  return here && there ? (here.atMs < there.atMs ? there : here) : (here ?? there);
}

/**
 * Whether this phone held a logbook with entries: asked where the store is empty, before the first screen greets.
 * @param linesLeft whether a mirror holds an entry
 * @returns the mark; one of no entries where only a second copy tells of it; undefined on a first day
 */
export async function heldBefore(linesLeft: () => Promise<boolean>): Promise<LogbookMark | undefined> {
  const mark = await readMark();
  if (mark) return mark.entries > 0 ? mark : undefined;
  return (await linesLeft()) ? { entries: 0, atMs: 0 } : undefined;
}
