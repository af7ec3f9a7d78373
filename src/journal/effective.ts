import type { Entry, EntryOf, Id } from './entries.ts';
import { inOrder } from './order.ts';

export type Correction = EntryOf<'entry-corrected'>;

export const isCorrection = (entry: Entry): entry is Correction => entry.type === 'entry-corrected';

/** The corrections that count: one that was itself struck out does not. */
export function standingCorrections(corrections: readonly Correction[]): Correction[] {
  const strikes = new Map<Id, Correction[]>();
  for (const one of corrections)
    if (one.becomes === null) strikes.set(one.corrects, [...(strikes.get(one.corrects) ?? []), one]);
  const counts = ({ id }: Correction): boolean => !(strikes.get(id) ?? []).some(counts);
  return corrections.filter(counts);
}

/** An entry with one correction laid over it. A new time is where it stands from then on. */
function corrected(entry: Entry, { becomes }: Pick<Correction, 'becomes'>): Entry {
  const next = { ...entry, ...becomes } as Entry;
  if (becomes && 'happenedAtMs' in becomes) delete next.orderMs;
  return next;
}

/**
 * An entry as it reads today: all corrections of it laid over it in order, nothing when it is struck out.
 * @param corrections of this entry, those that count, in order
 */
export function asItReads(
  entry: Entry,
  corrections: readonly Pick<Correction, 'becomes'>[],
): Entry | undefined {
  if (corrections.some(({ becomes }) => becomes === null)) return undefined;
  return corrections.reduce(corrected, entry);
}

/**
 * Entries as they count today, in the order that decides: struck-out ones left out, corrected ones as they read now.
 * Corrections that count stay among them, since one may revoke a release at its own place.
 * @param entries in any order; corrections of what is not among them are left out
 */
export function effective(entries: readonly Entry[]): Entry[] {
  const sorted = [...new Map(entries.map((entry) => [entry.id, entry])).values()].sort(inOrder);
  const all = sorted.filter(isCorrection);
  if (all.length === 0) return sorted;
  const standing = new Set(standingCorrections(all));
  const of = new Map<Id, Correction[]>();
  for (const one of standing) of.set(one.corrects, [...(of.get(one.corrects) ?? []), one]);
  const read = sorted.flatMap((entry) => {
    if (isCorrection(entry)) return standing.has(entry) ? [entry] : [];
    return asItReads(entry, of.get(entry.id) ?? []) ?? [];
  });
  return read.sort(inOrder);
}
