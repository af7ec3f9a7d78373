import { jointKindRow } from '../standards/jointKinds.ts';
import type { Finding } from './finding.ts';
import type { PilePart } from './pile.ts';
import { jointKindsOf, type KeptJoint } from './topicJoints.ts';

/**
 * Pairs of parts that go together into a joint that matters, while the logbook has no such joint with either of
 * them, nor any with both: nobody is asked for its torque, and nobody will meet it again after the first ride.
 * @param together findings about parts that fit, or fit with what goes between
 * @param parts the parts of the bike
 * @param joints its joints
 * @returns one pair by name for each joint that is missing
 * @example unjoined(checkPile([saddle, post]).fitting, [saddle, post], []) //=> ['Saddle and post']
 */
export function unjoined(
  together: readonly Finding[],
  parts: readonly PilePart[],
  joints: readonly KeptJoint[],
): string[] {
  /** Parts that have their joint, by the kind they stand for. */
  const held = new Map<string, Set<string>>();
  return together.flatMap(({ topic, faces }) => {
    const partIds = [...new Set(faces.map(({ partId }) => partId))];
    const about = parts.filter(({ partId }) => partIds.includes(partId));
    const [one, other] = about;
    if (!one || !other || about.length > 2) return [];
    const kinds = jointKindsOf(topic, about);
    const [kind] = kinds;
    if (kind === undefined || !jointKindRow(kind).matters) return [];
    const have = held.get(kind) ?? new Set(partIdsOf(joints, kinds));
    held.set(kind, have);
    if (partIds.some((partId) => have.has(partId)) || joints.some((joint) => holds(joint, partIds)))
      return [];
    // Named once: a headset meets the frame and the steerer, and is one joint.
    for (const partId of partIds) have.add(partId);
    return [`${one.name} and ${other.name}`];
  });
}

const holds = ({ state, partIds }: KeptJoint, ids: readonly string[]): boolean =>
  state !== 'apart' && ids.every((id) => partIds.includes(id));

const partIdsOf = (joints: readonly KeptJoint[], kinds: readonly string[]): string[] =>
  joints
    .filter(({ kind, state }) => state !== 'apart' && kinds.includes(kind))
    .flatMap(({ partIds }) => partIds);
