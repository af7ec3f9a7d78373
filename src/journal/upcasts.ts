import { ENTRY_VERSION, type Entry, entryTypes } from './entries.ts';

type Stored = Record<string, unknown> & { v: number };

/**
 * Steps from one entry version to the next: the first takes version 1 to 2, and so on. A shipped step is
 * never edited; entries in the store are never rewritten, they are brought up to date when they are read.
 */
export const upcasts: ((entry: Stored) => Stored)[] = [
  // 1 to 2: what was ridden before a re-check is counted from the rides themselves, so that a late ride counts; and
  // whether a description revokes a release stands apart from whether the joint matters.
  ({ ridesThen: _rides, kmThen: _km, ...entry }) => {
    if (entry['type'] !== 'joint-described' || entry['matters'] !== true) return entry as Stored;
    return { ...entry, revokes: true } as unknown as Stored;
  },
  // 2 to 3: a change of a part may come without its sizes, sealant without kind and amount. What was written before has
  // all of them; an older version cannot read what has not.
  (entry) => entry,
];

/** Whether this version can read an entry: neither newer than it, nor of a kind that it does not know. */
export function readable(stored: Entry): boolean {
  return stored.v <= ENTRY_VERSION && Object.hasOwn(entryTypes, stored.type);
}

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
