import type { WidthTable } from '../../mechanics/tyres/tyreFit.ts';
import type { Sourced } from '../known.ts';

/** Crosses per row, read; each run of crosses was placed on the columns by its length. */
const row = (rimMm: number, lo: number, hi: number) => ({ rimMm, tyresMm: [lo, hi] }) as const;

export const widths2006: WidthTable & Sourced = {
  edition: '2006',
  tyresMm: [18, 62],
  byRim: [
    row(13, 18, 25),
    row(15, 23, 32),
    row(17, 25, 50),
    row(19, 28, 62),
    row(21, 35, 62),
    row(23, 37, 62),
    row(25, 44, 62),
    row(27, 47, 62),
    row(29, 54, 62),
  ],
  source: 'German cycling FAQ, ETRTO table as of 2006',
  known: 'seen',
};

/** A later edition allows wider rims; only one tyre width of it was seen. */
export const widthsLater: WidthTable & Sourced = {
  edition: 'later than 2006',
  tyresMm: [38, 38],
  byRim: [],
  byTyre: [{ tyreMm: 38, rimsMm: [17, 27] }],
  source: "tyre seller's article on the standards",
  known: 'seen',
};

export const widthTables: readonly (WidthTable & Sourced)[] = [widths2006, widthsLater];
