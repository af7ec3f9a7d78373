import type { Band } from '../../mechanics/band.ts';
import { type Founded, founded } from '../known.ts';

export type ClampSurface = 'metal-dry' | 'metal-greased' | 'carbon-dry' | 'carbon-paste';

const low = (origins: Founded['origins'], of: string) =>
  founded(`our suggestion at the low end of ${of}`, 'proposal', origins);

/** Friction to reckon with in a clamp: low on purpose, because being wrong upwards lets a bar turn. */
export const clampFriction: Readonly<Record<ClampSurface, Founded & { readonly friction: Band }>> = {
  'metal-dry': {
    friction: { lo: 0.12, mid: 0.16, hi: 0.2 },
    ...low(2, 'shaft and hub design values and engineering tables'),
  },
  'metal-greased': { friction: { lo: 0.08, mid: 0.1, hi: 0.15 }, ...low(1, 'a friction database') },
  'carbon-dry': {
    friction: { lo: 0.1, mid: 0.15, hi: 0.25 },
    ...low(1, 'a friction database, carbon on itself'),
  },
  'carbon-paste': { friction: { lo: 0.2, mid: 0.25, hi: 0.4 }, ...low(0, 'common practice') },
};
