import type { Sourced } from '../known.ts';

export interface ChainlineRow extends Sourced {
  readonly use: string;
  /** Middle of the bike to the middle of the teeth, least and most, mm. */
  readonly chainlineMm: readonly [lo: number, hi: number];
}

const encyclopaedia = {
  source: 'bicycle encyclopaedia, page on the chainline of single-speed bikes',
  known: 'seen',
} as const;
const forum = { source: 'cycling forum, thread on chainlines', known: 'seen' } as const;

/** Chainlines one meets. On doubles they count to the middle between the rings, so one ring differs by 3 or 4. */
export const chainlines: readonly ChainlineRow[] = [
  { use: 'old track and back-pedal hubs', chainlineMm: [40.5, 42], ...encyclopaedia },
  { use: 'track', chainlineMm: [42, 42], ...forum },
  {
    use: 'road double',
    chainlineMm: [43.5, 43.5],
    source: 'builder’s blog on chainlines of road cranks',
    known: 'seen',
  },
  { use: 'mountain single, older', chainlineMm: [47.5, 47.5], ...encyclopaedia },
  { use: 'mountain triple', chainlineMm: [48, 50], ...forum },
  { use: 'mountain single', chainlineMm: [52, 52], ...encyclopaedia },
  {
    use: 'dropouts of 148',
    chainlineMm: [52, 52],
    source: 'wheel maker’s article on hub spacing',
    known: 'seen',
  },
  {
    use: 'hub gears, older',
    chainlineMm: [40.5, 43],
    source: 'bicycle encyclopaedia, page on the chainline of hub gears',
    known: 'seen',
  },
  { use: 'hub gears, most', chainlineMm: [40, 48], source: 'makers’ sheets, from memory', known: 'memory' },
  { use: 'hub gears, one wide kind of fourteen gears', chainlineMm: [54, 58], ...encyclopaedia },
];
