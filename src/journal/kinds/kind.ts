import { type Check, id, maybe, name, reason, sentence, text } from '../checks/field.ts';
import type { Entry, EntryBody, EntryOf, EntryType, Id } from '../entries.ts';
import type { Rows } from '../fold.ts';
import type { RowKind, RowOf } from '../rows.ts';

/**
 * What may be done to a field later: `fixed` says what the entry is about and stays; `correctable` may be corrected;
 * a `remark` too, and correcting it touches nothing that a release stands on.
 */
export interface Field {
  check: Check;
  as: 'fixed' | 'correctable' | 'remark';
}

export const fixed = (check: Check): Field => ({ check, as: 'fixed' });
export const correctable = (check: Check): Field => ({ check, as: 'correctable' });
export const remarkField = (check: Check): Field => ({ check, as: 'remark' });

/** Fields that many kinds of entry share. */
export const anId = fixed(id);
export const perhapsId = fixed(maybe(id));
export const itsName = correctable(name);
export const itsReason = remarkField(reason);
export const perhapsReason = remarkField(maybe(text));
export const itsNote = remarkField(maybe(text));
export const itsWords = remarkField(sentence);

/** A row as its reducer makes it: where it stands in the order is added by the fold. */
export type Reduced<K extends RowKind> = Omit<RowOf[K], 'lastMs' | 'lastId' | 'early' | 'key' | 'is'>;

/**
 * One row that an entry is a fact of. A row either begins with one kind of entry, and what stands before that in the
 * order is applied after it; or it grows from nothing with any of its facts.
 */
export interface Fact<E, K extends RowKind = RowKind> {
  kind: K;
  /** Which row; nothing when this entry names none. */
  of(entry: E): Id | undefined;
  begins?(entry: E): Reduced<K>;
  changes?(row: RowOf[K], entry: E): Reduced<K>;
  grows?(row: RowOf[K] | undefined, entry: E): Reduced<K>;
}

/** One row of the table of kinds: all that the journal knows of a kind of entry, but for what is said of it. */
export interface Kind<T extends EntryType> {
  /** Every field with its check. */
  fields: { [K in keyof Required<Omit<Extract<EntryBody, { type: T }>, 'type'>>]: Field };
  /** The rows it is a fact of. */
  facts: Fact<EntryOf<T>>[];
  /** A statement made at a moment, or what only the logbook writes: answered by a new entry, never corrected. */
  stands?: true;
  /**
   * What must hold besides, for a new entry and for a corrected one: a refusal is thrown.
   * @param only the fields that a correction changes
   */
  guard?(rows: Rows, entry: Extract<EntryBody, { type: T }>, only?: readonly string[]): void;
}

/** A row that begins with this entry. */
export function begins<E, K extends RowKind>(
  kind: K,
  of: (entry: E) => Id | undefined,
  row: (entry: E) => Reduced<K>,
): Fact<E> {
  return { kind, of, begins: row } as unknown as Fact<E>;
}

/** A row that this entry changes. */
export function changes<E, K extends RowKind>(
  kind: K,
  of: (entry: E) => Id | undefined,
  row: (row: RowOf[K], entry: E) => Reduced<K>,
): Fact<E> {
  return { kind, of, changes: row } as unknown as Fact<E>;
}

/** A row that grows with this entry, from nothing if need be. */
export function grows<E, K extends RowKind>(
  kind: K,
  of: (entry: E) => Id | undefined,
  row: (row: RowOf[K] | undefined, entry: E) => Reduced<K>,
): Fact<E> {
  return { kind, of, grows: row } as unknown as Fact<E>;
}

/** The instant and the id of an entry, as rows keep them. */
export const noted = ({ id: entryId, happenedAtMs: atMs }: Entry) => ({ entryId, atMs });
