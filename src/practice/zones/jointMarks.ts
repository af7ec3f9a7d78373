import type { BikeZone } from '../../drawing/bike/shape.ts';
import type { ZoneMarks } from '../../drawing/bike/zoneMark.ts';
import { zoneOfJoint, zoneOfPart } from '../../drawing/bike/zoneOf.ts';
import { type KeptPart, pileOf } from '../../fit/pileOf.ts';
import type { JointRow } from '../../journal/rows.ts';
import { wantsTorque } from '../../standards/jointKinds.ts';

export type ZonedJoint = Pick<JointRow, 'jointId' | 'kind' | 'name' | 'partIds'>;

function byZone<T>(all: readonly T[], zoneOf: (one: T, at: number) => BikeZone | undefined) {
  const zones = new Map<BikeZone, T[]>();
  all.forEach((one, at) => {
    const zone = zoneOf(one, at);
    if (zone) zones.set(zone, [...(zones.get(zone) ?? []), one]);
  });
  return zones;
}

/** The joints of each zone of the drawing; a zone without one is left out. */
export function jointsByZone<J extends ZonedJoint>(
  joints: readonly J[],
  parts: readonly KeptPart[],
): ReadonlyMap<BikeZone, J[]> {
  const pile = pileOf(parts);
  const meeting = ({ partIds }: J) => pile.filter(({ partId }) => partIds.includes(partId));
  return byZone(joints, (joint) => zoneOfJoint(joint, meeting(joint)));
}

/** Parts of each zone of the drawing; a frame or an adapter has none. */
export function partsByZone<P extends KeptPart>(parts: readonly P[]): ReadonlyMap<BikeZone, P[]> {
  const zones = pileOf(parts).map(zoneOfPart);
  return byZone(parts, (_part, at) => zones[at]);
}

type JointAtHand = ZonedJoint & Pick<JointRow, 'state' | 'fasteners' | 'targets'>;

/** A joint that is together and still wants a wrench. */
export const notTight = (joint: JointAtHand): boolean =>
  joint.state === 'hand-tight' || (joint.state === 'open' && wantsTorque(joint));

const joints = (count: number): string => (count === 1 ? '1 joint' : `${count} joints`);

/**
 * How tight each zone is: how many of its joints still want a torque, or that all have theirs. Joints that are apart do
 * not count.
 * @example jointMarks([handTightStem], []) //=> { 'fork-and-bars': { state: 'open', count: 1, words: '1 joint not tight' } }
 */
export function jointMarks(of: readonly JointAtHand[], parts: readonly KeptPart[]): ZoneMarks {
  const marks: ZoneMarks = {};
  for (const [zone, there] of jointsByZone(of, parts)) {
    const together = there.filter(({ state }) => state !== 'apart');
    const open = together.filter(notTight).length;
    if (together.length === 0) continue;
    marks[zone] =
      open > 0
        ? { state: 'open', count: open, words: `${joints(open)} not tight` }
        : { state: 'done', count: together.length, words: `${joints(together.length)} done` };
  }
  return marks;
}

/** Where re-checks are due: zones of the joints they are about. */
export function dueMarks(
  jointIds: readonly (string | undefined)[],
  of: readonly ZonedJoint[],
  parts: readonly KeptPart[],
): ZoneMarks {
  const marks: ZoneMarks = {};
  for (const [zone, there] of jointsByZone(of, parts)) {
    const due = jointIds.filter((id) => there.some(({ jointId }) => jointId === id)).length;
    if (due > 0)
      marks[zone] = {
        state: 'due',
        count: due,
        words: due === 1 ? '1 re-check due' : `${due} re-checks due`,
      };
  }
  return marks;
}
