import { bareNumber } from '../../mechanics/numberText.ts';
import { type FaceKind, faceKinds } from '../../standards/faces/faceKinds.ts';
import type { Sourced } from '../../standards/known.ts';
import type { Face } from '../faces/face.ts';
import type { Judgement, SizeAsked } from '../verdict.ts';

/** How two kinds of faces are judged against each other. */
export interface Rule extends Sourced {
  /** Trade name of the joint; part of a finding's id, so never renamed. */
  topic: string;
  first: FaceKind;
  second: FaceKind;
  risk: string;
  /** Null: these two faces have nothing to say to each other. */
  judge(first: Face, second: Face): Judgement | null;
}

/** Ask for a dimension, with the place of the caliper from the table of face kinds. */
export function askFor(face: Face, key: string, finer = false): SizeAsked {
  const row = faceKinds[face.kind];
  const how =
    key === 'standard'
      ? 'Name its standard: read the stamp, or measure and compare with the table.'
      : (row.dimensions.find((dimension) => dimension.key === key)?.how ??
        row.traits?.find((trait) => trait.key === key)?.how ??
        '');
  return {
    faceId: face.faceId,
    kind: face.kind,
    key,
    how: finer ? `${how} Measure again, finer: the two sizes lie too close for the caliper used.` : how,
  };
}

export const unknown = (because: string, asks: SizeAsked[]): Judgement => ({
  meets: 'unknown',
  because,
  asks,
});

/** A length for a sentence: at most two decimals, none for show. @example mmText(26) //=> '26 mm' */
export const mmText = (value: number): string => `${bareNumber(value)} mm`;
