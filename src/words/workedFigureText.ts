import type { Band } from '../mechanics/band.ts';
import { numberText } from '../mechanics/numberText.ts';

const digits = new Intl.NumberFormat(undefined, { maximumSignificantDigits: 4, numberingSystem: 'latn' });

/** A figure of a working: four digits that mean something. @example workedFigureText(0.0000057) //=> '0.0000057' */
export const workedFigureText = (value: number): string =>
  Math.abs(value) >= 1000 ? numberText(value, 0) : digits.format(value);

/** Whether the likeliest of a band says more than its two ends do: a printed range has no likeliest. */
export const leans = ({ lo, mid, hi }: Band): boolean => Math.abs(mid - (lo + hi) / 2) > (hi - lo) * 1e-6;

/**
 * A figure or a band with its unit, as it stands in a working.
 * @example valueText({ lo: 3.5, mid: 4, hi: 6.5 }, 'kN') //=> '3.5 to 6.5 kN, likeliest 4'
 */
export function valueText(value: number | Band, unit: string): string {
  const measure = unit === '' || unit === '1' ? '' : unit === '°' ? unit : ` ${unit}`;
  if (typeof value === 'number') return `${workedFigureText(value)}${measure}`;
  const [lo, mid, hi] = [value.lo, value.mid, value.hi].map(workedFigureText);
  if (lo === hi) return `${lo}${measure}`;
  return `${lo} to ${hi}${measure}${leans(value) ? `, likeliest ${mid}` : ''}`;
}
