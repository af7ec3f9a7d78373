import { positive } from '../range.ts';

/**
 * Height of a tyre over its bead seat, mm: as wide as high; narrow ones stand 2.5 mm taller.
 * Source: encyclopedia text on ISO 5775.
 * @example sectionHeightMm(23) //=> 25.5
 */
export function sectionHeightMm(widthMm: number): number {
  positive({ widthMm });
  return widthMm < 28 ? widthMm + 2.5 : widthMm;
}

/**
 * Outside diameter of an inflated tyre, mm: bead seat plus two section heights.
 * @throws RangeError when a size is not positive
 * @example overallDiameterMm(32, 597) //=> 661
 */
export function overallDiameterMm(widthMm: number, beadSeatMm: number): number {
  positive({ beadSeatMm });
  return beadSeatMm + 2 * sectionHeightMm(widthMm);
}

/**
 * Whether a tyre and a rim share one bead seat. Close does not count.
 * @returns how far a rim brake's pads would have to move where they differ, mm
 * @throws RangeError when a size is not positive
 * @example beadSeatsMatch(622, 630) //=> { ok: false, reason: 'different-bead-seats', brakeReachMm: 4 }
 */
export function beadSeatsMatch(
  tyreMm: number,
  rimMm: number,
): { ok: true } | { ok: false; reason: 'different-bead-seats'; brakeReachMm: number } {
  positive({ tyreMm, rimMm });
  if (tyreMm === rimMm) return { ok: true };
  return { ok: false, reason: 'different-bead-seats', brakeReachMm: Math.abs(tyreMm - rimMm) / 2 };
}

/** One edition of a table of tyre widths by rim. */
export interface WidthTable {
  readonly edition: string;
  /** Narrowest and widest tyre the table speaks of, mm. */
  readonly tyresMm: readonly [lo: number, hi: number];
  /** Tyre widths by the inner width of the rim, mm. */
  readonly byRim: readonly { readonly rimMm: number; readonly tyresMm: readonly [lo: number, hi: number] }[];
  /** Where an edition is only known tyre by tyre: rim widths by tyre width, mm. */
  readonly byTyre?: readonly {
    readonly tyreMm: number;
    readonly rimsMm: readonly [lo: number, hi: number];
  }[];
}

export interface WidthVerdict {
  answer: 'inside' | 'outside' | 'not-in-this-table';
  edition: string;
  /** Wider than twice the rim: allowed or not, it squirms and rolls off sooner. */
  wideForRim: boolean;
}

const within = (value: number, [lo, hi]: readonly [number, number]): boolean => value >= lo && value <= hi;

/**
 * What one edition says about a tyre width on a rim. Nothing is read between the lines: a rim width without a
 * row is not in the table.
 * @throws RangeError when a width is not positive
 * @example widthOnRim(widths2006, 50, 17) //=> { answer: 'inside', edition: '2006', wideForRim: true }
 */
export function widthOnRim(table: WidthTable, tyreMm: number, rimMm: number): WidthVerdict {
  positive({ tyreMm, rimMm });
  const verdict = (answer: WidthVerdict['answer']): WidthVerdict => ({
    answer,
    edition: table.edition,
    wideForRim: tyreMm > 2 * rimMm,
  });
  const tyreRow = table.byTyre?.find((row) => row.tyreMm === tyreMm);
  if (tyreRow) return verdict(within(rimMm, tyreRow.rimsMm) ? 'inside' : 'outside');
  const rimRow = table.byRim.find((row) => row.rimMm === rimMm);
  if (!rimRow || !within(tyreMm, table.tyresMm)) return verdict('not-in-this-table');
  return verdict(within(tyreMm, rimRow.tyresMm) ? 'inside' : 'outside');
}
