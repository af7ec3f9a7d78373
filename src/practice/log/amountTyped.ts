import type { OneWayChange } from '../../journal/entries.ts';
import { parseTyped } from '../../mechanics/quantity.ts';
import { convert, type LengthUnit, type Typed, unitsOf } from '../../mechanics/units.ts';

/** The longest the journal takes. */
const LONGEST_MM = 3000;

export type AmountTyped =
  | { ok: true; size: Pick<OneWayChange, 'amount' | 'before' | 'after'> }
  | { ok: false; why: string };

const NOT_READ = 'Enter a size: 2 mm off, or 48 to 46 mm.';
const wrong = (why: string): AmountTyped => ({ ok: false, why });

/** What people put around the figure and what says nothing more. */
const around =
  /^(?:about|ca\.?|~|by|minus)\s+|\s*(?:off|away|shorter|narrower|less|deeper|wider|longer|deep)$/gi;
const unitAtEnd = /[a-z"″]+\.?$/i;

function lengthOf(text: string, unit: LengthUnit): Typed<LengthUnit> | undefined {
  const read = parseTyped<LengthUnit>(text, unitsOf.length, unit);
  return read.ok ? read.quantity : undefined;
}

const inMm = ({ value, unit }: Typed<LengthUnit>) => convert<LengthUnit>(value, unit, 'mm');

/**
 * By how much a part was changed, as a person types it: an amount, or the size before and after.
 * @param unit meant where none is typed
 * @returns the amount or both sizes as typed, or what to type instead
 * @example amountTyped('2 mm off', 'mm') //=> { ok: true, size: { amount: { value: 2, unit: 'mm', typed: '2 mm' } } }
 */
export function amountTyped(text: string, unit: LengthUnit): AmountTyped {
  const bare = text.trim().replace(around, '').trim();
  const [first = '', second, more] = bare.replace(/^from\s+/i, '').split(/\s*(?:→|->|=>|–>|\bto\b)\s*/i);
  if (first === '' || more !== undefined) return wrong(NOT_READ);
  if (second === undefined) {
    const amount = lengthOf(first, unit);
    if (!amount) return wrong(NOT_READ);
    if (amount.value <= 0) return wrong('Must be more than 0.');
    if (inMm(amount) > LONGEST_MM) return wrong('Longer than 3 m: check number and unit.');
    return { ok: true, size: { amount } };
  }
  // A unit that stands behind the second size alone is meant for both.
  const behind = unitAtEnd.test(first) ? '' : (unitAtEnd.exec(second)?.[0] ?? '');
  const before = lengthOf(behind ? `${first} ${behind}` : first, unit);
  const after = lengthOf(second, unit);
  if (!before || !after) return wrong(NOT_READ);
  if (inMm(before) === inMm(after)) return wrong('Before and after are the same.');
  if (Math.max(inMm(before), inMm(after)) > LONGEST_MM)
    return wrong('Longer than 3 m: check number and unit.');
  return { ok: true, size: { before, after } };
}
