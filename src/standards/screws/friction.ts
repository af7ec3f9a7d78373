import type { Band } from '../../mechanics/band.ts';
import type { Sourced } from '../known.ts';

export type ClampSurface = 'metal-dry' | 'metal-greased' | 'carbon-dry' | 'carbon-paste';

const judgement = {
  source: 'our own choice at the low end of the published figures',
  known: 'proposal',
} as const;

/** Friction to reckon with in a clamp: low on purpose, because being wrong upwards lets a bar turn. */
export const clampFriction: Readonly<Record<ClampSurface, Sourced & { readonly friction: Band }>> = {
  'metal-dry': { friction: { lo: 0.12, mid: 0.16, hi: 0.2 }, ...judgement },
  'metal-greased': { friction: { lo: 0.08, mid: 0.1, hi: 0.15 }, ...judgement },
  'carbon-dry': { friction: { lo: 0.1, mid: 0.15, hi: 0.25 }, ...judgement },
  'carbon-paste': { friction: { lo: 0.2, mid: 0.25, hi: 0.4 }, ...judgement },
};
