import { linksOf } from '../bridges/links.ts';
import type { Bridging } from '../bridges/shelfAdapter.ts';
import { checkPile, type PileCheck, refuseTwins } from '../checkPile.ts';
import { bridgingKinds, type PartKind } from '../partKinds.ts';
import { type PilePart, shelfOf } from '../pile.ts';
import { type CheapestSet, cheapestChoices } from './cheapestChoices.ts';
import { piecesToBuy } from './piecesToBuy.ts';
import { costOf, noCost, type SetCost, tieOf } from './setCost.ts';
import { bikeSlots, carrierOf, isAskedFor, type SetSlot } from './setSlots.ts';
import { setTables } from './setTables.ts';
import { type WantedFace, wantedFaces } from './wanted.ts';

export interface CompleteSet {
  /** Parts by slot; a slot nothing fits is not in it. */
  filled: readonly { slot: string; parts: readonly PilePart[] }[];
  /** Slots left empty that this bike asks for. */
  missing: readonly string[];
  /** Counted over the fit check below. */
  cost: SetCost;
  /** All parts together, or null when one of them has not been weighed. */
  massG: number | null;
  /** The fit check of the frame with these parts and the shelf's adapters. */
  check: PileCheck;
}

export interface SetsOptions {
  slots?: readonly SetSlot[];
  /** Among equals: the lightest set, or the one that keeps most of what is adjusted already. */
  tie?: 'mass' | 'adjusted';
  /** Sets wanted at most. */
  limit?: number;
}

/** A place no choice of parts can fill without emptying another. */
export interface PlaceToBuy {
  slot: string;
  /** What of it is not at hand; everything, when what is at hand does not suit. */
  kinds: readonly PartKind[];
  /** What it would have to suit. */
  wanted: readonly WantedFace[];
}

export interface CompleteSets {
  /** Best first; all leave as few places empty as this shelf allows. */
  sets: readonly CompleteSet[];
  toBuy: readonly PlaceToBuy[];
  /** Adapters and shims that all of these sets need and that are not on the shelf. */
  pieces: readonly Bridging[];
}

/**
 * The sets of parts that make a whole bike of one frame with the least between them: no empty place if there is
 * a way, then fewest one-way changes, fewest bridges, fewest open questions, and then by the tie wanted.
 * The answer is exact: it is the one that trying every choice of parts would give.
 * @param shelf parts at hand, adapters among them; other frames are ignored
 * @param frame the frame every part has to suit
 * @returns best first, and what has to be bought
 * @throws RangeError when a part id occurs twice
 * @example completeSets(shelf, frame).sets[0]?.cost.bridgeCount //=> 5
 */
export function completeSets(
  shelf: readonly PilePart[],
  frame: PilePart,
  { slots = bikeSlots, tie = 'mass', limit = 5 }: SetsOptions = {},
): CompleteSets {
  refuseTwins([frame, ...shelf]);
  const adapterParts = shelf.filter(({ kind }) => bridgingKinds.includes(kind));
  const { options, singles, joint, notMissing } = setTables(frame, shelf, {
    slots,
    tie,
    links: linksOf(shelfOf(shelf)),
  });

  const sets: CompleteSet[] = [];
  for (const choice of cheapestChoices(singles, joint)) {
    const missing = missingOf(choice);
    if (sets.length >= limit || (sets[0] && missing.length > sets[0].missing.length)) break;
    sets.push(asSet(choice, missing));
  }
  return {
    sets,
    toBuy: sets[0] ? neverFilled(sets[0]) : [],
    pieces: piecesToBuy(sets.map(({ check }) => check)),
  };

  function partsOf(choice: CheapestSet): PilePart[] {
    return choice.options.flatMap((option, place) => options[place]?.[option] ?? []);
  }

  function missingOf(choice: CheapestSet): string[] {
    const chosen = [frame, ...partsOf(choice)];
    return slots
      .filter(
        (slot, place) =>
          options[place]?.[choice.options[place] ?? 0]?.length === 0 && isAskedFor(slot, chosen),
      )
      .map(({ slot }) => slot);
  }

  function asSet(choice: CheapestSet, missing: readonly string[]): CompleteSet {
    const parts = partsOf(choice);
    const check = checkPile([frame, ...parts, ...adapterParts]);
    return {
      filled: slots.flatMap(({ slot }, place) => {
        const own = options[place]?.[choice.options[place] ?? 0] ?? [];
        return own.length > 0 ? [{ slot, parts: own }] : [];
      }),
      missing,
      cost: {
        ...(costOf([...check.findings, ...check.toMeasure]) ?? noCost),
        missingCount: missing.length,
        tie: tieOf(parts, tie),
      },
      massG: massOf(parts),
      check,
    };
  }

  function carrierIsMissing(slot: SetSlot, { missing }: CompleteSet): boolean {
    const carrier = carrierOf(slot);
    return slots.some((other) => carrier && other.kinds.includes(carrier) && missing.includes(other.slot));
  }

  /** A slot is to be bought when every set that has it, or does not ask for it, leaves more places empty. */
  function neverFilled(best: CompleteSet): PlaceToBuy[] {
    const chosen = [frame, ...best.filled.flatMap(({ parts }) => parts)];
    return slots
      .filter((slot, index) => {
        // Whether a fork that is still to be bought will ask for a brake is not known.
        if (!best.missing.includes(slot.slot) || carrierIsMissing(slot, best)) return false;
        const { value } = cheapestChoices(singles, [...joint, notMissing(index)]).next();
        return !value || missingOf(value).length > best.missing.length;
      })
      .map((slot) => {
        const lacking = slot.kinds.filter((kind) => !shelf.some((part) => part.kind === kind));
        const kinds = lacking.length > 0 ? lacking : slot.kinds;
        return { slot: slot.slot, kinds, wanted: wantedFaces({ ...slot, kinds }, chosen) };
      });
  }
}

const massOf = (parts: readonly PilePart[]): number | null =>
  parts.every(({ massG }) => massG !== undefined)
    ? parts.reduce((sum, { massG }) => sum + (massG ?? 0), 0)
    : null;
