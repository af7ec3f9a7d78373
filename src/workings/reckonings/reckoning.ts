import type { Band } from '../../mechanics/band.ts';
import { type AnyUnit, convert, type SameKind, unitsOf } from '../../mechanics/units.ts';
import type { Working } from '../../mechanics/working.ts';
import { beadSeatsMm } from '../../standards/tyres/beadSeats.ts';

/** A measured figure a computation asks for. */
export interface NumberAsked {
  key: string;
  label: string;
  hint?: string;
  /** Unit the computation counts in; the first of `units`. A bare count or ratio has none. */
  unit?: AnyUnit;
  /** Units it may be typed in. */
  units?: readonly AnyUnit[];
  /** Mark behind the label of a bare figure: "°", "N", "%". */
  mark?: string;
  /** Least and most that is plausible, in `unit`. */
  range: readonly [least: number, most: number];
  /** Stands in the field at first. */
  first?: string;
  /** May be left empty. */
  optional?: true;
  /** A whole number only. */
  whole?: true;
}

/** One of several that a computation asks for. */
export interface ChoiceAsked {
  key: string;
  label: string;
  hint?: string;
  options: readonly { value: string; label: string }[];
  first: string;
}

export type Asked = NumberAsked | ChoiceAsked;

/** What was given, in the units the computation counts in. */
export interface Given {
  number(key: string): number;
  /** Undefined where an optional figure was left empty. */
  maybe(key: string): number | undefined;
  choice(key: string): string;
}

/** One result: a caption and its working. */
export interface Reckoned {
  label: string;
  working: Working;
}

export type Calculated =
  | { ok: true; results: readonly Reckoned[]; remarks?: readonly string[] }
  | { ok: false; reason: string };

/** One computation with its own little form. */
export interface Reckoning {
  id: string;
  label: string;
  /** What it answers, in a sentence. */
  about: string;
  group: 'Screws' | 'Clamps' | 'Bonds and fits' | 'Re-checks' | 'Brakes' | 'Tyres' | 'Wheels' | 'Drive';
  asks: readonly Asked[];
  compute(given: Given): Calculated;
}

/** What one field holds: characters for a figure, with its unit; a value for a choice. */
export interface FilledField {
  text: string;
  unit?: AnyUnit;
}

export interface ReadFigure {
  value: number;
  unit?: AnyUnit;
}

export const isChoice = (asked: Asked): asked is ChoiceAsked => 'options' in asked;

/** One computed figure without a mechanics working of its own. */
export const worked = (
  result: number | Band,
  unit: string,
  formula: string,
  inputs: Working['inputs'],
  source: string,
  known: Working['known'],
): Working => ({ result, unit, formula, inputs, source, known });

/** Runs a computation on figures given in the units it counts in. @throws RangeError when a figure is missing */
export function reckon(
  reckoning: Reckoning,
  figures: Readonly<Record<string, number | undefined>>,
  choices: Readonly<Record<string, string | undefined>>,
): Calculated {
  const maybe = (key: string) => figures[key];
  const first = (key: string) => {
    const asked = reckoning.asks.find((each) => each.key === key);
    return asked && isChoice(asked) ? asked.first : undefined;
  };
  const given: Given = {
    maybe,
    number(key) {
      const value = maybe(key);
      if (value === undefined) throw new RangeError(`${reckoning.id} wants ${key}`);
      return value;
    },
    choice: (key) => choices[key] ?? first(key) ?? '',
  };
  return reckoning.compute(given);
}

/**
 * A figure in the unit a computation counts in.
 * @example inUnitOf({ key: 'd', label: 'd', unit: 'mm', range: [1, 9] }, { value: 1, unit: 'cm' }) //=> 10
 */
export function inUnitOf({ unit }: NumberAsked, figure: ReadFigure): number {
  return unit && figure.unit ? convert(figure.value, figure.unit, unit as SameKind<AnyUnit>) : figure.value;
}

const forces = ['N', 'kgf', '[lbf_av]'] as const;

type More = Omit<NumberAsked, 'key' | 'label' | 'range' | 'unit' | 'units'>;
type AskFor = (key: string, label: string, range: NumberAsked['range'], more?: More) => NumberAsked;

const asking =
  (units: readonly AnyUnit[]): AskFor =>
  (key, label, range, more = {}) => ({
    ...{ key, label, range },
    ...(units[0] ? { unit: units[0], units } : {}),
    ...more,
  });

export const lengthAsked = asking(unitsOf.length);
export const torqueAsked = asking(unitsOf.torque);
export const pressureAsked = asking(unitsOf.pressure);
export const forceAsked = asking(forces);
export const temperatureAsked = asking(unitsOf.temperature);
/** A count, a ratio, or a figure whose unit has no choice and stands behind the label. */
export const bareAsked = asking([]);

/** The bead seat a tyre and its rim share. */
export const beadSeatAsked: ChoiceAsked = {
  key: 'seat',
  label: 'Bead seat, mm',
  hint: 'The three-digit number printed on tyre and rim.',
  options: beadSeatsMm.map((mm) => ({ value: String(mm), label: String(mm) })),
  first: '584',
};
