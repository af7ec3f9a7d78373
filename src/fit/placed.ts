import type { FaceKind } from '../standards/faces/faceKinds.ts';
import { askFor } from './bridges/rule.ts';
import type { Face } from './faces/face.ts';
import { readingOf, type SizeReading } from './faces/reading.ts';
import type { PlacedAsk } from './finding.ts';
import type { PartKind } from './partKinds.ts';
import type { FaceRef, PilePart } from './pile.ts';
import type { SizeAsked } from './verdict.ts';

/** A face together with the part it belongs to. */
export interface Placed {
  part: PilePart;
  face: Face;
  ref: FaceRef;
}

/** All faces of a kind in a pile, on parts of a kind if one is given. */
export const facesOf = (parts: readonly PilePart[], kind: FaceKind, on?: PartKind): Placed[] =>
  parts
    .filter((part) => on === undefined || part.kind === on)
    .flatMap((part) =>
      part.faces
        .filter((face) => face.kind === kind)
        .map((face) => ({ part, face, ref: { partId: part.partId, faceId: face.faceId } })),
    );

/** The one face of a kind in a pile: undefined when there is none, or a choice has not been made yet. */
export function onlyFace(parts: readonly PilePart[], kind: FaceKind, on?: PartKind): Placed | undefined {
  const [first, ...more] = facesOf(parts, kind, on);
  return more.length === 0 ? first : undefined;
}

/** What to measure on a part. @example askAt('fork', steerer, 'lengthMm').partId //=> 'fork' */
export const askAt = (partId: string, face: Face, key: string, finer = false): PlacedAsk => ({
  ...askFor(face, key, finer),
  partId,
});

/**
 * What a rule asks about two faces, each with its part. The faces of a rule are never of one kind, which is more
 * than can be said of their ids.
 */
export const asksOfPair = (
  asks: readonly SizeAsked[],
  one: { partId: string; kind: FaceKind },
  other: { partId: string },
): PlacedAsk[] => asks.map((ask) => ({ ...ask, partId: (ask.kind === one.kind ? one : other).partId }));

/** Readings of several faces, or what to measure to have them all. */
export function readAll<K extends string>(
  wanted: Record<K, readonly [Placed, string]>,
): { readings: Record<K, SizeReading> } | { asks: PlacedAsk[] } {
  const asks: PlacedAsk[] = [];
  const readings: Partial<Record<K, SizeReading>> = {};
  for (const name of Object.keys(wanted) as K[]) {
    const [placed, key] = wanted[name];
    const reading = readingOf(placed.face, key);
    if (reading) readings[name] = reading;
    else asks.push(askAt(placed.part.partId, placed.face, key));
  }
  return asks.length > 0 ? { asks } : { readings: readings as Record<K, SizeReading> };
}
