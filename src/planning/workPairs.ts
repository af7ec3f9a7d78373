import type { StepRow } from '../journal/rows.ts';
import {
  type OrderScope,
  type Worked,
  type WorkPair,
  type WorkPlace,
  workOrder,
} from '../standards/workOrder.ts';
import type { OrderedJoint } from './orderedJoints.ts';

/** A step as the order of work sees it. */
export type OrderedStep = Pick<StepRow, 'kind' | 'jointId' | 'partId' | 'work' | 'title'> & {
  /** Only what is open has a place to keep; left out, it is open. */
  state?: StepRow['state'];
};

export type JointsById = ReadonlyMap<string, OrderedJoint>;

export interface StepPlace {
  place: WorkPlace;
  doing: Worked;
  joint?: OrderedJoint;
  partId?: string;
}

/**
 * Where and what a step does; nothing where the order does not know it.
 * @example workPlaceOf({ kind: 'cut', title: 'Slot' }, new Map()) //=> undefined
 */
export function workPlaceOf(
  { kind, jointId, partId, work }: OrderedStep,
  joints: JointsById,
): StepPlace | undefined {
  if (jointId === undefined)
    return kind === 'check' && partId !== undefined ? { place: 'piece', doing: 'get', partId } : undefined;
  const joint = joints.get(jointId);
  if (!joint) return undefined;
  const at = { place: joint.place, joint };
  if (kind === 'fit' || kind === 'press' || kind === 'seat') return { ...at, doing: 'together' };
  if (kind === 'torque') return { ...at, doing: 'torque' };
  if (kind === 'lock') return { ...at, doing: joint.bonded ? 'bond' : 'locker' };
  return work ? { ...at, doing: work } : undefined;
}

const meets = (one: ReadonlySet<string>, other: ReadonlySet<string>) =>
  [...one].some((partId) => other.has(partId));

/** Whether two works are near enough for a pair of that scope. */
function within(scope: OrderScope, before: StepPlace, after: StepPlace): boolean {
  const [one, other] = [before.joint, after.joint];
  if (!other) return false;
  if (scope === 'part') return before.partId !== undefined && other.partIds.has(before.partId);
  if (!one) return false;
  if (scope === 'joint') return one === other;
  if (one === other) return false;
  if (scope === 'bike') return true;
  if (scope === 'share') return meets(one.partIds, other.partIds);
  if (one.end && other.end) return one.end === other.end;
  return one.group === other.group || meets(one.own, other.own);
}

/** The pairs by what they say comes first, so that a list of sixty steps is gone through at once. */
const byBefore = new Map<string, WorkPair[]>();
for (const pair of workOrder)
  for (const place of pair.before) byBefore.set(place, [...(byBefore.get(place) ?? []), pair]);

const applies = (pair: WorkPair, before: StepPlace, after: StepPlace): boolean =>
  (pair.doing?.includes(before.doing) ?? true) &&
  pair.after.includes(after.place) &&
  (pair.thenDoing?.includes(after.doing) ?? true) &&
  within(pair.within, before, after);

/**
 * Why one step has to be done before another.
 * @param joints of the bike, see `orderedJoints`
 * @returns undefined where it need not
 * @example pairBetween(torque, fit, joints) //=> undefined
 */
export function pairBetween(
  before: OrderedStep,
  after: OrderedStep,
  joints: JointsById,
): WorkPair | undefined {
  const [one, other] = [workPlaceOf(before, joints), workPlaceOf(after, joints)];
  if (!one || !other) return undefined;
  return byBefore.get(one.place)?.find((pair) => applies(pair, one, other));
}

/**
 * For each step of a list the places of those that have to be done before it.
 * @example orderedBefore([], new Map()) //=> []
 */
export function orderedBefore(steps: readonly OrderedStep[], joints: JointsById): number[][] {
  const placed = steps.map((step) => workPlaceOf(step, joints));
  return placed.map((after) =>
    placed.flatMap((before, at) =>
      before && after && byBefore.get(before.place)?.some((pair) => applies(pair, before, after)) ? at : [],
    ),
  );
}

/**
 * Steps in an order that keeps every pair, and beyond that as near to the given one as can be.
 * @example inWorkOrder([], new Map()) //=> []
 */
export function inWorkOrder<S extends OrderedStep>(steps: readonly S[], joints: JointsById): S[] {
  const before = orderedBefore(steps, joints);
  const left = new Set(steps.keys());
  const order: S[] = [];
  while (left.size > 0) {
    const free = [...left].find((at) => before[at]?.every((other) => !left.has(other)));
    // The pairs have no circle; should one ever come in, the order given holds.
    const next = free ?? (left.values().next().value as number);
    left.delete(next);
    order.push(steps[next] as S);
  }
  return order;
}
