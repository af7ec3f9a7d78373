import type { Face } from './faces/face.ts';
import { type PartKind, partKinds } from './partKinds.ts';
import type { PilePart } from './pile.ts';

/** What a part of the logbook has to say for the fit check. */
export interface KeptPart {
  partId: string;
  kind: string;
  name: string;
  faces?: readonly Face[] | undefined;
  position?: PilePart['position'] | undefined;
  massG?: number | undefined;
}

/**
 * Parts of the logbook as the fit check takes them. A kind the check does not know has no rules and counts as
 * another part; of two faces with one id, as a hand-made file may hold, the first counts.
 * @example pileOf([{ partId: 'p1', kind: 'stem', name: 'Stem', … }])[0]?.faces //=> []
 */
export function pileOf(rows: readonly KeptPart[]): PilePart[] {
  return rows.map(({ partId, kind, name, faces = [], position, massG }) => ({
    partId,
    kind: kind in partKinds ? (kind as PartKind) : 'other',
    name,
    faces: faces.filter((face, at) => faces.findIndex(({ faceId }) => faceId === face.faceId) === at),
    ...(position ? { position } : {}),
    ...(massG === undefined ? {} : { massG }),
  }));
}
