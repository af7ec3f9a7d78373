import { notNegative, positive } from '../range.ts';

export type Wear = 'good' | 'watch' | 'replace';
export type WearReason =
  | 'at-printed-minimum'
  | 'near-printed-minimum'
  | 'thinner-than-unused'
  | 'contaminated'
  | 'at-limit'
  | 'near-limit'
  | 'bulged-or-indicator-gone'
  | 'nothing-to-compare'
  | 'within-limits';

export interface WearVerdict {
  wear: Wear;
  reason: WearReason;
  /** Material above the limit, mm; null when no limit is known. */
  leftMm: number | null;
}

/** Thinner than its unused area by this much: replace. Parts seller's rotor guide, 0.2 to 0.3 mm or more. */
const ROTOR_LOSS_MM = 0.2;
/** Within this of its mark a rotor is watched; our suggestion. */
const ROTOR_NEAR_MM = 0.1;

/** Micrometres of floating point noise never decide. */
const near = (mm: number): number => Math.round(mm * 1e6) / 1e6;

/**
 * Wear of a rotor. What is printed on it goes first; without a mark, its own unused area is the measure.
 * @param thicknessMm thinnest spot of the track, mm, > 0
 * @param printedMinimumMm the mark on the rotor ("Min. TH"), mm
 * @param unusedMm thickness where no pad runs, mm
 * @throws RangeError when a value is not positive
 * @example rotorWear({ thicknessMm: 1.5, printedMinimumMm: 1.5 }).wear //=> 'replace'
 */
export function rotorWear(rotor: {
  thicknessMm: number;
  printedMinimumMm?: number;
  unusedMm?: number;
}): WearVerdict {
  const { thicknessMm, printedMinimumMm, unusedMm } = rotor;
  positive({ thicknessMm, printedMinimumMm: printedMinimumMm ?? 1, unusedMm: unusedMm ?? 1 });
  if (printedMinimumMm !== undefined) {
    const leftMm = near(thicknessMm - printedMinimumMm);
    if (leftMm <= 0) return { wear: 'replace', reason: 'at-printed-minimum', leftMm };
    if (leftMm <= ROTOR_NEAR_MM) return { wear: 'watch', reason: 'near-printed-minimum', leftMm };
    return { wear: 'good', reason: 'within-limits', leftMm };
  }
  if (unusedMm === undefined) return { wear: 'watch', reason: 'nothing-to-compare', leftMm: null };
  const leftMm = near(ROTOR_LOSS_MM - (unusedMm - thicknessMm));
  return leftMm <= 0
    ? { wear: 'replace', reason: 'thinner-than-unused', leftMm }
    : { wear: 'good', reason: 'within-limits', leftMm };
}

/** Repair blog: replace at 0.5 mm of compound; other pages say 1 mm and more, so that is where watching starts. */
const PAD_LIMIT_MM = 0.5;
const PAD_NEAR_MM = 1;

/**
 * Wear of a pad. Oil or brake fluid in it ends it at any thickness.
 * @param compoundMm friction material without the plate, mm, ≥ 0
 * @throws RangeError when the thickness is negative
 * @example padWear(0.8, false).wear //=> 'watch'
 */
export function padWear(compoundMm: number, contaminated: boolean): WearVerdict {
  notNegative({ compoundMm });
  const leftMm = near(compoundMm - PAD_LIMIT_MM);
  if (contaminated) return { wear: 'replace', reason: 'contaminated', leftMm };
  if (leftMm <= 0) return { wear: 'replace', reason: 'at-limit', leftMm };
  return compoundMm <= PAD_NEAR_MM
    ? { wear: 'watch', reason: 'near-limit', leftMm }
    : { wear: 'good', reason: 'within-limits', leftMm };
}
