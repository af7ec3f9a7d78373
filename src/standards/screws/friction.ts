import type { Band } from '../../mechanics/band.ts';
import type { Sourced } from '../known.ts';

/** Static friction of a pair of faces as published. */
export interface FrictionRow extends Sourced {
  readonly pair: string;
  readonly condition: string;
  readonly lo: number;
  readonly hi: number;
  /** Laboratory-clean metal seizes to itself; no clamp on a bicycle is that clean. */
  readonly neverForClamps?: true;
}

const physics = { source: 'university physics tables of friction', known: 'seen' } as const;
const database = { source: 'tribology centre friction database', known: 'seen' } as const;

export const publishedFriction: readonly FrictionRow[] = [
  {
    pair: 'aluminium on aluminium',
    condition: 'clean, dry',
    lo: 1.05,
    hi: 1.35,
    neverForClamps: true,
    ...physics,
  },
  {
    pair: 'aluminium on mild steel',
    condition: 'clean, dry',
    lo: 0.61,
    hi: 0.61,
    neverForClamps: true,
    ...physics,
  },
  { pair: 'steel on steel', condition: 'clean, dry', lo: 0.74, hi: 0.78, neverForClamps: true, ...physics },
  { pair: 'aluminium on aluminium', condition: 'greasy', lo: 0.3, hi: 0.3, ...physics },
  { pair: 'steel on steel', condition: 'oxide film', lo: 0.27, hi: 0.27, ...physics },
  { pair: 'steel on steel', condition: 'engineering tables, dry', lo: 0.15, hi: 0.3, ...physics },
  { pair: 'metal on metal', condition: 'lubricated', lo: 0.15, hi: 0.15, ...database },
  { pair: 'carbon composite on itself', condition: 'humid', lo: 0.1, hi: 0.5, ...database },
  {
    pair: 'shaft in hub',
    condition: 'design value, not greased',
    lo: 0.16,
    hi: 0.16,
    source: 'printed sample run of a shaft–hub program',
    known: 'seen',
  },
  {
    pair: 'anodised or painted aluminium on metal',
    condition: 'workshop-dry',
    lo: 0.15,
    hi: 0.2,
    source: 'common practice, no source (weak)',
    known: 'memory',
  },
  {
    pair: 'carbon on aluminium',
    condition: 'dry',
    lo: 0.15,
    hi: 0.25,
    source: 'common practice, no public test seen (weak)',
    known: 'memory',
  },
  {
    pair: 'carbon on aluminium',
    condition: 'grit paste',
    lo: 0.3,
    hi: 0.4,
    source: 'common practice, no public test seen (weak)',
    known: 'memory',
  },
];

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
