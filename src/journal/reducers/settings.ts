import type { Entry, Settings } from '../entries.ts';
import type { SettingsRow } from '../rows.ts';

/** Until somebody chooses: metric, and the phone's own light or dark. */
export const FIRST_SETTINGS: Settings = {
  torqueUnit: 'N.m',
  pressureUnit: 'bar',
  lengthUnit: 'mm',
  temperatureUnit: 'Cel',
  distanceUnit: 'km',
  theme: 'as-the-phone',
  doer: '',
};

export function reduceSettings(row: SettingsRow | undefined, entry: Entry): SettingsRow | undefined {
  if (entry.type !== 'settings-changed') return row;
  const settings = { ...(row?.settings ?? FIRST_SETTINGS), ...entry.change };
  return { key: 'settings/app', is: 'settings', settings, lastMs: entry.happenedAtMs };
}
