import type { MarkState } from '../../controls/figures/Mark.tsx';
import type { RideCheckRow } from '../../journal/rows.ts';

/**
 * How a group of the pre-ride check stands.
 * @param at writes the instant it was confirmed
 * @example groupMark(undefined, String) //=> { state: 'open', word: 'Not done' }
 */
export function groupMark(
  confirmed: RideCheckRow['groups'][string] | undefined,
  at: (ms: number) => string,
): { state: MarkState; word: string } {
  if (!confirmed) return { state: 'open', word: 'Not done' };
  const found = confirmed.items.filter(({ ok, absent }) => !ok && !absent).length;
  if (found > 0) return { state: 'held', word: found === 1 ? '1 finding' : `${found} findings` };
  return { state: 'done', word: `Confirmed ${at(confirmed.atMs)}` };
}
