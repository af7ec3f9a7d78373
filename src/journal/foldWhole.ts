import { derived } from './derived.ts';
import { isCorrection } from './effective.ts';
import type { Entry, Id } from './entries.ts';
import { factKeys, placesOf } from './facts.ts';
import { fixRow, reduceAnew, rootOf } from './fold.ts';
import { MemoryRows } from './memoryRows.ts';
import { inOrder } from './order.ts';

export interface FoldedWhole {
  rows: MemoryRows;
  /** Under which places each entry is found again, by its id. */
  places: Map<Id, string[]>;
}

/**
 * The rows of a whole journal at once: every row is reduced from its facts, and then takes what it takes from other
 * rows. It gives what folding the entries one by one gives, in whatever order they came.
 * @param entries all of them, in any order
 */
export function foldWhole(entries: readonly Entry[]): FoldedWhole {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const journal = { entry: (id: Id) => byId.get(id) };
  const places = new Map<Id, string[]>();
  const facts = new Map<string, Entry[]>();
  const fixes = new Map<Id, Entry[]>();
  const add = <K>(lists: Map<K, Entry[]>, key: K, entry: Entry) => {
    const list = lists.get(key);
    if (list) list.push(entry);
    else lists.set(key, [entry]);
  };
  for (const entry of byId.values()) {
    const root = isCorrection(entry) ? rootOf(journal, entry) : undefined;
    for (const key of new Set([...(root ? factKeys(root) : []), ...factKeys(entry)])) add(facts, key, entry);
    if (root) add(fixes, root.id, entry);
    places.set(entry.id, placesOf(entry, root));
  }
  const rows = new MemoryRows();
  for (const [key, list] of facts) {
    const row = reduceAnew(key, list);
    if (row) rows.put(row);
  }
  for (const [rootId, list] of fixes) {
    const fix = fixRow(rootId, list.sort(inOrder));
    if (fix) rows.put(fix);
  }
  for (const row of [...rows.rows.values()]) {
    const next = derived(rows, row, undefined);
    if (next !== row) rows.put(next);
  }
  return { rows, places };
}
