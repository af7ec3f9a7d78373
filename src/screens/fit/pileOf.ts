import { type PartKind, partKinds } from '../../fit/partKinds.ts';
import type { PilePart } from '../../fit/pile.ts';
import type { PartRow } from '../../journal/rows.ts';

/**
 * Parts of the logbook as the fit check takes them. A kind the check does not know has no rules and counts as
 * another part; of two faces with one id, as a hand-made file may hold, the first counts.
 * @example pileOf([{ partId: 'p1', kind: 'stem', name: 'Stem', … }])[0]?.faces //=> []
 */
export function pileOf(rows: readonly PartRow[]): PilePart[] {
  return rows.map(({ partId, kind, name, faces = [], position, massG }) => ({
    partId,
    kind: kind in partKinds ? (kind as PartKind) : 'other',
    name,
    faces: faces.filter((face, at) => faces.findIndex(({ faceId }) => faceId === face.faceId) === at),
    ...(position ? { position } : {}),
    ...(massG === undefined ? {} : { massG }),
  }));
}
