import { parseNumber, parseTyped, type QuantityRefusal } from '../../mechanics/quantity.ts';
import { convert, type LengthUnit, pressureBar, unitsOf } from '../../mechanics/units.ts';
import type { DimensionRow } from '../../standards/faces/faceKind.ts';
import type { FaceKind } from '../../standards/faces/faceKinds.ts';
import { CALIPER_UNCERTAINTY_MM, type Measured } from './face.ts';
import { dimensionOf } from './plausible.ts';

export type DimensionRefusal =
  | QuantityRefusal
  | 'no-such-dimension'
  | 'not-a-whole-number'
  | 'decimal-point-slipped'
  | 'inches-meant'
  | 'centimetres-meant'
  | 'impossible';

export type DimensionReading =
  | { ok: true; measured: Measured }
  | {
      ok: false;
      reason: DimensionRefusal;
      /** What was probably meant, in the unit of the dimension; null when nothing plausible is near. */
      suggestion: number | null;
      /** Least and greatest plausible value. */
      range: readonly [min: number, max: number] | null;
    };

/** Decimal slips worth proposing, nearest first: one place, two places. */
const slips = [0.1, 10, 0.01, 100];

/** "1 1/8" and "1-1/8" in inches, as tubes and bars are still called. */
function fractionInches(text: string): number | undefined {
  const parts = /^\s*(?:(\d{1,2})[\s-]+)?(\d{1,2})\s*[/⁄]\s*(\d{1,3})\s*(?:in|inch|inches|"|″)?\s*$/i.exec(
    text,
  );
  if (!parts) return undefined;
  const denominator = Number(parts[3]);
  return denominator === 0 ? undefined : Number(parts[1] ?? 0) + Number(parts[2]) / denominator;
}

const tidy = (value: number): number => Math.round(value * 1000) / 1000;

function checkedReading(
  row: DimensionRow,
  value: number,
  unit: Measured['unit'],
  typed: string,
): DimensionReading {
  const length = unit !== '1' && unit !== 'bar';
  const inRow = length ? convert<LengthUnit>(value, unit, 'mm') : value;
  const plausible = (candidate: number): boolean => candidate >= row.min && candidate <= row.max;
  const range = [row.min, row.max] as const;
  if (plausible(inRow)) {
    const counted = row.key.endsWith('Count');
    if (counted && !Number.isInteger(value))
      return { ok: false, reason: 'not-a-whole-number', suggestion: Math.round(value), range };
    const uncertaintyMm = length ? CALIPER_UNCERTAINTY_MM : 0;
    return { ok: true, measured: { value, unit, typed, uncertaintyMm } };
  }
  const refused = (reason: DimensionRefusal, suggestion: number | null): DimensionReading => ({
    ok: false,
    reason,
    suggestion: suggestion === null ? null : tidy(suggestion),
    range,
  });
  if (unit === 'mm') {
    // 2.86 may be centimetres or a slipped point: the size is the same. 1.125 can only have been inches.
    if (value < row.min && /[.,]/.test(typed) && plausible(value * 25.4) && !plausible(value * 10))
      return refused('inches-meant', value * 25.4);
    if (value < row.min && plausible(value * 10)) return refused('centimetres-meant', value * 10);
    if (value < row.min && plausible(value * 25.4)) return refused('inches-meant', value * 25.4);
  }
  const slip = slips.find((factor) => plausible(inRow * factor));
  return slip === undefined ? refused('impossible', null) : refused('decimal-point-slipped', inRow * slip);
}

/**
 * A dimension as it was typed at the bench: a comma or a point, mm unless said otherwise, inches also as
 * fractions. A value no bicycle part has is refused, with what was probably meant.
 * @param key dimension of that kind of face
 * @param text as typed
 * @returns the measurement with the caliper's band, or a named reason with a suggestion
 * @example readDimension('steerer', 'diameterMm', '286') //=> { ok: false, reason: 'decimal-point-slipped',
 * suggestion: 28.6, … }
 */
export function readDimension(kind: FaceKind, key: string, text: string): DimensionReading {
  const row = dimensionOf(kind, key);
  if (!row) return { ok: false, reason: 'no-such-dimension', suggestion: null, range: null };
  const range = [row.min, row.max] as const;
  const typed = text.trim();
  if (key.endsWith('Count')) {
    const parsed = parseNumber(text);
    if (!parsed.ok) return { ok: false, reason: parsed.reason, suggestion: null, range };
    return checkedReading(row, parsed.value, '1', typed);
  }
  if (key.endsWith('Bar')) {
    const parsed = parseTyped(text, unitsOf.pressure, 'bar');
    if (!parsed.ok) return { ok: false, reason: parsed.reason, suggestion: null, range };
    return checkedReading(row, pressureBar(parsed.quantity.value, parsed.quantity.unit), 'bar', typed);
  }
  const inches = fractionInches(text);
  if (inches !== undefined) return checkedReading(row, inches, '[in_i]', typed);
  const parsed = parseTyped(text, unitsOf.length, 'mm');
  if (!parsed.ok) return { ok: false, reason: parsed.reason, suggestion: null, range };
  return checkedReading(row, parsed.quantity.value, parsed.quantity.unit, typed);
}
