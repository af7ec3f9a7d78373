import type { SizeName } from '../../mechanics/tyres/tyreDesignation.ts';
import type { Sourced } from '../known.ts';

export interface BeadSeatName extends SizeName, Sourced {}

const chart = { source: "tyre maker's size chart, both markings on one line", known: 'seen' } as const;
const memory = { source: 'tyre size tables, from memory', known: 'memory' } as const;

const named = (
  wheel: string,
  width: string,
  beadSeatMm: number,
  sourced: Sourced = memory,
): BeadSeatName => ({ wheel, width, beadSeatMm, ...sourced });

/**
 * What the old inch and French names stand for, mm of bead seat. `width` is how the width is written:
 * 'decimal', a fraction, or the French letter. 26 × 1.5 and 26 × 1 1/2 are different rims.
 */
export const beadSeatNames: readonly BeadSeatName[] = [
  named('12 1/2', 'fraction', 203, chart),
  named('16', 'decimal', 305),
  named('16', '1 3/8', 349),
  named('20', 'decimal', 406, chart),
  named('20', '1 1/8', 451),
  named('20', '1 3/8', 451),
  named('24', 'decimal', 507, chart),
  named('24', '1', 520),
  named('24', '1 3/8', 540),
  named('26', 'decimal', 559, chart),
  named('26', '1 1/4', 597),
  named('26', '1 3/8', 590, chart),
  named('26', '1 1/2', 584),
  named('27', '1 1/4', 630),
  named('27.5', 'decimal', 584, { source: 'tyre size article, 650B = 584', known: 'seen' }),
  named('28', '1 1/2', 635),
  named('29', 'decimal', 622, chart),
  named('650', 'A', 590, chart),
  named('650', 'B', 584, { source: 'tyre size article, 650B = 584', known: 'seen' }),
  named('650', 'C', 571, chart),
  named('700', 'C', 622, chart),
];

/** Bead seats a bicycle tyre may have, mm; any other number is more likely a misreading. */
export const beadSeatsMm: readonly number[] = [
  ...new Set([...beadSeatNames.map((row) => row.beadSeatMm), 355, 547]),
].sort((a, b) => a - b);
