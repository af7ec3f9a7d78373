import type { Entry, Id } from '../../journal/entries.ts';
import { inOrder } from '../../journal/order.ts';
import { upcast } from '../../journal/upcasts.ts';
import type { RefusedFile } from '../../words/fileRefusals.ts';

/** The content of an entry as text that does not depend on the order its fields were put in. */
export function comparableText(entry: Entry): string {
  return JSON.stringify(upcast(entry), (_field, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : Number(a > b))))
      : value,
  );
}

/** Whether two entries of one id say the same; an older version says the same as what it becomes. */
export const sameContent = (a: Entry, b: Entry): boolean =>
  JSON.stringify(a) === JSON.stringify(b) || comparableText(a) === comparableText(b);

export type Merged = { entries: Entry[] } | RefusedFile;

/**
 * Two journals as one: every entry once, in the order that decides. It does not matter which journal comes first,
 * in which order several are merged, or how often.
 * @returns the entries, or the lowest id under which the two say different things
 * @example merge([a, b], [b, c]) //=> { entries: [a, b, c] }
 */
export function merge(one: readonly Entry[], other: readonly Entry[]): Merged {
  const byId = new Map<Id, Entry>();
  let differs: Id | undefined;
  for (const entry of [...one, ...other]) {
    const known = byId.get(entry.id);
    if (known && !sameContent(known, entry))
      differs = differs === undefined || entry.id < differs ? entry.id : differs;
    // Of two versions of one entry the newer stays, whichever came first.
    if (!known || entry.v > known.v) byId.set(entry.id, entry);
  }
  if (differs !== undefined) return { refused: 'same-id-other-content', about: differs };
  return { entries: [...byId.values()].sort(inOrder) };
}
