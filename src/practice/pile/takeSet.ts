import type { PilePart } from '../../fit/pile.ts';
import type { CompleteSet } from '../../fit/sets/completeSets.ts';
import type { Command } from '../../journal/commands.ts';
import type { Id } from '../../journal/entries.ts';

/**
 * What brings the parts of a set from the shelf onto the bike; a rim or tyre chosen for one wheel is marked so.
 * @param parts the parts as they are now
 * @returns nothing where all are on the bike already
 */
export function takeSet(
  { filled }: CompleteSet,
  { bikeId, parts, onBike }: { bikeId: Id; parts: readonly PilePart[]; onBike: ReadonlySet<string> },
): Command[] {
  return filled
    .flatMap((one) => one.parts)
    .filter(({ partId }) => !onBike.has(partId))
    .flatMap(({ partId, position }): Command[] => {
      const known = parts.find((part) => part.partId === partId)?.position;
      return [
        { type: 'move-part', partId, to: { on: 'bike', bikeId }, why: 'chosen for a whole set' },
        ...(position && !known ? [{ type: 'describe-part', partId, position } as const] : []),
      ];
    });
}
