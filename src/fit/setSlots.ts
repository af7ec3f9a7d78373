import { type PartKind, partKinds } from './partKinds.ts';
import type { PilePart } from './pile.ts';

/** A place on the bike that one part, or a pair of parts that only make sense together, has to fill. */
export interface SetSlot {
  slot: string;
  kinds: readonly PartKind[];
  position?: 'front' | 'rear';
}

const one = (kind: PartKind): SetSlot => ({ slot: kind, kinds: [kind] });
const at = (position: 'front' | 'rear', ...kinds: PartKind[]): SetSlot => ({
  slot: `${kinds.join('-')}-${position}`,
  kinds,
  position,
});

/** What a bike cannot roll without. Brakes come on top: see `brakeSlots`. */
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

/** Disc brakes: a caliper stands over a rotor, so the two are chosen together. */
export const brakeSlots: readonly SetSlot[] = [
  at('front', 'rotor', 'caliper'),
  at('rear', 'rotor', 'caliper'),
];

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
