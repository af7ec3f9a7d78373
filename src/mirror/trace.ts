/** Where the mark lies: a key of localStorage, and a part of the cache storage. */
export const MARK_KEY = 'pinchbolt:mark';
export const MARK_CACHE = 'pinchbolt-mark';
/** Where the mirror lies: a folder of private files, or a part of the cache storage under the same name. */
export const MIRROR = 'pinchbolt-mirror';

/**
 * Whether there is any place that a mark or a mirror was written to. Makes none, and does not look into it: small enough for
 * the script every start begins with.
 * @returns false on a first visit
 */
export async function leftTrace(): Promise<boolean> {
  try {
    if (localStorage.getItem(MARK_KEY)) return true;
  } catch {
    // Not allowed here.
  }
  try {
    const names = await caches.keys();
    if (names.includes(MARK_CACHE) || names.includes(MIRROR)) return true;
  } catch {
    // Likewise.
  }
  try {
    await (await navigator.storage.getDirectory()).getDirectoryHandle(MIRROR);
    return true;
  } catch {
    return false;
  }
}
