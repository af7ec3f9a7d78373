import { type MattersHere, mattersHere } from '../../fit/mattersHere.ts';
import { type KeptPart, pileOf } from '../../fit/pileOf.ts';
import type { Id } from '../../journal/entries.ts';
import type { JointKind } from '../../standards/jointKinds.ts';

/**
 * Whether a joint of the logbook matters on its bike.
 * @param joint its kind and the parts that meet in it
 * @param bikeParts all parts of the bike, those of the joint among them
 * @example mattersOnBike({ kind: 'bar-clamp', partIds: [] }, []) //=> { matters: true }
 */
export function mattersOnBike(
  { kind, partIds }: { kind: JointKind; partIds: readonly Id[] },
  bikeParts: readonly KeptPart[],
): MattersHere {
  const meeting = bikeParts.filter(({ partId }) => partIds.includes(partId));
  return mattersHere(kind, pileOf(meeting), pileOf(bikeParts));
}
