import { type JointKind, jointKindRow } from '../standards/jointKinds.ts';
import type { Finding } from './finding.ts';
import { endOf, type PilePart } from './pile.ts';

/** What a joint of the logbook has to say for the fit check. */
export interface KeptJoint {
  kind: JointKind;
  state: string;
  partIds: readonly string[];
  between: readonly { kind: string; partId?: string | undefined }[];
}

/** Kinds of joint a finding may stand for; the first is the one to make. Common practice, no source. */
const ofTopic: Readonly<Record<string, readonly JointKind[]>> = {
  'headset-upper': ['headset'],
  'headset-lower': ['headset'],
  'headset-on-steerer': ['headset'],
  'cap-on-steerer': ['headset'],
  'crown-race-on-fork': ['crown-race'],
  'stem-on-steerer': ['stem-steerer'],
  'quill-in-steerer': ['stem-quill'],
  'bar-in-stem': ['bar-clamp'],
  'grip-on-bar': ['grip'],
  'lever-on-bar': ['lever-clamp'],
  'post-in-seat-tube': ['seatpost'],
  'seat-clamp-on-tube': ['seatpost'],
  'saddle-on-post': ['saddle-rails'],
  'bottom-bracket-in-shell': ['bottom-bracket'],
  'crank-width': ['bottom-bracket'],
  'spindle-in-bearing': ['crank-pinch', 'crank'],
  'crank-on-square': ['crank'],
  'ring-on-spider': ['chainring'],
  'chain-on-ring': ['chain'],
  'chain-on-sprocket': ['chain'],
  'sprocket-on-hub': ['sprocket', 'freewheel'],
  'pedal-in-crank': ['pedal'],
  'rotor-on-hub': ['rotor'],
  'caliper-on-mount': ['caliper', 'brake-mount'],
  'spokes-hub-rim': ['spokes'],
  'tyre-on-rim': ['bead'],
};

const axleTopics = new Set(['axle-in-slot', 'hub-between-ends']);

/** The end of the bike a finding's parts belong to, where one of them tells. */
function endOfParts(parts: readonly PilePart[]): 'front' | 'rear' | undefined {
  return parts.map(endOf).find((end) => end !== undefined);
}

/**
 * The kinds of joint a finding between two parts stands for; for what the trade gives no name, another joint.
 * @example jointKindsOf('bar-in-stem', [bar, stem]) //=> ['bar-clamp']
 */
export function jointKindsOf(topic: string, parts: readonly PilePart[]): readonly JointKind[] {
  if (axleTopics.has(topic)) {
    return endOfParts(parts) === 'front' ? ['front-axle', 'thru-axle'] : ['rear-axle', 'thru-axle'];
  }
  return ofTopic[topic] ?? ['other'];
}

/**
 * Whether a joint is still together and holds all these parts.
 * @example holds({ kind: 'pedal', state: 'torqued', partIds: ['pedals', 'cranks'], between: [] }, ['cranks']) //=> true
 */
export const holds = (joint: KeptJoint, partIds: readonly string[]): boolean =>
  joint.state !== 'apart' && partIds.every((partId) => joint.partIds.includes(partId));

/** A joint of the bike, still together, of one of these kinds, that holds all these parts. */
export function jointHolding<J extends KeptJoint>(
  joints: readonly J[],
  kinds: readonly JointKind[],
  partIds: readonly string[],
): J | undefined {
  return joints.find((joint) => kinds.includes(joint.kind) && holds(joint, partIds));
}

const bridges: readonly string[] = ['adapter', 'shim', 'spacer', 'washer'];

/**
 * What the joints of the bike already say lies between the two parts of a finding: a shim or spacer in their
 * joint, or a third part that has a joint of the same kind with each of them.
 * @returns the joint that says so and the ids of what lies between, or undefined
 */
export function alreadyBetween<J extends KeptJoint>(
  finding: Finding,
  parts: readonly PilePart[],
  joints: readonly J[],
): { joint: J; partIds: string[] } | undefined {
  const partIds = [...new Set(finding.faces.map(({ partId }) => partId))];
  const [one, other] = partIds;
  if (!one || !other || partIds.length > 2) return undefined;
  const about = parts.filter(({ partId }) => partIds.includes(partId));
  const kinds = jointKindsOf(finding.topic, about);
  const direct = jointHolding(joints, kinds, partIds);
  const inIt = direct?.between.filter(({ kind }) => bridges.includes(kind)) ?? [];
  if (direct && inIt.length > 0)
    return { joint: direct, partIds: inIt.flatMap(({ partId }) => (partId ? [partId] : [])) };
  for (const { partId, kind } of parts) {
    if (kind !== 'adapter') continue;
    const near = jointHolding(joints, kinds, [one, partId]);
    if (near && jointHolding(joints, kinds, [other, partId])) return { joint: near, partIds: [partId] };
  }
  return undefined;
}

/** A name for a new joint. @example jointName('rear-axle', 'hub-between-ends', [hub, frame]) //=> 'Rear axle nuts' */
export function jointName(kind: JointKind, topicName: string, parts: readonly PilePart[]): string {
  const name = kind === 'other' ? topicName : jointKindRow(kind).label;
  const end = endOfParts(parts);
  return end &&
    !name.toLowerCase().includes(end) &&
    ['wheels', 'brakes', 'other'].includes(jointKindRow(kind).area)
    ? `${name}, ${end}`
    : name;
}
