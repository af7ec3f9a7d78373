import { type LogbookMark, MARK_PATH } from './mark.ts';
import { MARK_CACHE, MARK_KEY } from './trace.ts';

/** Writes the mark to both places. A place that is not there is passed over. */
export async function keepMark(mark: LogbookMark): Promise<void> {
  const text = JSON.stringify(mark);
  try {
    localStorage.setItem(MARK_KEY, text);
  } catch {
    // The other place may hold it.
  }
  try {
    await (await caches.open(MARK_CACHE)).put(MARK_PATH, new Response(text));
  } catch {
    // The first place may hold it.
  }
}
