import type { BridgePlan, PlannedSide } from '../../fit/bridges/acceptBridge.ts';
import type { Bridge } from '../../fit/bridges/bridge.ts';
import type { Between, BetweenKind, Id } from '../../journal/entries.ts';

/** Two parts that get a joint, and what lies between them. */
export interface JointToMake {
  one: Id;
  other: Id;
  between: Between[];
  /** Something in it does not come out again. */
  permanent: boolean;
}

const spacerKinds = { 'cup-spacer': 'spacer', 'axle-washer': 'washer' } as const satisfies Record<
  string,
  BetweenKind
>;

/**
 * The joints a bridge leaves on the bike. A shim or sleeve is held by the screws of the joint it lies in; an
 * adapter has screws or a press fit of its own at either end, and so parts one joint into two.
 * @param idOf the part a piece still to be bought got when it was entered
 */
export function bridgeJoints(
  plan: BridgePlan,
  { links, spacers }: Bridge,
  idOf: (planId: string) => Id,
): JointToMake[] {
  const partOf = (side: PlannedSide): Id => ('partId' in side ? side.partId : idOf(side.planId));
  const made: JointToMake[] = [];
  let between: Between[] = spacers
    ? [
        {
          kind: spacerKinds[spacers.what],
          partId: idOf(plan.bridgeId),
          words: (plan.joints[0]?.between ?? []).join(', '),
        },
      ]
    : [];
  let [one, permanent] = [plan.joints[0] && partOf(plan.joints[0].one), false];
  plan.joints.forEach((joint, at) => {
    const other = partOf(joint.other);
    permanent ||= joint.permanent;
    const adapter = links[at]?.adapter;
    if (adapter && adapter.sort !== 'adapter') {
      between.push({ kind: 'shim', partId: other });
      return;
    }
    if (one) made.push({ one, other, between, permanent });
    [one, between, permanent] = [other, [], false];
  });
  return made;
}
