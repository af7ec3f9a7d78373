import type { PartKind } from '../../fit/partKinds.ts';
import type { JointKind } from '../../standards/jointKinds.ts';

/** Which parts usually meet at a joint, so that they stand first in the form. Common practice, no source. */
const likely: Record<JointKind, readonly PartKind[]> = {
  spokes: ['rim', 'front-hub', 'rear-hub', 'spoke-set'],
  bead: ['tyre', 'rim', 'tube', 'valve', 'rim-tape'],
  rotor: ['rotor', 'front-hub', 'rear-hub'],
  freewheel: ['sprocket', 'rear-hub'],
  sprocket: ['sprocket', 'rear-hub'],
  lockring: ['sprocket', 'rear-hub', 'rotor', 'front-hub'],
  'crown-race': ['headset', 'fork'],
  headset: ['headset', 'frame', 'fork'],
  fork: ['fork', 'frame', 'headset'],
  'stem-quill': ['stem', 'fork'],
  'stem-steerer': ['stem', 'fork'],
  'bottom-bracket': ['bottom-bracket', 'frame'],
  'brake-mount': ['adapter', 'frame', 'fork', 'caliper'],
  seatpost: ['seatpost', 'frame', 'seat-clamp'],
  'saddle-rails': ['saddle', 'seatpost'],
  'front-axle': ['front-hub', 'fork'],
  'thru-axle': ['front-hub', 'rear-hub', 'fork', 'frame'],
  'rear-axle': ['rear-hub', 'frame'],
  chainring: ['chainring', 'cranks'],
  crank: ['cranks', 'bottom-bracket'],
  'crank-pinch': ['cranks', 'bottom-bracket'],
  pedal: ['pedals', 'cranks'],
  chain: ['chain', 'chainring', 'sprocket'],
  'bar-clamp': ['bar', 'stem'],
  'lever-clamp': ['lever', 'bar'],
  grip: ['grips', 'bar', 'tape'],
  caliper: ['caliper', 'fork', 'frame', 'adapter'],
  'cable-anchor': ['cable', 'caliper', 'lever'],
  mudguard: ['frame', 'fork', 'other'],
  rack: ['frame', 'fork', 'other'],
  other: [],
};

/**
 * Parts of a bike parted into those that usually meet at a kind of joint and the rest.
 * @param chosen ids already chosen; they always stand with the likely ones
 */
export function likelyFirst<P extends { partId: string; kind: string }>(
  parts: readonly P[],
  kind: JointKind | '',
  chosen: readonly string[],
): { likely: P[]; others: P[] } {
  const kinds: readonly string[] = kind === '' ? [] : likely[kind];
  const first = ({ partId, kind: partKind }: P) => chosen.includes(partId) || kinds.includes(partKind);
  const near = parts.filter(first);
  return near.length === 0
    ? { likely: [...parts], others: [] }
    : { likely: near, others: parts.filter((part) => !first(part)) };
}
