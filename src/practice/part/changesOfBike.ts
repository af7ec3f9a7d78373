import type { PartRow } from '../../journal/rows.ts';

/** A change for good of one part of a bike. */
export interface ChangeOnBike {
  part: PartRow;
  change: PartRow['changes'][number];
}

/**
 * Every change for good of the parts on a bike, the newest first: what was changed on another bike came along with its part.
 * @example changesOfBike([]) //=> []
 */
export function changesOfBike(parts: readonly PartRow[]): ChangeOnBike[] {
  const all = parts.flatMap((part) => part.changes.map((change) => ({ part, change })));
  return all.sort((a, b) => b.change.atMs - a.change.atMs);
}
