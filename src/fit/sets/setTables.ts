import type { FaceKind } from '../../standards/faces/faceKinds.ts';
import type { Links } from '../bridges/links.ts';
import { partnersOf } from '../bridges/meet.ts';
import { findingsBetween } from '../pairFindings.ts';
import type { PartKind } from '../partKinds.ts';
import type { PilePart } from '../pile.ts';
import { ofOnePart, ofSeveralParts, ofTwoParts } from '../wholes/wholes.ts';
import type { JointCost } from './cheapestChoices.ts';
import { noCost, tieOf, weigh, weighFindings } from './setCost.ts';
import { candidatesFor, canSit, carrierOf, isAskedFor, type SetSlot } from './setSlots.ts';

/** What may fill each place, and what every choice costs: everything the search has to know. */
export interface SetTables {
  /** Per place the parts of each option; the last option is to leave it empty. */
  options: readonly (readonly (readonly PilePart[])[])[];
  singles: readonly (readonly number[])[];
  joint: readonly JointCost[];
  /** Forbids leaving a place empty where the bike asks for it. */
  notMissing(place: number): JointCost;
}

const NO = Number.POSITIVE_INFINITY;
const EMPTY = weigh({ ...noCost, missingCount: 1 });

/**
 * Lays out what a bike of this frame costs by what its parts cost alone, in pairs and in the few groups that only
 * tell together. Added up, the tables are the cost of the fit check of the whole set, less what no choice changes.
 */
export function setTables(
  frame: PilePart,
  shelf: readonly PilePart[],
  { slots, tie, links }: { slots: readonly SetSlot[]; tie: 'mass' | 'adjusted'; links: Links },
): SetTables {
  const weighed = slots.map((slot) => {
    const filled = candidatesFor(slot, shelf)
      .map((parts) => ({ parts, cost: weighAlone(slot, parts) }))
      // What cannot be on this frame at all need not be held against anything else.
      .filter(({ cost }) => cost < NO);
    return [...filled, { parts: [], cost: 0 }];
  });
  const options = weighed.map((row) => row.map(({ parts }) => parts));
  const faceKinds = options.map((row) => [
    ...new Set(row.flat().flatMap(({ faces }) => faces.map(({ kind }) => kind))),
  ]);
  const places = [...slots.keys()];
  const readTogether = ofTwoParts.map(({ reads }) => placesCarrying(reads));
  const joint = [
    ...places.map((place) => missed(place, EMPTY)),
    ...places.flatMap((one) =>
      places
        .slice(one + 1)
        .filter((other) => concern(one, other))
        .map((other) => tableOf([one, other], weighPair)),
    ),
    ...ofSeveralParts.map(({ reads, findings }) =>
      tableOf(placesCarrying(reads), (groups) => weighFindings(findings([frame, ...groups.flat()]))),
    ),
  ].filter(({ costs }) => costs.some((cost) => cost > 0));
  return {
    options,
    singles: weighed.map((row) => row.map(({ cost }) => cost)),
    joint,
    notMissing: (place) => missed(place, NO),
  };

  function weighAlone(slot: SetSlot, parts: readonly PilePart[]): number {
    if (!canSit(slot, [frame])) return NO;
    const alone = weighFindings(ofOnePart.flatMap((judge) => judge(parts)));
    return alone + weighTogether([frame], parts) + tieOf(parts, tie);
  }

  /** What an empty place costs: whether it is missed depends on its carrier, where that is chosen too. */
  function missed(place: number, cost: number): ReturnType<typeof tableOf> {
    const slot = slots[place];
    const carrier = slot && carrierOf(slot);
    const carriers = places.filter((at) => carrier && slots[at]?.kinds.includes(carrier));
    return tableOf([...carriers, place], (groups) => {
      const chosen = [frame, ...groups.flat()];
      return slot && groups.at(-1)?.length === 0 && isAskedFor(slot, chosen) ? cost : 0;
    });
  }

  function weighTogether(one: readonly PilePart[], other: readonly PilePart[]): number {
    const all = [...one, ...other];
    return weighFindings([
      ...one.flatMap((a) => other.flatMap((b) => findingsBetween(a, b, all, links))),
      ...ofTwoParts.flatMap(({ findings }) => findings(all)),
    ]);
  }

  function weighPair(
    [ours = [], theirs = []]: readonly (readonly PilePart[])[],
    [one = -1, other = -1]: readonly number[],
  ): number {
    // A part cannot be in two places.
    if (ours.some(({ partId }) => theirs.some((part) => part.partId === partId))) return NO;
    const seated = [
      { slot: slots[one], parts: ours, beside: theirs },
      { slot: slots[other], parts: theirs, beside: ours },
    ].every(({ slot, parts, beside }) => !slot || parts.length === 0 || canSit(slot, beside));
    return seated ? weighTogether(ours, theirs) : NO;
  }

  /** Whether anything in one place can have to do with anything in another; most places never touch. */
  function concern(one: number, other: number): boolean {
    const [ours, theirs] = [kindsAt(one), kindsAt(other)];
    return (
      ours.some((kind) => theirs.includes(kind)) ||
      restsOn(one).some((kind) => theirs.includes(kind)) ||
      restsOn(other).some((kind) => ours.includes(kind)) ||
      facesAt(one).some((face) => partnersOf(face).some((partner) => facesAt(other).includes(partner))) ||
      readTogether.some((carrying) => carrying.includes(one) && carrying.includes(other))
    );
  }

  function kindsAt(place: number): readonly PartKind[] {
    return slots[place]?.kinds ?? [];
  }

  function restsOn(place: number): readonly PartKind[] {
    return slots[place]?.restsOn?.map(({ on }) => on) ?? [];
  }

  function facesAt(place: number): readonly FaceKind[] {
    return faceKinds[place] ?? [];
  }

  function placesCarrying(reads: readonly (readonly [FaceKind, PartKind?])[]): number[] {
    const isRead = (part: PilePart): boolean =>
      reads.some(([kind, on]) => (!on || part.kind === on) && part.faces.some((face) => face.kind === kind));
    return places.filter((place) => options[place]?.flat().some(isRead));
  }

  function tableOf(
    at: readonly number[],
    costOf: (groups: readonly (readonly PilePart[])[], at: readonly number[]) => number,
  ): { places: readonly number[]; costs: number[] } {
    const groups = at.reduce<(readonly PilePart[])[][]>(
      (rows, place) => rows.flatMap((row) => (options[place] ?? []).map((parts) => [...row, parts])),
      [[]],
    );
    return { places: at, costs: groups.map((row) => costOf(row, at)) };
  }
}
