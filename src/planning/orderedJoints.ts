import type { JointRow, PartRow } from '../journal/rows.ts';
import { type JointArea, type JointKind, jointKindRow } from '../standards/jointKinds.ts';
import type { WorkPlace } from '../standards/workOrder.ts';
import { isSleeve } from './jointToBuild.ts';
import { isBonded } from './unsetBonds.ts';

type End = 'front' | 'rear';

/** A joint as the order of work sees it. */
export interface OrderedJoint {
  jointId: string;
  place: WorkPlace;
  /** A retaining compound goes into it. */
  bonded: boolean;
  /** Everything in it. */
  partIds: ReadonlySet<string>;
  /** Frame and fork left out. */
  own: ReadonlySet<string>;
  /** The wheel or the brake it belongs to: joints that hang together by parts other than frame and fork. */
  group: string;
  end?: End;
}

type Joined = Pick<JointRow, 'jointId' | 'kind' | 'partIds' | 'between' | 'state' | 'locked'>;
/** A part as far as the order of work goes by it. */
export type OrderedPart = Pick<PartRow, 'partId' | 'kind' | 'position'>;

const ends: Partial<Record<JointKind, End>> = { 'front-axle': 'front', 'rear-axle': 'rear' };
const endAreas: readonly JointArea[] = ['wheels', 'brakes'];
const onWheel: readonly JointKind[] = ['freewheel', 'sprocket', 'lockring', 'mudguard'];

/** At which end of the bike a joint is by its own parts, as far as they tell. */
function endByParts(kind: JointKind, mine: readonly OrderedPart[]): End | undefined {
  const known = ends[kind] ?? mine.find(({ kind: of, position }) => of !== 'frame' && position)?.position;
  if (known || !endAreas.includes(jointKindRow(kind).area)) return known;
  if (mine.some(({ kind: of }) => of === 'fork')) return 'front';
  return mine.some(({ kind: of }) => of === 'frame') ? 'rear' : undefined;
}

/**
 * The joints of a bike with what the order of work goes by: which wheel or end they belong to, what they share.
 * @param joints of the bike; those taken apart are left out
 * @param parts that the joints name
 * @returns by id
 * @example orderedJoints([], []).size //=> 0
 */
export function orderedJoints(
  joints: readonly Joined[],
  parts: readonly OrderedPart[],
): Map<string, OrderedJoint> {
  const byId = new Map(parts.map((part) => [part.partId, part]));
  const made = joints
    .filter(({ state }) => state !== 'apart')
    .map((joint): OrderedJoint & { kind: JointKind } => {
      const { jointId, kind, between } = joint;
      const partIds = [...joint.partIds, ...between.flatMap(({ partId }) => partId ?? [])];
      const mine = partIds.flatMap((partId) => byId.get(partId) ?? []);
      const bearer = (partId: string) => ['frame', 'fork'].includes(byId.get(partId)?.kind ?? '');
      const end = endByParts(kind, mine);
      return {
        ...{ jointId, kind, place: isSleeve(kind, mine) ? 'sleeve' : kind, bonded: isBonded(joint) },
        ...{ partIds: new Set(partIds), own: new Set(partIds.filter((partId) => !bearer(partId))) },
        ...{ group: jointId, ...(end ? { end } : {}) },
      };
    });
  const grouped = made.filter(
    ({ kind }) => endAreas.includes(jointKindRow(kind).area) || onWheel.includes(kind),
  );
  // Each joint takes the group of what it shares a part with, until nothing changes any more.
  for (let changed = true; changed; ) {
    changed = false;
    for (const one of grouped)
      for (const other of grouped) {
        if (one === other || [...one.own].every((partId) => !other.own.has(partId))) continue;
        if (other.group < one.group) [one.group, changed] = [other.group, true];
        if (one.end === undefined && other.end) [one.end, changed] = [other.end, true];
      }
  }
  return new Map(made.map(({ kind: _kind, ...joint }) => [joint.jointId, joint]));
}
