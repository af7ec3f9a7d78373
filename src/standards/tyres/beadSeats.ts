import type { SizeName } from '../../mechanics/tyres/tyreDesignation.ts';
import type { Sourced } from '../known.ts';

export interface BeadSeatName extends SizeName, Sourced {}

const chart = { source: "tyre maker's size chart, both markings on one line", known: 'seen' } as const;
const memory = { source: 'tyre size tables, from memory', known: 'memory' } as const;
const sizeList = {
  source: 'bicycle tyre size chart of a dimensions site, after the touring encyclopaedia',
  known: 'seen',
} as const;
const workshop = { source: 'cycle workshop’s list of tyre and wheel sizes', known: 'seen' } as const;
const recumbents = {
  source: 'unicyclists’ forum 48311, list of sizes with their ISO numbers',
  known: 'seen',
} as const;
const article = { source: 'tyre size article, 650B = 584', known: 'seen' } as const;

const named = (
  wheel: string,
  width: string,
  beadSeatMm: number,
  sourced: Sourced = memory,
): BeadSeatName => ({ wheel, width, beadSeatMm, ...sourced });

/**
 * What the old inch and French names stand for, mm of bead seat. `width` is how the width is written:
 * 'decimal', one decimal, a fraction, or the French letter. 26 × 1.5 and 26 × 1 1/2 are different rims, and one name may
 * stand for several: each has its row.
 */
export const beadSeatNames: readonly BeadSeatName[] = [
  named('8', '1 1/4', 137, sizeList),
  named('10', '2', 152, sizeList),
  named('12 1/2', 'fraction', 203, chart),
  named('14', 'decimal', 254),
  named('14', '1 3/8', 288),
  named('14', '1 3/8', 298),
  named('16', 'decimal', 305, sizeList),
  named('16', '1 3/4', 317, sizeList),
  named('16', '1 3/8', 337, sizeList),
  named('16', '1 3/8', 340, recumbents),
  named('16', '1 3/8', 349, recumbents),
  named('17', '1 1/4', 369, sizeList),
  named('18', 'decimal', 355, sizeList),
  named('18', '1 3/8', 390),
  named('18', '1 3/8', 400),
  named('20', 'decimal', 406, chart),
  named('20', '1 3/4', 419),
  named('20', '1', 451, recumbents),
  named('20', '1 1/8', 451, sizeList),
  named('20', '1 1/4', 451, sizeList),
  named('20', '1 3/8', 438),
  named('20', '1 3/8', 440),
  named('20', '1 3/8', 451, sizeList),
  named('22', 'decimal', 457),
  named('22', '1 3/8', 489),
  named('22', '1 3/8', 490),
  named('22', '1 3/8', 501),
  named('24', 'decimal', 507, chart),
  named('24', '1', 520, sizeList),
  named('24', '1 1/8', 520, sizeList),
  named('24', '1 1/4', 547),
  named('24', '1 3/8', 540, workshop),
  named('24', '1 3/8', 541, workshop),
  named('26', 'decimal', 559, chart),
  named('26', '1.25', 599, sizeList),
  named('26', '1.375', 599, sizeList),
  named('26', '1', 571, sizeList),
  named('26', '1 1/4', 597, workshop),
  named('26', '1 1/4', 599),
  named('26', '1 3/8', 590, chart),
  named('26', '1 3/8', 597, sizeList),
  named('26', '1 1/2', 584, sizeList),
  named('26', '1 3/4', 571, sizeList),
  named('27', '1', 630, recumbents),
  named('27', '1 1/8', 630),
  named('27', '1 1/4', 630, workshop),
  named('27', '1 3/8', 630),
  named('27.5', 'decimal', 584, article),
  named('28', 'decimal', 622),
  named('28', '1 3/8', 642),
  named('28', '1 1/2', 635, workshop),
  named('28', '1 5/8', 622, workshop),
  named('29', 'decimal', 622, chart),
  named('32', 'decimal', 686),
  named('36', 'decimal', 787),
  named('350', 'A', 288),
  named('400', 'A', 340, recumbents),
  named('450', 'A', 390),
  named('500', 'A', 440),
  named('550', 'A', 490),
  named('600', 'A', 541),
  named('650', 'A', 590, chart),
  named('650', 'B', 584, article),
  named('650', 'C', 571, chart),
  named('700', 'A', 642),
  named('700', 'B', 635),
  named('700', 'C', 622, chart),
  named('700', 'D', 587, sizeList),
];

/** Met on old and odd rims without a name here; from memory. Any other number is worth reading again. */
const namelessMm = [335, 387, 428, 432, 484, 498, 534, 565] as const;

/** Bead seats a bicycle tyre is known to have, mm. */
export const beadSeatsMm: readonly number[] = [
  ...new Set([...beadSeatNames.map((row) => row.beadSeatMm), ...namelessMm]),
].sort((a, b) => a - b);
