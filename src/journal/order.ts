import type { Entry, Id } from './entries.ts';

/** A place in the order of all entries. */
export interface Standing {
  ms: number;
  id: Id;
}

/**
 * Where an entry stands in the order: by when it happened, then by its id. Two phones that hold the same entries
 * agree on it, since no number of either phone takes part.
 * @example standing({ happenedAtMs: 5, id: 'a', … }) //=> { ms: 5, id: 'a' }
 */
export function standing({
  happenedAtMs,
  orderMs,
  id,
}: Pick<Entry, 'happenedAtMs' | 'orderMs' | 'id'>): Standing {
  return { ms: orderMs ?? happenedAtMs, id };
}

/**
 * Which of two places comes first.
 * @returns below 0 when `a` does, above 0 when `b` does, 0 for the same entry
 * @example compareStanding({ ms: 5, id: 'b' }, { ms: 5, id: 'a' }) //=> 1
 */
export function compareStanding(a: Standing, b: Standing): number {
  return a.ms - b.ms || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
}

/** For sorting entries. */
export function inOrder(a: Entry, b: Entry): number {
  return compareStanding(standing(a), standing(b));
}
