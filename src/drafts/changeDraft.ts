import type { CutKind, Id, OneWayChange } from '../journal/entries.ts';
import { parseNumber, parseTyped, type QuantityRefusal } from '../mechanics/quantity.ts';
import { convert, type LengthUnit, type Typed, unitsOf } from '../mechanics/units.ts';

/** The form of a change that cannot be undone. */
export interface ChangeDraft {
  cut: CutKind | '';
  where: string;
  before: string;
  after: string;
  left: string;
  unit: LengthUnit | '';
  leftWords: string;
  how: string;
  why: string;
  rulesOut: string;
  inspect: boolean;
  everyDays: string;
  everyKm: string;
  inspectWords: string;
}

export const emptyChange: ChangeDraft = {
  cut: '',
  where: '',
  before: '',
  after: '',
  left: '',
  unit: '',
  leftWords: '',
  how: '',
  why: '',
  rulesOut: '',
  inspect: true,
  everyDays: '90',
  everyKm: '500',
  inspectWords: '',
};

export type ChangeTrouble = Partial<Record<keyof ChangeDraft, string>>;

const sentences: Record<QuantityRefusal, string> = {
  empty: 'Measure it and enter it.',
  'not-a-number': 'That is not a number. Digits, with a comma or a point.',
  'not-finite': 'That is not a size. Enter the length.',
  negative: 'A size cannot be negative. Type it again.',
  'two-separators': 'One comma or point only.',
  'unknown-unit': 'Which unit is that? Type the number alone and choose the unit.',
  'unit-of-another-kind': 'Lengths only here.',
};

/** Ways of changing that only ever take material away. */
const takesAway = new Set<string>(['file', 'saw', 'ream', 'grind', 'drill', 'turn', 'tap']);

export type ReadChange = { ok: true; change: OneWayChange } | { ok: false; trouble: ChangeTrouble };

/** The longest the journal takes. */
const LONGEST_MM = 3000;

/** As far apart as the journal takes two looks. */
const MOST_DAYS = 3660;
const MOST_KM = 100_000;

/** A span between two looks; undefined where the field is empty, null where what stands in it is none. */
function span(text: string, most: number): number | undefined | null {
  const read = parseNumber(text);
  if (read.ok) return read.value > 0 && read.value <= most ? read.value : null;
  return read.reason === 'empty' ? undefined : null;
}

/**
 * Reads the form.
 * @param unit the unit sizes are in where none is typed
 * @returns the change, or what is missing by field
 */
export function readChange(draft: ChangeDraft, unit: LengthUnit, photoIds: Id[]): ReadChange {
  const trouble: ChangeTrouble = {};
  const size = (field: 'before' | 'after' | 'left'): Typed<LengthUnit> | undefined => {
    const read = parseTyped<LengthUnit>(draft[field], unitsOf.length, unit);
    if (read.ok && convert<LengthUnit>(read.quantity.value, read.quantity.unit, 'mm') > LONGEST_MM)
      trouble[field] = 'No part of a bike is longer than 3 m. Check the number and the unit.';
    else if (read.ok) return read.quantity;
    else if (field !== 'left' || read.reason !== 'empty') trouble[field] = sentences[read.reason];
    return undefined;
  };
  const before = size('before');
  const after = size('after');
  const left = size('left');
  if (draft.cut === '') trouble.cut = 'Choose what was done.';
  if (draft.where.trim() === '') trouble.where = 'Say where on the part.';
  if (draft.how.trim() === '') trouble.how = 'Say how: tool, heat, jig.';
  if (draft.why.trim() === '') trouble.why = 'Enter a reason.';
  if (
    before &&
    after &&
    convert<LengthUnit>(before.value, before.unit, 'mm') ===
      convert<LengthUnit>(after.value, after.unit, 'mm')
  )
    trouble.after = 'Before and after are the same.';
  const everyDays = span(draft.everyDays, MOST_DAYS);
  const everyKm = span(draft.everyKm, MOST_KM);
  if (draft.inspect && everyDays === null)
    trouble.everyDays = `A number of days up to ${MOST_DAYS}, or nothing.`;
  if (draft.inspect && everyKm === null) trouble.everyKm = `A number of km up to ${MOST_KM}, or nothing.`;
  if (draft.inspect && everyDays === undefined && everyKm === undefined)
    trouble.everyDays = 'Give days or km, or both.';
  if (draft.inspect && draft.inspectWords.trim() === '') trouble.inspectWords = 'Say what to look for.';
  if (Object.keys(trouble).length > 0 || !before || !after || draft.cut === '') return { ok: false, trouble };
  const filled = (field: 'leftWords' | 'rulesOut') =>
    draft[field].trim() === '' ? {} : { [field]: draft[field].trim() };
  return {
    ok: true,
    change: {
      ...{
        cut: draft.cut,
        before,
        after,
        where: draft.where.trim(),
        how: draft.how.trim(),
        why: draft.why.trim(),
      },
      ...(left ? { left } : {}),
      ...filled('leftWords'),
      ...filled('rulesOut'),
      ...(photoIds.length > 0 ? { photoIds } : {}),
      ...(draft.inspect
        ? {
            inspection: {
              words: draft.inspectWords.trim(),
              ...(typeof everyDays === 'number' ? { everyDays } : {}),
              ...(typeof everyKm === 'number' ? { everyKm } : {}),
            },
          }
        : {}),
    },
  };
}

/** Whether what is left ought to be measured: material was taken away and nothing is written about the rest. */
export const leftWanted = ({ cut, left, leftWords }: ChangeDraft): boolean =>
  takesAway.has(cut) && left.trim() === '' && leftWords.trim() === '';
