import type { Face } from '../faces/face.ts';
import { meet, ruleFor } from './meet.ts';
import type { Bridging } from './shelfAdapter.ts';

export interface WhyNot {
  adapterId: string;
  reason:
    | 'it-fits'
    | 'no-face-for-first'
    | 'no-face-for-second'
    | 'first-does-not-sit'
    | 'second-does-not-sit';
  /** The rule's own words where a face does not sit; empty otherwise. */
  because: string;
}

type Side = { sits: boolean; because: string } | undefined;

function side(face: Face, end: Face): Side {
  if (!ruleFor(face.kind, end.kind)) return undefined;
  const meeting = meet(face, end);
  return meeting && { sits: meeting.meets === 'yes', because: meeting.because };
}

/**
 * Why an adapter was not offered between two faces, taken in the way round that comes nearest.
 * @example whyNot(stemClamp, steerer, shim318).reason //=> 'no-face-for-second'
 */
export function whyNot(one: Face, other: Face, adapter: Bridging): WhyNot {
  const [first, second] = adapter.faces;
  const ways = [
    [side(one, first), side(other, second)],
    [side(one, second), side(other, first)],
  ] as const;
  const nearness = ([near, far]: readonly [Side, Side]): number =>
    (near ? 1 : 0) + (near?.sits ? 2 : 0) + (far ? 1 : 0) + (far?.sits ? 2 : 0);
  const [near, far] = nearness(ways[1]) > nearness(ways[0]) ? ways[1] : ways[0];
  const answer = (reason: WhyNot['reason'], because = ''): WhyNot => ({
    adapterId: adapter.id,
    reason,
    because,
  });
  if (!near) return answer('no-face-for-first');
  if (!far) return answer('no-face-for-second');
  if (!near.sits) return answer('first-does-not-sit', near.because);
  if (!far.sits) return answer('second-does-not-sit', far.because);
  return answer('it-fits');
}
