import type { Entry, Id } from '../journal/entries.ts';

const ID_FIELD = /^(corrects|.*Ids?)$/;

/** Whether an entry names one of these ids, or an id of the demo. */
function names(entry: Entry, ids: ReadonlySet<Id>, ofDemo: (id: Id) => boolean): boolean {
  const named = Object.entries(entry).flatMap(([field, value]) => (ID_FIELD.test(field) ? value : []));
  return named.some((id) => typeof id === 'string' && (ids.has(id) || ofDemo(id)));
}

/** Entries that left with the demo: those that name something of it, and what corrects such a one. */
export function leftWithDemo(entries: readonly Entry[], ofDemo: (id: Id) => boolean): Set<Id> {
  const left = new Set<Id>();
  for (let before = -1; before < left.size; ) {
    before = left.size;
    for (const entry of entries) if (names(entry, left, ofDemo)) left.add(entry.id);
  }
  return left;
}
