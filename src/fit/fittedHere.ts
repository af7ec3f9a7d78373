import type { JointKind } from '../standards/jointKinds.ts';
import { rearDrive } from './mattersHere.ts';
import type { PartKind } from './partKinds.ts';
import { type KeptPart, pileOf } from './pileOf.ts';

/** A joint as far as it tells what a bike has. */
export interface WrittenJoint {
  kind: JointKind;
  partIds: readonly string[];
  state: string;
}

/** A bike as it is written down. */
export interface WrittenBike {
  parts: readonly KeptPart[];
  joints: readonly WrittenJoint[];
}

type End = 'front' | 'rear';

interface Evidence {
  parts: readonly PartKind[];
  joints?: readonly JointKind[];
  /** Only what sits at this end counts. */
  end?: End;
}

const wheelAt = (end: End): Record<string, Evidence> => {
  const hub: PartKind = end === 'front' ? 'front-hub' : 'rear-hub';
  const braking: Evidence = {
    end,
    parts: ['caliper', 'rotor'],
    joints: ['caliper', 'rotor', 'cable-anchor'],
  };
  return {
    [`${end}-axle`]: { parts: [hub] },
    [`${end}-hub`]: { parts: [hub] },
    [`${end}-spokes`]: { end, parts: ['spoke-set'], joints: ['spokes'] },
    [`${end}-rim`]: { end, parts: ['rim'] },
    [`${end}-tyre`]: { end, parts: ['tyre'], joints: ['bead'] },
    [`${end}-brake`]: braking,
    [`${end}-rotor`]: braking,
  };
};

/** By item of the pre-ride check, the parts and joints that show that a bike has what it looks at. */
const evidence: Readonly<Record<string, Evidence>> = {
  ...wheelAt('front'),
  fork: { parts: ['fork'] },
  headset: { parts: ['headset'], joints: ['headset'] },
  stem: { parts: ['stem'], joints: ['stem-quill', 'stem-steerer'] },
  bar: { parts: ['bar'], joints: ['bar-clamp'] },
  grips: { parts: ['grips', 'tape'], joints: ['grip'] },
  levers: { parts: ['lever'], joints: ['lever-clamp'] },
  'head-tube': { parts: ['frame'] },
  frame: { parts: ['frame'] },
  'bottom-bracket': { parts: ['bottom-bracket'], joints: ['bottom-bracket'] },
  'crank-arms': { parts: ['cranks'], joints: ['crank', 'crank-pinch'] },
  pedals: { parts: ['pedals'], joints: ['pedal'] },
  chainring: { parts: ['chainring'], joints: ['chainring'] },
  chain: { parts: ['chain'], joints: ['chain'] },
  'saddle-clamp': { parts: ['saddle'], joints: ['saddle-rails'] },
  'post-depth': { parts: ['seatpost'], joints: ['seatpost'] },
  'post-clamp': { parts: ['seatpost'], joints: ['seatpost'] },
  'rack-and-guards': { parts: [], joints: ['mudguard', 'rack'] },
  ...wheelAt('rear'),
  sprockets: { parts: ['sprocket'], joints: ['sprocket', 'freewheel', 'lockring'] },
  dropouts: { parts: ['frame'] },
};

/** Which end a part sits at: as it says itself, or as its kind does. */
function endMatching({ kind, position }: KeptPart): End | undefined {
  if (position) return position;
  if (kind === 'fork' || kind === 'front-hub') return 'front';
  return kind === 'rear-hub' || kind === 'frame' ? 'rear' : undefined;
}

/** Both ends of a bike that may have a brake there. */
export const brakeItems = ['front-brake', 'rear-brake'] as const;

/**
 * Whether a bike is known to have what an item of the pre-ride check looks at, from the parts that are on it and the joints
 * that are together. A rear hub that brakes by back-pedalling is a brake, without rotor, lever or cable.
 * @param itemId an item of `standards/checks/rideCheck.ts`
 * @example fittedHere('front-brake', { parts: [], joints: [] }) //=> false
 */
export function fittedHere(itemId: string, { parts, joints }: WrittenBike): boolean {
  if (itemId === 'rear-brake' && rearDrive(pileOf(parts)) === 'back-pedal') return true;
  const asked = evidence[itemId];
  if (!asked) return false;
  const { end } = asked;
  const kinds: readonly string[] = asked.parts;
  const together = joints.filter(({ kind, state }) => state !== 'apart' && asked.joints?.includes(kind));
  if (!end) return together.length > 0 || parts.some(({ kind }) => kinds.includes(kind));
  const met = together.flatMap(({ partIds }) => parts.filter(({ partId }) => partIds.includes(partId)));
  return (
    parts.some((part) => kinds.includes(part.kind) && endMatching(part) === end) ||
    met.some((part) => endMatching(part) === end)
  );
}

/** What a bike is written down with before it is known what it has not got. */
const whole: readonly PartKind[] = ['frame', 'fork', 'front-hub', 'rear-hub', 'bar', 'cranks'];
/** What a bike may well be without. Racks and bags are not written down as parts. */
const mayLack = ['front-brake', 'front-rotor', 'rear-brake', 'rear-rotor', 'levers'];

/**
 * Whether a bike is known not to have what an item looks at: its parts are all written down, and neither such a part nor
 * one of which the end is not told is among them.
 * @example lackingHere('front-brake', { parts: [], joints: [] }) //=> false
 */
export function lackingHere(itemId: string, bike: WrittenBike): boolean {
  if (!mayLack.includes(itemId) || fittedHere(itemId, bike)) return false;
  if (!whole.every((kind) => bike.parts.some((part) => part.kind === kind))) return false;
  const kinds: readonly string[] = evidence[itemId]?.parts ?? [];
  return !bike.parts.some((part) => kinds.includes(part.kind) && endMatching(part) === undefined);
}
