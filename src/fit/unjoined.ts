import type { Finding } from './finding.ts';
import { mattersHere } from './mattersHere.ts';
import type { PilePart } from './pile.ts';
import { holds, jointKindsOf, type KeptJoint } from './topicJoints.ts';

/**
 * Pairs of parts that go together into a joint that matters, while the logbook has no such joint with either
 * of them, nor any with both: its torque is not asked for, and no re-check of it falls due after the first
 * ride.
 * @param together findings about parts that fit, or fit with what goes between
 * @param parts the parts of the bike
 * @param joints its joints
 * @returns one pair by name for each joint that is missing
 * @example unjoined(checkPile([seatpost, saddle]).fitting, [seatpost, saddle], []) //=> ['seatpost and
 * saddle']
 */
export function unjoined(
  together: readonly Finding[],
  parts: readonly PilePart[],
  joints: readonly KeptJoint[],
): string[] {
  /** Parts named already, by the kind of joint they want: a headset meets the frame and the steerer, and is one. */
  const named = new Map<string, Set<string>>();
  return together.flatMap(({ topic, faces }) => {
    const partIds = [...new Set(faces.map(({ partId }) => partId))];
    const about = parts.filter(({ partId }) => partIds.includes(partId));
    const [one, other] = about;
    if (!one || !other || about.length > 2) return [];
    const kinds = jointKindsOf(topic, about);
    const [kind] = kinds;
    if (kind === undefined || !mattersHere(kind, about, parts).matters) return [];
    const before = named.get(kind) ?? new Set();
    const joined = joints.some(
      (joint) =>
        holds(joint, partIds) ||
        (kinds.includes(joint.kind) && partIds.some((partId) => holds(joint, [partId]))),
    );
    if (joined || partIds.some((partId) => before.has(partId))) return [];
    named.set(kind, new Set([...before, ...partIds]));
    return [`${one.name} and ${other.name}`];
  });
}
