import type { Place } from '../../journal/entries.ts';
import type { PartRow } from '../../journal/rows.ts';

/** A span a part spent in one place; without an end it is there still. */
export interface Stay {
  place: Place;
  fromMs: number;
  untilMs?: number;
  /** Why it left. */
  why?: string;
}

/**
 * Where a part has been, newest first.
 * @example stays({ place: shelf, addedAtMs: 0, moves: [] }) //=> [{ place: shelf, fromMs: 0 }]
 */
export function stays({ place, addedAtMs, moves }: Pick<PartRow, 'place' | 'addedAtMs' | 'moves'>): Stay[] {
  const sorted = moves.toSorted((a, b) => a.atMs - b.atMs);
  const spans = sorted.map(
    ({ from, atMs, why }, at): Stay => ({
      place: from,
      fromMs: sorted[at - 1]?.atMs ?? addedAtMs,
      untilMs: atMs,
      ...(why ? { why } : {}),
    }),
  );
  return [{ place, fromMs: sorted.at(-1)?.atMs ?? addedAtMs }, ...spans.reverse()];
}
