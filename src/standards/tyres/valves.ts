import type { Sourced } from '../known.ts';

export interface ValveRow extends Sourced {
  readonly id: 'french' | 'car' | 'english';
  readonly label: string;
  readonly stemMm: number;
  /** Hole it is meant for, mm. */
  readonly holeMm: number;
  /** The same hole as drilled in inches. */
  readonly drillIn: number;
}

const blog = {
  source: 'workshop blog on valve holes, 6.4 mm = 1/4 in and 8.3 mm = 21/64 in',
  known: 'seen',
} as const;

export const valves: readonly ValveRow[] = [
  { id: 'french', label: 'French valve, narrow', stemMm: 6, holeMm: 6.4, drillIn: 1 / 4, ...blog },
  { id: 'car', label: 'Car valve', stemMm: 8, holeMm: 8.3, drillIn: 21 / 64, ...blog },
  {
    id: 'english',
    label: 'English valve',
    stemMm: 8,
    holeMm: 8.3,
    drillIn: 21 / 64,
    source: 'article on valve kinds: same hole as the car kind',
    known: 'seen',
  },
];

/** Tubeless valve lengths on sale, mm. */
export const valveLengths = {
  lengthsMm: [40, 60, 80],
  source: 'copy of an article on valve length by rim depth',
  known: 'seen',
} as const;
