import type { Settings } from './entries.ts';

/** Until one is chosen: metric, and the phone's own light or dark. */
export const FIRST_SETTINGS: Settings = {
  torqueUnit: 'N.m',
  pressureUnit: 'bar',
  lengthUnit: 'mm',
  temperatureUnit: 'Cel',
  distanceUnit: 'km',
  theme: 'as-the-phone',
  doer: '',
};
