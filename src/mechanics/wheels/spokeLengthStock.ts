import { inRange } from '../range.ts';

/** A size to buy, beside the size computed. */
export interface StockedSpoke {
  stockedMm: number;
  exactMm: number;
  /** stocked less exact, mm; below 0 the spoke ends short of the chosen point */
  differenceMm: number;
  /** a spoke end from flush to about 4 mm short is acceptable; more than a hair longer may bottom in the nipple */
  acceptable: boolean;
}

/** A stocked size this little longer than computed may be taken: tension draws the spoke up by more. Source: derived from `intoNippleMm`. */
const MAY_BE_LONGER_MM = 0.3;
/** Source: tool maker's article on measuring effective rim diameter. */
const MAY_BE_SHORTER_MM = 4;

/**
 * The stocked size to take: the next below, unless the one above is less than 0.3 mm too long.
 * @param exactMm computed length, mm, 50 to 400
 * @param stock step between sizes, mm, 0.5 to 10, or the sizes at hand, each 50 to 400 mm
 * @returns null when the sizes at hand are all too long
 * @throws RangeError when a figure is out of range
 * Source: wheelbuilders' common practice; figures beside the constants.
 * @example stockedSpoke(183.649, 2)?.stockedMm //=> 182
 */
export function stockedSpoke(exactMm: number, stock: number | readonly number[]): StockedSpoke | null {
  const longestMm = inRange('exactMm', exactMm, 50, 400) + MAY_BE_LONGER_MM;
  const stockedMm =
    typeof stock === 'number'
      ? stepBelow(longestMm, inRange('step', stock, 0.5, 10))
      : Math.max(...stock.map((mm) => inRange('size at hand', mm, 50, 400)).filter((mm) => mm <= longestMm));
  if (!Number.isFinite(stockedMm)) return null;
  const differenceMm = stockedMm - exactMm;
  return { stockedMm, exactMm, differenceMm, acceptable: differenceMm >= -MAY_BE_SHORTER_MM };
}

/** The allowance keeps a length that is a whole step, short of a last bit, from falling a step down. */
const stepBelow = (mm: number, step: number): number => Math.floor(mm / step + 1e-9) * step;
