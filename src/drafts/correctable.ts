import type { Entry, EntryType } from '../journal/entries.ts';
import { parseNumber, parseTyped } from '../mechanics/quantity.ts';
import { type AnyUnit, type Typed, unitsOf } from '../mechanics/units.ts';

/** How a field is typed when it is corrected. */
export type CorrectAs =
  | { as: 'quantity'; units: readonly AnyUnit[] }
  | { as: 'number'; unit?: AnyUnit }
  | { as: 'words' };

export interface Correctable {
  /** Field of the entry; inside another one with a full stop, as `mark.reading.pressure`. */
  field: string;
  label: string;
  how: CorrectAs;
}

const torque: CorrectAs = { as: 'quantity', units: unitsOf.torque };
const length: CorrectAs = { as: 'quantity', units: unitsOf.length };
const pressure: CorrectAs = { as: 'quantity', units: unitsOf.pressure };
const temperature: CorrectAs = { as: 'quantity', units: unitsOf.temperature };
const volume: CorrectAs = { as: 'quantity', units: unitsOf.volume };
const asWords: CorrectAs = { as: 'words' };
const one = (field: string, label: string, how: CorrectAs = asWords): Correctable => ({ field, label, how });
const note = one('note', 'Note');

/** What can be corrected in each type of entry; other types are struck out or answered by a new entry. */
const fields: Partial<Record<EntryType, Correctable[]>> = {
  'torque-applied': [one('applied', 'Applied', torque), one('bolts', 'Bolts', { as: 'number' }), note],
  'torque-found': [
    one('movedAt', 'Moved at', torque),
    one('turnedDeg', 'Turned by', { as: 'number', unit: 'deg' }),
    note,
  ],
  'hand-tightened': [note],
  'locker-applied': [one('temperature', 'Temperature', temperature), one('gap', 'Gap', length), note],
  'seal-marked': [
    one('mark.reading.pressure', 'Pressure', pressure),
    one('mark.reading.temperature', 'Temperature', temperature),
    one('mark.amount', 'Amount', volume),
    one('mark.words', 'Words'),
    note,
  ],
  'ride-logged': [
    one('km', 'Distance', { as: 'number', unit: 'km' }),
    one('minutes', 'Minutes', { as: 'number' }),
    one('noticed', 'Noticed'),
  ],
  'step-done': [one('measured', 'Measured', length), note],
  'step-skipped': [one('why', 'Why')],
  'note-added': [one('words', 'Words')],
  'recheck-answered': [one('words', 'Words')],
  'wait-ended': [one('words', 'Words')],
  'defect-found': [one('words', 'What was found'), one('restriction', 'Restriction')],
  'defect-closed': [one('how', 'How it was fixed')],
  'part-moved': [one('why', 'Why'), one('condition', 'Condition')],
  'part-changed': [
    one('before', 'Before', length),
    one('after', 'After', length),
    one('amount', 'Amount', length),
    one('left', 'Left', length),
    one('where', 'Where'),
    one('how', 'How'),
    one('why', 'Why'),
    one('rulesOut', 'Rules out'),
  ],
  'joint-taken-apart': [one('why', 'Why')],
  'bike-put-away': [one('why', 'Why')],
};

/** Fields that were not filled at first may be filled now; inside a mark only those that are there. */
const stands = (entry: Entry, { field }: Correctable) =>
  !field.includes('.') || valueAt(entry, field) !== undefined;

export const correctableOf = (entry: Entry): Correctable[] =>
  (fields[entry.type] ?? []).filter((field) => stands(entry, field));

/** The value of a field. @example valueAt(entry, 'mark.reading.pressure') */
function valueAt(entry: Entry, field: string): unknown {
  return field
    .split('.')
    .reduce<unknown>((inside, key) => (inside as Record<string, unknown> | undefined)?.[key], entry);
}

/** A field as it stands in the form. */
export interface CorrectDraft {
  typed: string;
  unit?: AnyUnit | undefined;
}

/** What is recorded, as a draft to be changed. */
export function draftAt(entry: Entry, { field, how }: Correctable): CorrectDraft {
  const value = valueAt(entry, field);
  if (how.as === 'quantity') {
    const typed = value as Typed<AnyUnit> | undefined;
    return { typed: typed?.typed ?? '', unit: typed?.unit ?? how.units[0] };
  }
  return {
    typed: value === undefined ? '' : String(value),
    unit: how.as === 'number' ? how.unit : undefined,
  };
}

export type ReadCorrection =
  | { ok: true; becomes: Record<string, unknown> }
  | { ok: false; field: string; reason: 'not-a-number' | 'empty' };

/** `becomes` with a value set inside it, the rest of the outer field as the entry has it. */
function put(becomes: Record<string, unknown>, entry: Entry, path: string[], value: unknown): void {
  const [key = '', ...rest] = path;
  if (rest.length === 0) {
    becomes[key] = value;
    return;
  }
  const inside = {
    ...((becomes[key] ?? (entry as unknown as Record<string, unknown>)[key]) as Record<string, unknown>),
  };
  becomes[key] = inside;
  put(inside, inside as unknown as Entry, rest, value);
}

/**
 * The fields that were changed in the form, as the `correct` command wants them.
 * @param entry the entry as it reads now
 * @returns nothing changed gives an empty `becomes`
 */
export function readCorrection(entry: Entry, drafts: Record<string, CorrectDraft>): ReadCorrection {
  const becomes: Record<string, unknown> = {};
  for (const item of correctableOf(entry)) {
    const { field, how } = item;
    const draft = drafts[field];
    const first = draftAt(entry, item);
    if (!draft || (draft.typed.trim() === first.typed.trim() && draft.unit === first.unit)) continue;
    if (how.as === 'words') {
      put(becomes, entry, field.split('.'), draft.typed.trim());
      continue;
    }
    if (draft.typed.trim() === '') return { ok: false, field, reason: 'empty' };
    if (how.as === 'number') {
      const read = parseNumber(draft.typed);
      if (!read.ok) return { ok: false, field, reason: 'not-a-number' };
      put(becomes, entry, field.split('.'), read.value);
      continue;
    }
    const read = parseTyped<AnyUnit>(draft.typed, how.units, draft.unit ?? how.units[0]!);
    if (!read.ok) return { ok: false, field, reason: 'not-a-number' };
    put(becomes, entry, field.split('.'), read.quantity);
  }
  return { ok: true, becomes };
}

const answeredAnew = new Set<EntryType>([
  'entry-corrected',
  'bike-released',
  'release-withdrawn',
  'step-dropped',
  'clock-moved',
  'settings-changed',
  'demo-removed',
]);

/** Statements made at a moment: they are answered by a new entry, never rewritten. */
export const isAnswered = ({ type }: Pick<Entry, 'type'>): boolean => answeredAnew.has(type);
