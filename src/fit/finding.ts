import type { Known } from '../standards/known.ts';
import type { Bridge } from './bridges/bridge.ts';
import type { FaceRef } from './pile.ts';
import type { FitOutcome, SizeAsked } from './verdict.ts';

/** What would settle a finding, and on which part it is measured: ids of faces are only a part's own. */
export interface PlacedAsk extends SizeAsked {
  partId: string;
}

/** One answer of the fit check. Its id is the same as long as the same faces are asked the same question. */
export interface Finding {
  findingId: string;
  topic: string;
  outcome: FitOutcome;
  /** The faces it is about: two for a joint, one or more for a part or a row of joints. */
  faces: readonly FaceRef[];
  /** What was found, as a sentence. */
  because: string;
  bridges: readonly Bridge[];
  asks: readonly PlacedAsk[];
  notes: readonly string[];
  risk: string;
  source: string;
  known: Known;
}

/** @example findingIdOf('bar-in-stem', [stemFace, barFace]) //=> 'bar-in-stem:bar.b~stem.c' */
export const findingIdOf = (topic: string, faces: readonly FaceRef[]): string =>
  `${topic}:${faces
    .map(({ partId, faceId }) => `${partId}.${faceId}`)
    .sort()
    .join('~')}`;

/** A finding about anything but two faces, with what most of them leave empty. */
export function finding(
  topic: string,
  faces: readonly FaceRef[],
  rest: Pick<Finding, 'outcome' | 'because' | 'source' | 'known'> &
    Partial<Pick<Finding, 'bridges' | 'asks' | 'notes' | 'risk'>>,
): Finding {
  return {
    findingId: findingIdOf(topic, faces),
    topic,
    faces,
    bridges: [],
    asks: [],
    notes: [],
    risk: '',
    ...rest,
  };
}
