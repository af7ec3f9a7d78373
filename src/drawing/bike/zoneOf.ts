import type { PartKind } from '../../fit/partKinds.ts';
import { endOf, type PilePart } from '../../fit/pile.ts';
import { type JointArea, type JointKind, jointKindRow } from '../../standards/jointKinds.ts';
import type { BikeZone } from './shape.ts';

type Located = Pick<PilePart, 'kind' | 'name' | 'position'>;

/** The end of the bike that a name speaks of; both or none is no answer. */
function endNamed(name: string): 'front' | 'rear' | undefined {
  const front = /\bfront\b/i.test(name);
  const rear = /\b(rear|back)\b/i.test(name);
  return front === rear ? undefined : front ? 'front' : 'rear';
}

/**
 * The end of the bike at which a part is drawn: what it was given, what its kind tells, or what its name says.
 * @example endDrawn({ kind: 'tyre', name: 'Rear tyre, 50-406' }) //=> 'rear'
 */
export const endDrawn = (part: Located): 'front' | 'rear' | undefined => endOf(part) ?? endNamed(part.name);

const zoneOfKind: Partial<Record<PartKind, BikeZone>> = {
  fork: 'fork-and-bars',
  headset: 'fork-and-bars',
  'top-cap': 'fork-and-bars',
  stem: 'fork-and-bars',
  bar: 'fork-and-bars',
  grips: 'fork-and-bars',
  tape: 'fork-and-bars',
  lever: 'brakes',
  rotor: 'brakes',
  caliper: 'brakes',
  cable: 'brakes',
  'bottom-bracket': 'cranks',
  cranks: 'cranks',
  chainring: 'cranks',
  chain: 'cranks',
  pedals: 'cranks',
  sprocket: 'rear-wheel',
  seatpost: 'saddle',
  'seat-clamp': 'saddle',
  saddle: 'saddle',
  'front-hub': 'front-wheel',
  'rear-hub': 'rear-wheel',
};

const wheelParts: readonly PartKind[] = ['rim', 'rim-tape', 'tyre', 'tube', 'valve', 'spoke-set'];

/**
 * The place of the drawing where a part is shown; a wheel's part without an end counts to the rear wheel.
 * @returns undefined where a part has no one place: a frame, an adapter
 * @example zoneOfPart({ kind: 'stem', name: 'Stem' }) //=> 'fork-and-bars'
 */
export function zoneOfPart(part: Located): BikeZone | undefined {
  if (wheelParts.includes(part.kind)) return endDrawn(part) === 'front' ? 'front-wheel' : 'rear-wheel';
  return zoneOfKind[part.kind];
}

const zoneOfArea: Record<Exclude<JointArea, 'wheels' | 'other'>, BikeZone> = {
  steering: 'fork-and-bars',
  brakes: 'brakes',
  drive: 'cranks',
  saddle: 'saddle',
};
const atTheRearHub: readonly JointKind[] = ['freewheel', 'sprocket', 'lockring', 'rear-axle'];

/**
 * The place of the drawing where a joint is shown, so that each joint of a bike has one.
 * @param joint its kind and name
 * @param parts that meet in it; one that is not known any more is left out
 * @example zoneOfJoint({ kind: 'rotor', name: 'Rotor on front hub' }, []) //=> 'brakes'
 */
export function zoneOfJoint(joint: { kind: JointKind; name: string }, parts: readonly Located[]): BikeZone {
  const { area } = jointKindRow(joint.kind);
  if (atTheRearHub.includes(joint.kind)) return 'rear-wheel';
  if (joint.kind === 'front-axle') return 'front-wheel';
  if (area === 'wheels' || area === 'other') {
    const end = parts.map(endDrawn).find((found) => found) ?? endNamed(joint.name);
    if (area === 'wheels') return end === 'front' ? 'front-wheel' : 'rear-wheel';
    const zone = parts.map(zoneOfPart).find((found) => found);
    return zone ?? (end === 'front' ? 'front-wheel' : 'rear-wheel');
  }
  return zoneOfArea[area];
}
