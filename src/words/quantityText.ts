import { type AnyUnit, convert, type SameKind, type Typed, unitLabel } from '../mechanics/units.ts';

const digits = (most: number) => new Intl.NumberFormat(undefined, { maximumFractionDigits: most });

/**
 * A quantity as it was typed, and in the unit chosen in the settings behind it when that is another one.
 * @example quantityText({ value: 5, unit: 'N.m', typed: '5' }) //=> '5 N·m'
 */
export function quantityText<U extends AnyUnit>(typed: Typed<U>, chosen?: SameKind<U>): string {
  // A unit that was typed is not written twice.
  const own = /[\p{L}°"″]$/u.test(typed.typed.trim())
    ? typed.typed.trim()
    : `${typed.typed} ${unitLabel[typed.unit]}`;
  if (chosen === undefined || chosen === (typed.unit as AnyUnit)) return own;
  const other = convert(typed.value, typed.unit, chosen);
  return `${own} (${digits(Math.abs(other) >= 100 ? 0 : Math.abs(other) >= 10 ? 1 : 2).format(other)} ${unitLabel[chosen]})`;
}

/** A plain number with at most `most` decimals, in the way of the phone's language. */
export function numberText(value: number, most = 1): string {
  return digits(most).format(value);
}
