import type { Band } from '../../mechanics/band.ts';
import type { Lubricant } from '../../mechanics/screws/preloadRefusal.ts';
import { type Founded, founded } from '../known.ts';

export type ScrewSurface =
  | 'plain'
  | 'black'
  | 'zinc'
  | 'zinc-flake'
  | 'cadmium'
  | 'phosphate'
  | 'stainless'
  | 'unknown';

/** What we reckon with: a middle inside the published spread, and a band that does not pretend to know better. */
export interface NutFactorDefault extends Founded {
  readonly surface: ScrewSurface | 'any';
  readonly lubricant: Lubricant;
  readonly nutFactor: Band;
}

/** The middle is ours; how many origins print a figure that lies in the band. */
const within = (origins: Founded['origins'], what = 'our suggestion within the published nut factors') =>
  founded(what, 'proposal', origins);
const unprinted = within(0, 'our suggestion between dry and greased steel');

/** First match wins, so rows for one surface stand before rows for any. */
export const nutFactorDefaults: readonly NutFactorDefault[] = [
  { surface: 'zinc', lubricant: 'none', nutFactor: { lo: 0.17, mid: 0.22, hi: 0.35 }, ...within(2) },
  { surface: 'zinc-flake', lubricant: 'none', nutFactor: { lo: 0.16, mid: 0.22, hi: 0.32 }, ...within(1) },
  { surface: 'cadmium', lubricant: 'none', nutFactor: { lo: 0.15, mid: 0.17, hi: 0.2 }, ...within(2) },
  { surface: 'black', lubricant: 'none', nutFactor: { lo: 0.17, mid: 0.2, hi: 0.3 }, ...within(2) },
  { surface: 'stainless', lubricant: 'grease', nutFactor: { lo: 0.13, mid: 0.18, hi: 0.23 }, ...unprinted },
  { surface: 'stainless', lubricant: 'oil', nutFactor: { lo: 0.13, mid: 0.18, hi: 0.26 }, ...unprinted },
  {
    surface: 'stainless',
    lubricant: 'anti-seize',
    nutFactor: { lo: 0.13, mid: 0.18, hi: 0.23 },
    ...unprinted,
  },
  { surface: 'stainless', lubricant: 'none', nutFactor: { lo: 0.3, mid: 0.4, hi: 0.5 }, ...within(1) },
  { surface: 'any', lubricant: 'none', nutFactor: { lo: 0.17, mid: 0.2, hi: 0.27 }, ...within(2) },
  { surface: 'any', lubricant: 'oil', nutFactor: { lo: 0.11, mid: 0.16, hi: 0.22 }, ...within(2) },
  { surface: 'any', lubricant: 'grease', nutFactor: { lo: 0.12, mid: 0.16, hi: 0.2 }, ...within(2) },
  { surface: 'any', lubricant: 'anti-seize', nutFactor: { lo: 0.12, mid: 0.15, hi: 0.18 }, ...within(1) },
  { surface: 'any', lubricant: 'moly', nutFactor: { lo: 0.1, mid: 0.14, hi: 0.18 }, ...within(0) },
  { surface: 'any', lubricant: 'wax', nutFactor: { lo: 0.1, mid: 0.12, hi: 0.15 }, ...within(1) },
  {
    surface: 'any',
    lubricant: 'threadlocker-wet',
    nutFactor: { lo: 0.12, mid: 0.17, hi: 0.22 },
    ...within(1),
  },
  // What is on the thread was not recorded: everything between wax and dry zinc.
  { surface: 'any', lubricant: 'unknown', nutFactor: { lo: 0.12, mid: 0.19, hi: 0.3 }, ...within(0) },
];

/**
 * The nut factor to reckon with.
 * @param surface an unlisted one falls back to the row for any surface
 * @example nutFactorFor('plain', 'none').nutFactor.mid //=> 0.2
 */
export function nutFactorFor(surface: ScrewSurface, lubricant: Lubricant): NutFactorDefault {
  const fits = (row: NutFactorDefault) =>
    row.lubricant === lubricant && (row.surface === surface || row.surface === 'any');
  const row = nutFactorDefaults.find(fits);
  if (!row) throw new RangeError(`no nut factor for lubricant ${lubricant}`);
  return row;
}
