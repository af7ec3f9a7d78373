import type { FaceKind } from '../../standards/faces/faceKinds.ts';
import { ruleFor } from '../bridges/meet.ts';
import type { Face } from '../faces/face.ts';
import { partKinds } from '../partKinds.ts';
import { endOf, type PilePart } from '../pile.ts';
import type { SetSlot } from './setSlots.ts';

/** A face a part to be bought must have, told by the face it has to sit on. */
export interface WantedFace {
  kind: FaceKind;
  partId: string;
  against: Face;
}

/**
 * What the parts around an empty slot ask of the part to be bought.
 * @example wantedFaces({ slot: 'stem', kinds: ['stem'] }, [fork]) //=> [{ kind: 'steerer-clamp', partId: 'fork', … }]
 */
export function wantedFaces(slot: SetSlot, around: readonly PilePart[]): WantedFace[] {
  return slot.kinds.flatMap((kind) => {
    const end = endOf({ kind, ...(slot.position ? { position: slot.position } : {}) });
    return partKinds[kind].faces.flatMap((wanted) =>
      around
        .filter((part) => end === undefined || endOf(part) === undefined || endOf(part) === end)
        .flatMap((part) =>
          part.faces
            .filter((face) => ruleFor(wanted, face.kind))
            .map((against) => ({ kind: wanted, partId: part.partId, against })),
        ),
    );
  });
}
