import { refuse } from './decide/ruling.ts';
import type { Entry, EntryBody, EntryHead, EntryType } from './entries.ts';
import type { Rows } from './fold.ts';
import type { Field, Kind } from './kinds/kind.ts';
import { kinds } from './kinds/kinds.ts';

/** Fields of the head, which the logbook writes itself. */
const HEAD: Record<keyof EntryHead | 'type', true> = {
  ...{ id: true, v: true, type: true, writtenAtMs: true, happenedAtMs: true, zone: true },
  ...{ by: true, phone: true, orderMs: true, asked: true },
};

export const fieldsOf = (type: EntryType): Record<string, Field> => kinds[type].fields;

/**
 * Refuses an entry that may not enter the journal: a field that its kind does not know, a value out of its range, or
 * what does not hold beside the rest of the logbook. New entries and corrected ones pass the same way.
 * @param only the fields that are new; what was taken long ago is not asked for again
 */
export function checkEntry(rows: Rows, entry: EntryBody | Entry, only?: readonly string[]): void {
  const fields = fieldsOf(entry.type);
  const given = entry as unknown as Record<string, unknown>;
  for (const key of Object.keys(given)) {
    if (!Object.hasOwn(HEAD, key) && !Object.hasOwn(fields, key) && given[key] !== undefined)
      refuse('malformed', key);
  }
  for (const [key, { check }] of Object.entries(fields)) {
    if (only && !only.includes(key)) continue;
    const wrong = check(given[key]);
    if (wrong) refuse(wrong.refused, wrong.about);
  }
  (kinds[entry.type] as Kind<EntryType>).guard?.(rows, entry, only);
}
