import type { FaceKind } from '../../standards/faces/faceKinds.ts';
import { type PartKind, partKinds } from '../partKinds.ts';
import type { PilePart } from '../pile.ts';

/** A place on the bike that one part, or a pair of parts that only make sense together, has to fill. */
export interface SetSlot {
  slot: string;
  kinds: readonly PartKind[];
  position?: 'front' | 'rear';
  /**
   * Faces it needs to sit on, and whose they are. Where the first of them is not on its carrier the place is not
   * asked for.
   */
  restsOn?: readonly { on: PartKind; face: FaceKind }[];
}

const one = (kind: PartKind): SetSlot => ({ slot: kind, kinds: [kind] });
const at = (position: 'front' | 'rear', ...kinds: PartKind[]): SetSlot => ({
  slot: `${kinds.join('-')}-${position}`,
  kinds,
  position,
});

/** What a bike cannot roll without. */
export const rollingSlots: readonly SetSlot[] = [
  one('fork'),
  one('headset'),
  one('stem'),
  one('bar'),
  one('grips'),
  one('bottom-bracket'),
  one('cranks'),
  one('chainring'),
  one('chain'),
  one('sprocket'),
  one('pedals'),
  one('rear-hub'),
  at('rear', 'rim'),
  at('rear', 'tyre'),
  one('front-hub'),
  at('front', 'rim'),
  at('front', 'tyre'),
  one('seatpost'),
  one('saddle'),
];

/** A caliper stands over a rotor, so the two are chosen together, wherever there is a mount to screw them to. */
const disc = (position: 'front' | 'rear', carrier: PartKind, hub: PartKind): SetSlot => ({
  ...at(position, 'rotor', 'caliper'),
  restsOn: [
    { on: carrier, face: 'disc-mount' },
    { on: hub, face: 'rotor-seat' },
  ],
});

/** Disc brakes. Brakes of other kinds have no faces here: an end without a disc mount is not judged. */
export const brakeSlots: readonly SetSlot[] = [
  disc('front', 'fork', 'front-hub'),
  disc('rear', 'frame', 'rear-hub'),
];

/** Everything a set is asked for. */
export const bikeSlots: readonly SetSlot[] = [...rollingSlots, ...brakeSlots];

const carries = (part: PilePart, face: FaceKind): boolean => part.faces.some(({ kind }) => kind === face);

/** The part whose faces decide whether a place is asked for. */
export const carrierOf = ({ restsOn }: SetSlot): PartKind | undefined => restsOn?.[0]?.on;

/**
 * Whether a bike of these parts has to have this place filled. While its carrier is not chosen it has: leaving
 * the fork out is no way round the brake.
 */
export function isAskedFor({ restsOn }: SetSlot, parts: readonly PilePart[]): boolean {
  const [first] = restsOn ?? [];
  const carriers = parts.filter(({ kind }) => kind === first?.on);
  return !first || carriers.length === 0 || carriers.some((part) => carries(part, first.face));
}

/** Whether what fills this place finds a face to sit on; parts that are not chosen yet do not speak against it. */
export function canSit({ restsOn = [] }: SetSlot, parts: readonly PilePart[]): boolean {
  return restsOn.every(({ on, face }) => {
    const carriers = parts.filter(({ kind }) => kind === on);
    return carriers.length === 0 || carriers.some((part) => carries(part, face));
  });
}

/**
 * What could fill a slot: lists of parts, one of each kind, put where the slot is.
 * @example candidatesFor({ slot: 'stem', kinds: ['stem'] }, shelf).length //=> stems on the shelf
 */
export function candidatesFor(slot: SetSlot, shelf: readonly PilePart[]): PilePart[][] {
  return slot.kinds.reduce<PilePart[][]>(
    (rows, kind) =>
      rows.flatMap((row) =>
        shelf
          .filter((part) => part.kind === kind)
          .filter(({ position }) => !position || !slot.position || position === slot.position)
          .map((part) => [...row, slot.position ? { ...part, position: slot.position } : part]),
      ),
    [[]],
  );
}

/** @example slotLabel({ slot: 'rim-rear', kinds: ['rim'], position: 'rear' }) //=> 'rim, rear' */
export const slotLabel = ({ kinds, position }: SetSlot): string =>
  `${kinds.map((kind) => partKinds[kind].label).join(' and ')}${position ? `, ${position}` : ''}`;
