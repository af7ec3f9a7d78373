import { type Choice, cheapestChoices, type PairCost } from './cheapestChoices.ts';
import { checkPile, type PileCheck } from './checkPile.ts';
import { linksOf } from './links.ts';
import { bridgingKinds } from './partKinds.ts';
import { type PilePart, shelfOf } from './pile.ts';
import { type SetCost, unweigh, weigh, weighAlone, weighTogether } from './setCost.ts';
import { candidatesFor, rollingSlots, type SetSlot } from './setSlots.ts';
import { type WantedFace, wantedFaces } from './wanted.ts';

export interface CompleteSet {
  /** Parts by slot; a slot nothing fits is not in it. */
  filled: readonly { slot: string; parts: readonly PilePart[] }[];
  /** Slots left empty. */
  missing: readonly string[];
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

export interface CompleteSets {
  /** Best first; all leave as few places empty as this shelf allows. */
  sets: readonly CompleteSet[];
  /** What no choice of parts can fill without emptying another place, and what it would have to suit. */
  toBuy: readonly { slot: string; wanted: readonly WantedFace[] }[];
}

/** More than this many choices in a row that only the whole pile refuses, and the search stops. */
const REFUSED_MOST = 500;

/**
 * The sets of parts that make a whole bike of one frame with the least between them: no empty place if there is
 * a way, then fewest one-way changes, fewest bridges, fewest open questions, and then by the tie wanted.
 * @param shelf parts at hand, adapters among them; other frames are ignored
 * @param frame the frame every part has to suit
 * @returns best first, and what has to be bought
 * @throws RangeError when a part id occurs twice
 * @example completeSets(shelf, frame).sets[0]?.cost.bridgeCount //=> 5
 */
export function completeSets(
  shelf: readonly PilePart[],
  frame: PilePart,
  { slots = rollingSlots, tie = 'mass', limit = 5 }: SetsOptions = {},
): CompleteSets {
  const adapters = linksOf(shelfOf(shelf));
  const adapterParts = shelf.filter(({ kind }) => bridgingKinds.includes(kind));
  // The last option of every slot is to leave it empty.
  const options = slots.map((slot) => candidatesFor(slot, shelf));
  const singles = options.map((candidates) => [
    ...candidates.map(
      (parts) => weighAlone(parts) + weighTogether([frame], parts, adapters) + tieOf(parts, tie),
    ),
    weigh({ missingCount: 1, oneWayCount: 0, bridgeCount: 0, openCount: 0, tie: 0 }),
  ]);
  const pairs: PairCost[] = [];
  for (const [one, ours] of options.entries())
    for (const [other, theirs] of options.entries()) {
      if (other <= one) continue;
      const cost = [
        ...ours.map((a) => [...theirs.map((b) => weighTogether(a, b, adapters)), 0]),
        [...theirs.map(() => 0), 0],
      ];
      if (cost.some((row) => row.some((value) => value > 0))) pairs.push({ one, other, cost });
    }

  const isEmpty = ({ options: taken }: Choice, slot: number): boolean =>
    taken[slot] === options[slot]?.length;
  const sets: CompleteSet[] = [];
  for (const set of soundSets(singles)) {
    const [best] = sets;
    if (sets.length >= limit || (best && set.missing.length > best.missing.length)) break;
    sets.push(set);
  }
  return { sets, toBuy: sets[0] ? neverFilled(sets[0]) : [] };

  /** Sets in order of cost that also pass what takes more than two parts to judge, such as the steerer's length. */
  function* soundSets(costs: readonly (readonly number[])[]): Generator<CompleteSet> {
    let refused = 0;
    for (const choice of cheapestChoices(costs, pairs)) {
      const set = asSet(choice);
      if (set.check.findings.every(({ outcome }) => outcome !== 'does-not-fit')) yield set;
      else if (++refused > REFUSED_MOST) return;
    }
  }

  function asSet(choice: Choice): CompleteSet {
    const filled = slots.flatMap(({ slot }, index) => {
      const parts = options[index]?.[choice.options[index] ?? -1];
      return parts ? [{ slot, parts }] : [];
    });
    return {
      filled,
      missing: slots.filter((_, index) => isEmpty(choice, index)).map(({ slot }) => slot),
      cost: unweigh(choice.cost),
      massG: massOf(filled.flatMap(({ parts }) => parts)),
      check: checkPile([frame, ...filled.flatMap(({ parts }) => parts), ...adapterParts]),
    };
  }

  /** A slot is to be bought when filling it by force leaves more places empty than the best set does. */
  function neverFilled(best: CompleteSet): CompleteSets['toBuy'] {
    const chosen = [frame, ...best.filled.flatMap(({ parts }) => parts)];
    return slots
      .filter(({ slot }, index) => {
        if (!best.missing.includes(slot)) return false;
        const forced = singles.map((costs, place) =>
          place === index ? [...costs.slice(0, -1), Number.POSITIVE_INFINITY] : costs,
        );
        const { value } = soundSets(forced).next();
        return !value || value.missing.length > best.missing.length;
      })
      .map((slot) => ({ slot: slot.slot, wanted: wantedFaces(slot, chosen) }));
  }
}

/** Counted for a part nobody has weighed, so that it does not win by that. */
const UNWEIGHED_G = 5000;

const massOf = (parts: readonly PilePart[]): number | null =>
  parts.every(({ massG }) => massG !== undefined)
    ? parts.reduce((sum, { massG }) => sum + (massG ?? 0), 0)
    : null;

function tieOf(parts: readonly PilePart[], tie: 'mass' | 'adjusted'): number {
  if (tie === 'adjusted') return parts.filter(({ adjusted }) => !adjusted).length;
  return parts.reduce((sum, { massG }) => sum + (massG ?? UNWEIGHED_G), 0);
}
