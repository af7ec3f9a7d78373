import type { Entry, EntryType } from '../../../src/journal/entries.ts';
import { entryOf, entryTypes } from '../words/history/everyEntry.ts';

/** An id such as the logbook gives out: sixteen digits of our suggestion in the form of RFC 9562, version 7. */
export const idOf = (number: number): string => {
  const digits = number.toString(16).padStart(12, '0');
  return `01990000-0000-7000-8000-${digits}`;
};

const NINE = Date.UTC(2026, 4, 3, 9);

/** One entry of every kind, each with an id and a minute of its own; the correction is of the ride. */
export const allEntries: Entry[] = entryTypes.map((type: EntryType, at) => {
  const atMs = NINE + at * 60_000;
  const head = { id: idOf(at + 1), writtenAtMs: atMs, happenedAtMs: atMs };
  const entry = { ...entryOf(type), ...head } as Entry;
  if (entry.type !== 'entry-corrected') return entry;
  return { ...entry, corrects: idOf(entryTypes.indexOf('ride-logged') + 1), becomes: { km: 9 } };
});
