import type { Reading } from '../journal/entries.ts';
import { parseNumber } from '../mechanics/quantity.ts';
import type { PressureUnit, TemperatureUnit, VolumeUnit } from '../mechanics/units.ts';

/** What is being typed at the wheel, mirrored until it is logged. */
export interface SealDraft {
  pressure: string;
  pressureUnit?: PressureUnit;
  temperature: string;
  below: boolean;
  temperatureUnit?: TemperatureUnit;
  gauge?: string;
  amount: string;
  amountUnit: VolumeUnit;
  sealantKind?: string;
}

export const noSealDraft: SealDraft = {
  pressure: '',
  temperature: '',
  below: false,
  amount: '',
  amountUnit: 'mL',
};

export interface TypedReading {
  reading: Reading;
  /** Nothing typed at all. */
  empty: boolean;
}

/**
 * The reading as typed, or the field that cannot be taken.
 * @param units those of the settings, where none was chosen at the pad
 * @example readingTyped({ ...noSealDraft, pressure: '2,35' }, { pressure: 'bar', temperature: 'Cel' })
 *   //=> { ok: true, reading: { pressure: { value: 2.35, unit: 'bar', typed: '2,35' } }, empty: false }
 */
export function readingTyped(
  draft: SealDraft,
  units: { pressure: PressureUnit; temperature: TemperatureUnit },
): ({ ok: true } & TypedReading) | { ok: false; wrong: 'pressure' | 'temperature' } {
  const reading: Reading = {};
  if (draft.pressure !== '') {
    const pressure = parseNumber(draft.pressure);
    if (!pressure.ok) return { ok: false, wrong: 'pressure' };
    const unit = draft.pressureUnit ?? units.pressure;
    reading.pressure = { value: pressure.value, unit, typed: pressure.typed };
  }
  if (draft.temperature !== '') {
    // The keypad has no sign; "below zero" is a key of its own.
    const temperature = parseNumber(`${draft.below ? '-' : ''}${draft.temperature}`, 'allow');
    if (!temperature.ok) return { ok: false, wrong: 'temperature' };
    const unit = draft.temperatureUnit ?? units.temperature;
    reading.temperature = { value: temperature.value, unit, typed: temperature.typed };
  }
  const gauge = draft.gauge?.trim();
  if (gauge) reading.gauge = gauge;
  return { ok: true, reading, empty: !reading.pressure && !reading.temperature };
}
