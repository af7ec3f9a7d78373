import { numberText } from '../mechanics/numberText.ts';
import { parseNumber, parseTyped } from '../mechanics/quantity.ts';
import { type AnyUnit, convert, type SameKind, unitLabel } from '../mechanics/units.ts';
import { quantityRefusals } from '../words/quantityRefusals.ts';
import { type Asked, inUnitOf, isChoice, type NumberAsked } from '../workings/reckonings/reckoning.ts';

/** What the form of a working holds: characters by key, and the unit chosen for each figure. */
export interface CalculatorDraft {
  texts: Record<string, string>;
  units: Record<string, AnyUnit>;
}

/** The form before anything is typed. @param prefer units of the settings, taken where a figure allows them */
export function firstFilled(asks: readonly Asked[], prefer: readonly AnyUnit[]): CalculatorDraft {
  const texts: CalculatorDraft['texts'] = {};
  const units: CalculatorDraft['units'] = {};
  for (const asked of asks) {
    texts[asked.key] = asked.first ?? '';
    if (isChoice(asked) || !asked.unit) continue;
    // A figure that stands there from the start is meant in the unit the computation counts in.
    const preferred = prefer.find((unit) => asked.units?.includes(unit));
    units[asked.key] = asked.first === undefined && preferred ? preferred : asked.unit;
  }
  return { texts, units };
}

function rangeText({ range, unit }: NumberAsked, shown: AnyUnit | undefined): string {
  const [least, most] = range.map((end) =>
    numberText(unit && shown ? convert(end, unit, shown as SameKind<AnyUnit>) : end, 2),
  );
  return `Between ${least} and ${most}${shown ? ` ${unitLabel[shown]}` : ''} is plausible here. Check the number and the unit.`;
}

export type ReadFilled =
  | { ok: true; figures: Record<string, number>; choices: Record<string, string> }
  | { ok: false; wrong: Record<string, string> };

/**
 * What was typed, in the units the computation counts in, or a sentence for each field that cannot be taken.
 * @example readFilled(asks, { texts: { torque: '5,2' }, units: { torque: 'N.m' } }) //=> { ok: true, figures: { torque: 5.2 }, … }
 */
export function readFilled(asks: readonly Asked[], { texts, units }: CalculatorDraft): ReadFilled {
  const figures: Record<string, number> = {};
  const choices: Record<string, string> = {};
  const wrong: Record<string, string> = {};
  for (const asked of asks) {
    const text = (texts[asked.key] ?? '').trim();
    if (isChoice(asked)) {
      choices[asked.key] = text;
      continue;
    }
    if (text === '' && asked.optional) continue;
    const unit = units[asked.key] ?? asked.unit;
    const below = asked.range[0] < 0 ? 'allow' : 'refuse';
    const read = unit && asked.units ? parseTyped(text, asked.units, unit, below) : parseNumber(text, below);
    if (!read.ok) {
      wrong[asked.key] = text === '' ? 'Type a number here.' : quantityRefusals[read.reason];
      continue;
    }
    const value = inUnitOf(asked, 'quantity' in read ? read.quantity : { value: read.value });
    const [least, most] = asked.range;
    if (value < least - 1e-9 || value > most + 1e-9) wrong[asked.key] = rangeText(asked, unit);
    else if (asked.whole && !Number.isInteger(value)) wrong[asked.key] = 'Type a whole number.';
    else figures[asked.key] = value;
  }
  return Object.keys(wrong).length > 0 ? { ok: false, wrong } : { ok: true, figures, choices };
}
