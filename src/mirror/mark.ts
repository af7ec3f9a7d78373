/** That there was a logbook on this phone, written down outside the store that may be lost. */
export interface LogbookMark {
  entries: number;
  /** The last entry; absent where there was none. */
  lastId?: string;
  /** When this was written, ms UTC. */
  atMs: number;
}

export const MARK_KEY = 'pinchbolt:mark';
export const MARK_CACHE = 'pinchbolt-mark';
export const MARK_PATH = '/:mark';
/** Where the mirror lies: a folder of private files, or a part of the cache storage under the same name. */
export const MIRROR = 'pinchbolt-mirror';

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

/** Whether there is a place where a mirror may lie. Makes none. */
async function hasMirror(): Promise<boolean> {
  try {
    await (await navigator.storage.getDirectory()).getDirectoryHandle(MIRROR);
    return true;
  } catch {
    return globalThis.caches?.has(MIRROR).catch(() => false) ?? false;
  }
}

/**
 * Whether this phone held a logbook with entries: asked where the store is empty, before the first screen greets.
 * @param linesLeft whether a mirror that is there holds an entry; on a first visit there is none, and it is not asked
 * @returns the mark; one of no entries where only a second copy tells of it; undefined on a first day
 */
export async function heldBefore(linesLeft: () => Promise<boolean>): Promise<LogbookMark | undefined> {
  const mark = await readMark();
  if (mark) return mark.entries > 0 ? mark : undefined;
  return (await hasMirror()) && (await linesLeft()) ? { entries: 0, atMs: 0 } : undefined;
}
