import { countsChanged, derived } from './derived.ts';
import { effective, isCorrection, standingCorrections } from './effective.ts';
import type { Entry, Id } from './entries.ts';
import { factKeys, factsOf, keyOf, placesOf, splitKey } from './facts.ts';
import { compareStanding, inOrder, standing } from './order.ts';
import type { FixRow, Row, RowKind, RowOf } from './rows.ts';

/**
 * What a fold and a decision see of the store. Everything is there already: reading is synchronous, so a
 * command is read, decided, folded and written within one transaction. Asking for what was not fetched
 * is a programmer error and throws.
 */
export interface Rows {
  get<K extends RowKind>(kind: K, id: Id): RowOf[K] | undefined;
  /** Rows of one group, including those written in this transaction. */
  group<K extends RowKind>(kind: K, group: string): RowOf[K][];
  /** Every row of one kind, wherever it stands: only for what must be single in the whole logbook. */
  all<K extends RowKind>(kind: K): RowOf[K][];
  /** An entry of the journal by its id. */
  entry(id: Id): Entry | undefined;
  /** The raw entries that are facts of a row, corrections of them included. */
  facts(key: string): Entry[];
  /** The newest lines of the journal, a few: to know a second tap by. */
  recent(): Entry[];
  put(row: Row): void;
  drop(key: string): void;
  /** Takes an entry into the journal this transaction sees. */
  append(entry: Entry, places: string[]): void;
}

/** A row with the place of its newest entry. */
function placed(key: string, reduced: object, entry: Entry, last: Row | undefined): Row {
  const at = standing(entry);
  const newest = last && compareStanding({ ms: last.lastMs, id: last.lastId }, at) > 0;
  const [is] = splitKey(key);
  return {
    ...reduced,
    ...{ key, is, lastMs: newest ? last.lastMs : at.ms, lastId: newest ? last.lastId : at.id },
  } as unknown as Row;
}

/** A row with one more entry on top of what it holds. */
function reduce(key: string, row: Row | undefined, entry: Entry): Row | undefined {
  let next = row;
  for (const fact of factsOf(entry)) {
    if (keyOf(fact, entry) !== key) continue;
    const reduced = fact.grows
      ? fact.grows(next, entry)
      : next
        ? fact.changes?.(next, entry)
        : fact.begins?.(entry);
    if (reduced) next = placed(key, reduced, entry, next);
  }
  return next;
}

const beginsAt = (key: string) => (entry: Entry) =>
  factsOf(entry).some((fact) => fact.begins && keyOf(fact, entry) === key);

/**
 * A row from nothing but its facts. A row that has a beginning begins with it, and what stands before that in the
 * order is applied after it: it is kept, and counted as early.
 * @param facts raw entries, corrections included, in any order
 */
export function reduceAnew(key: string, facts: readonly Entry[]): Row | undefined {
  const counted = effective(facts);
  const first = counted.findIndex(beginsAt(key));
  const inTurn =
    first > 0 ? [counted[first] as Entry, ...counted.slice(0, first), ...counted.slice(first + 1)] : counted;
  let row: Row | undefined;
  for (const entry of inTurn) row = reduce(key, row, entry);
  const early = counted.slice(0, Math.max(0, first)).filter((entry) => !isCorrection(entry)).length;
  return row && early > 0 ? { ...row, early } : row;
}

function rowAt(rows: Rows, key: string): Row | undefined {
  return rows.get(...splitKey(key));
}

/** Whether an entry comes on top of what its row holds, so that the row need not be reduced anew. */
export function comesOnTop(row: Row | undefined, entry: Entry): boolean {
  return row === undefined || compareStanding({ ms: row.lastMs, id: row.lastId }, standing(entry)) < 0;
}

/** The entry that a correction corrects in the end: a correction of a correction leads on. */
export function rootOf(rows: Pick<Rows, 'entry'>, entry: Entry): Entry | undefined {
  let root: Entry | undefined = entry;
  while (root && isCorrection(root)) root = rows.entry(root.corrects);
  return root;
}

/** The row that keeps what became of an entry: its corrections in order. */
export function fixRow(rootId: Id, corrections: readonly Entry[]): FixRow | undefined {
  const sorted = corrections.filter(isCorrection);
  const counting = new Set(standingCorrections(sorted));
  const last = sorted.at(-1);
  if (!last) return undefined;
  return {
    ...{ key: `fix/${rootId}`, is: 'fix', entryId: rootId, lastMs: standing(last).ms, lastId: last.id },
    fixes: sorted
      .filter(({ corrects }) => corrects === rootId)
      .map((one) => ({
        ...{ by: one.id, atMs: one.writtenAtMs, reason: one.reason, undo: one.undo, becomes: one.becomes },
        ...(counting.has(one) ? {} : { struckOut: true as const }),
      })),
  };
}

function write(rows: Rows, key: string, before: Row | undefined, after: Row | undefined): void {
  if (after) rows.put(after);
  else if (before) rows.drop(key);
}

/**
 * Adds one entry to the views. In the common case a row takes the entry on top of what it holds; an entry
 * that stands earlier, and a correction, reduce the row anew from its facts.
 * @param rows the store as this transaction sees it; changed in place
 * @param entry not yet in the journal
 * @returns the places under which the entry is found again
 */
export function fold(rows: Rows, entry: Entry): string[] {
  const root = isCorrection(entry) ? rootOf(rows, entry) : undefined;
  const keys = new Set([...(root ? factKeys(root) : []), ...factKeys(entry)]);
  const changed: { before: Row | undefined; after: Row | undefined }[] = [];
  for (const key of keys) {
    const before = rowAt(rows, key);
    const anew = root !== undefined || !comesOnTop(before, entry) || (!before && beginsAt(key)(entry));
    const reduced = anew ? reduceAnew(key, [...rows.facts(key), entry]) : reduce(key, before, entry);
    const after = reduced && derived(rows, reduced, before);
    write(rows, key, before, after);
    changed.push({ before, after });
  }
  if (root) {
    const fix = fixRow(root.id, [...rows.facts(`fix/${root.id}`), entry].sort(inOrder));
    if (fix) rows.put(fix);
  }
  for (const { before, after } of changed) countsChanged(rows, before, after);
  return placesOf(entry, root);
}

/** Folds and appends entries in the order given; returns each with its places. */
export function foldAll(rows: Rows, entries: readonly Entry[]): { entry: Entry; places: string[] }[] {
  return entries.map((entry) => {
    const places = fold(rows, entry);
    rows.append(entry, places);
    return { entry, places };
  });
}
