import { CALIPER_UNCERTAINTY_MM, type Measured } from '../fit/faces/face.ts';
import { type DimensionRefusal, readDimension } from '../fit/faces/readDimension.ts';
import { parseNumber, parseTyped } from '../mechanics/quantity.ts';
import {
  convert,
  type LengthUnit,
  type PressureUnit,
  pressureBar,
  unitLabel,
  unitsOf,
} from '../mechanics/units.ts';
import type { FaceKind } from '../standards/faces/faceKinds.ts';

export type SizeUnit = LengthUnit | PressureUnit;

/** One size as it stands in the form. */
export interface SizeDraft {
  typed: string;
  /** Undefined for a count. */
  unit?: SizeUnit | undefined;
  /** Read from a stamp or a catalogue, not measured. */
  printed?: boolean;
}

export type ReadSize =
  | { is: 'empty' }
  | { is: 'good'; measured: Measured }
  /** A number, though no likely one: kept as typed, with what was probably meant. */
  | { is: 'doubt'; measured: Measured; sentence: string; suggestion: SizeDraft | undefined }
  | { is: 'wrong'; sentence: string };

/** The units a size may be typed in. @example unitsFor('boreMm') //=> ['mm', '[in_i]', 'cm'] */
export function unitsFor(key: string): readonly SizeUnit[] {
  if (key.endsWith('Count')) return [];
  return key.endsWith('Bar') ? unitsOf.pressure : unitsOf.length;
}

const wrong: Partial<Record<DimensionRefusal, string>> = {
  'not-a-number': 'That is not a number. Digits, with a comma or a point.',
  'two-separators': 'One comma or point only.',
  negative: 'A size cannot be negative. Type it again.',
  'not-finite': 'That is not a size. Measure it and type the number.',
  'unknown-unit': 'Which unit is that? Type the number alone and choose the unit.',
  'unit-of-another-kind': 'Wrong unit for this size.',
  'not-a-whole-number': 'Count them: a whole number.',
};

const doubts: Partial<Record<DimensionRefusal, (size: string) => string>> = {
  'decimal-point-slipped': (size) => `${size} looks wrong. Check the decimal point.`,
  'inches-meant': (size) => `${size} looks wrong. Was it in inches?`,
  'centimetres-meant': (size) => `${size} looks wrong. Was it in centimetres?`,
  impossible: (size) => `${size} is far from any part like this. Measure once more.`,
};

const withUnit = ({ typed, unit }: SizeDraft) =>
  unit === undefined || unit === 'mm' || unit === 'bar' || /[\p{L}"″]/u.test(typed)
    ? typed.trim()
    : `${typed.trim()} ${unitLabel[unit]}`;

/** A number out of the likely range, as a measurement all the same. */
function asTyped(key: string, size: SizeDraft): Measured | undefined {
  const typed = withUnit(size);
  if (key.endsWith('Count')) {
    const count = parseNumber(typed);
    return count.ok ? { value: count.value, unit: '1', typed, uncertaintyMm: 0 } : undefined;
  }
  if (key.endsWith('Bar')) {
    const pressure = parseTyped(typed, unitsOf.pressure, 'bar');
    if (!pressure.ok) return undefined;
    const { value, unit } = pressure.quantity;
    return { value: pressureBar(value, unit), unit: 'bar', typed, uncertaintyMm: 0 };
  }
  const length = parseTyped(typed, unitsOf.length, 'mm');
  return length.ok ? { ...length.quantity, typed, uncertaintyMm: CALIPER_UNCERTAINTY_MM } : undefined;
}

/**
 * Reads a size as it was typed. A slip of the finger is asked about and kept as typed; only what is no number
 * cannot be kept.
 * @example readSize('steerer', 'diameterMm', { typed: '286', unit: 'mm' }).is //=> 'doubt'
 */
export function readSize(kind: FaceKind, key: string, size: SizeDraft): ReadSize {
  if (size.typed.trim() === '') return { is: 'empty' };
  const read = readDimension(kind, key, withUnit(size));
  if (read.ok) return { is: 'good', measured: { ...read.measured, typed: withUnit(size) } };
  const measured = asTyped(key, size);
  const doubt = doubts[read.reason];
  if (!doubt || !measured)
    return { is: 'wrong', sentence: wrong[read.reason] ?? 'That cannot be read as a size.' };
  const unit = unitsFor(key)[0];
  const comma = size.typed.includes(',');
  const meant = read.suggestion === null ? undefined : String(read.suggestion);
  const bare = size.typed.trim();
  const withOwnUnit = /[\p{L}"″]$/u.test(bare) || !size.unit ? bare : `${bare} ${unitLabel[size.unit]}`;
  return {
    is: 'doubt',
    measured,
    sentence: doubt(withOwnUnit),
    suggestion: meant === undefined ? undefined : { typed: comma ? meant.replace('.', ',') : meant, unit },
  };
}

/** A printed size in the unit its key ends in. */
export function printedSize({ value, unit }: Measured): number {
  return unit === '1' || unit === 'bar' ? value : convert<LengthUnit>(value, unit, 'mm');
}
