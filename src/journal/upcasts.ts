import { ENTRY_VERSION, type Entry } from './entries.ts';

type Stored = Record<string, unknown> & { v: number };

/**
 * Steps from one entry version to the next: the first takes version 1 to 2, and so on. A shipped step is
 * never edited; entries in the store are never rewritten, they are brought up to date when they are read.
 */
export const upcasts: ((entry: Stored) => Stored)[] = [];

/**
 * An entry as stored, in today's shape.
 * @throws RangeError when it was written by a newer version than this one
 */
export function upcast(stored: Entry): Entry {
  if (stored.v > ENTRY_VERSION)
    throw new RangeError(`entry of version ${stored.v} is newer than ${ENTRY_VERSION}`);
  let entry = stored as unknown as Stored;
  for (const step of upcasts.slice(entry.v - 1)) entry = { ...step(entry), v: entry.v + 1 };
  return entry as unknown as Entry;
}
