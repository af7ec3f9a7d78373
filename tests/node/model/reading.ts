import type { Entry, EntryOf, EntryType, Id } from '../../../src/journal/entries.ts';

/** An entry with the place that the phone may have given it because its clock stood too early. */
export type Placed<T extends EntryType = EntryType> = EntryOf<T> & { orderMs?: number };

/** The things that have a beginning. */
export type Thing = 'bike' | 'part' | 'joint' | 'step' | 'wait' | 'recheck' | 'tool' | 'defect' | 'wheel';

const beginnings: Record<Thing, readonly EntryType[]> = {
  bike: ['bike-started'],
  part: ['part-added'],
  joint: ['joint-made'],
  step: ['step-added'],
  wait: ['wait-started', 'locker-applied'],
  recheck: ['recheck-set'],
  tool: ['tool-added'],
  wheel: ['wheel-made'],
  defect: ['defect-found'],
};

export const is =
  <T extends EntryType>(...types: readonly T[]) =>
  (entry: Entry): entry is Placed<T> =>
    (types as readonly string[]).includes(entry.type);

/** A field of an entry, whichever kind it is. */
export const field = (entry: Entry, name: string): unknown =>
  (entry as unknown as Record<string, unknown>)[name];

/** [J8] Where an entry stands: by its place or when it happened, then by its id. */
export function comesBefore(a: Entry, b: Entry): boolean {
  const [aMs, bMs] = [a, b].map((entry) => (entry as Placed).orderMs ?? entry.happenedAtMs) as [
    number,
    number,
  ];
  return aMs === bMs ? a.id < b.id : aMs < bMs;
}

export const inOrder = <T extends Entry>(entries: readonly T[]): T[] =>
  entries.toSorted((a, b) => (a.id === b.id ? 0 : comesBefore(a, b) ? -1 : 1));

/** [J10] Whether an entry counts: no correction that itself counts strikes it out. */
export function counts(entry: Entry, all: readonly Entry[]): boolean {
  return !all
    .filter(is('entry-corrected'))
    .some((fix) => fix.corrects === entry.id && fix.becomes === null && counts(fix, all));
}

/** [J10] An entry as it reads: all corrections that count laid over it, in order. */
export function reading(entry: Entry, all: readonly Entry[]): Entry {
  const fixes = all
    .filter(is('entry-corrected'))
    .filter((fix) => fix.corrects === entry.id && counts(fix, all));
  let reads: Record<string, unknown> = { ...entry };
  for (const { becomes } of inOrder(fixes)) {
    reads = { ...reads, ...becomes };
    // [J8] A time set right stands where it says, whatever place the phone had given it.
    if (becomes && 'happenedAtMs' in becomes) delete reads['orderMs'];
  }
  return reads as unknown as Entry;
}

/**
 * Every entry that counts, as it reads, in order.
 * @param asOfMs leaves out what happened later; corrections act only when written by then
 */
export function readings(all: readonly Entry[], asOfMs = Number.POSITIVE_INFINITY): Entry[] {
  const read = all.filter((entry) => counts(entry, all)).map((entry) => reading(entry, all));
  const until = read.filter((entry) =>
    entry.type === 'entry-corrected' ? entry.writtenAtMs <= asOfMs : entry.happenedAtMs <= asOfMs,
  );
  return inOrder(until);
}

/** The field in which an entry names a thing. */
const idField = (thing: Thing): string => `${thing}Id`;

/** The entry with which a thing begins, if it counts. */
export function beginningOf(thing: Thing, id: Id, read: readonly Entry[]): Entry | undefined {
  return read.find((entry) => beginnings[thing].includes(entry.type) && field(entry, idField(thing)) === id);
}

/**
 * [J9] The entries that name a thing: its beginning first, then all others in order, those before it too.
 * Nothing while the thing has no beginning.
 */
export function factsOf(thing: Thing, id: Id, read: readonly Entry[]): Entry[] {
  const beginning = beginningOf(thing, id, read);
  if (!beginning) return [];
  const others = read.filter((entry) => entry !== beginning && field(entry, idField(thing)) === id);
  return [beginning, ...others];
}

/** [J9] The entries of these kinds that name a thing and stand before its beginning. */
export function earlyOf(thing: Thing, id: Id, read: readonly Entry[]): Entry[] {
  const [beginning, ...others] = factsOf(thing, id, read);
  return beginning ? others.filter((entry) => comesBefore(entry, beginning)) : [];
}

/** The ids of all things of a kind that have begun. */
export function idsOf(thing: Thing, read: readonly Entry[]): Id[] {
  const begun = read.filter((entry) => beginnings[thing].includes(entry.type));
  return [...new Set(begun.map((entry) => field(entry, idField(thing)) as Id))];
}
