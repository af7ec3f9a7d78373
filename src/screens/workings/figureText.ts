import type { Band } from '../../mechanics/band.ts';

const digits = new Intl.NumberFormat(undefined, { maximumSignificantDigits: 4 });
const grouped = new Intl.NumberFormat(undefined, { maximumFractionDigits: 0 });

/** A figure of a working: four digits that mean something. @example figureText(0.0000057) //=> '0.0000057' */
export const figureText = (value: number): string =>
  Math.abs(value) >= 1000 ? grouped.format(value) : digits.format(value);

/**
 * A figure or a band with its unit, as it stands in a working.
 * @example valueText({ lo: 3.5, mid: 5, hi: 6.5 }, 'kN') //=> '3.5 to 6.5 kN, likeliest 5'
 */
export function valueText(value: number | Band, unit: string): string {
  const measure = unit === '' || unit === '1' ? '' : unit === '°' ? unit : ` ${unit}`;
  if (typeof value === 'number') return `${figureText(value)}${measure}`;
  const [lo, mid, hi] = [value.lo, value.mid, value.hi].map(figureText);
  return lo === hi ? `${lo}${measure}` : `${lo} to ${hi}${measure}, likeliest ${mid}`;
}
