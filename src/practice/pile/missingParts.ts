import type { PilePart } from '../../fit/pile.ts';
import { candidatesFor, rollingSlots, type SetSlot, slotLabel } from '../../fit/sets/setSlots.ts';
import { type WantedFace, wantedFaces } from '../../fit/sets/wanted.ts';
import { faceKinds } from '../../standards/faces/faceKinds.ts';
import { faceKnown } from '../../words/faceText.ts';
import { sentenceCase } from '../../words/sentenceCase.ts';

export interface MissingPart {
  slot: string;
  label: string;
  /** Which face of which part it has to suit, and how big that is. */
  suits: readonly string[];
}

/** The frame stands first: everything else is held against it. */
const slots: readonly SetSlot[] = [{ slot: 'frame', kinds: ['frame'] }, ...rollingSlots];

/** What a part for a place would have to suit, in words. */
export function suitWords(wanted: readonly WantedFace[], parts: readonly PilePart[]): string[] {
  return wanted.map(({ partId, against }) => {
    const name = parts.find((part) => part.partId === partId)?.name ?? '';
    return `${name}, ${faceKinds[against.kind].label}: ${faceKnown(against)}`;
  });
}

/**
 * Places of a bike no part here could fill, each with what the part would have to suit.
 * @example missingParts([]).length //=> 20
 */
export function missingParts(parts: readonly PilePart[]): MissingPart[] {
  return slots
    .filter((slot) => candidatesFor(slot, parts).length === 0)
    .map((slot) => ({
      slot: slot.slot,
      label: sentenceCase(slotLabel(slot)),
      suits: suitWords(wantedFaces(slot, parts), parts),
    }));
}

/**
 * Ends of the bike without a disc caliper. Other brakes have no faces here, so this is a question, not a verdict.
 * @example endsWithoutCaliper(magpie) //=> ['rear']
 */
export function endsWithoutCaliper(parts: readonly PilePart[]): ('front' | 'rear')[] {
  const calipers = parts.filter(({ kind }) => kind === 'caliper');
  return (['front', 'rear'] as const).filter(
    (end) => !calipers.some(({ position }) => position === undefined || position === end),
  );
}
