import { numberText } from '../mechanics/numberText.ts';
import { type AnyUnit, convert, type SameKind, type Typed, unitLabel } from '../mechanics/units.ts';

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
  return `${own} (${numberText(other, Math.abs(other) >= 100 ? 0 : Math.abs(other) >= 10 ? 1 : 2)} ${unitLabel[chosen]})`;
}
