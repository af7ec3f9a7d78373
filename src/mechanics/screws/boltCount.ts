/**
 * The bolts of a joint, all fasteners together.
 * @param fasteners with how many there are of each, 0 or more
 * @returns the sum; 0 where nothing is screwed
 * @example boltCount([{ count: 2 }, { count: 4 }]) //=> 6
 */
export function boltCount(fasteners: readonly { count: number }[]): number {
  return fasteners.reduce((sum, { count }) => sum + count, 0);
}
