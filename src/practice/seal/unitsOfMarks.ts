import type { SealMark } from '../../journal/entries.ts';
import type { PressureUnit, TemperatureUnit } from '../../mechanics/units.ts';

/**
 * The units in which a wheel was read last, so that the next number is typed in the unit of the last one and not in another.
 * @param marks oldest first
 * @returns only the units that were used
 * @example unitsOfMarks([]) //=> {}
 */
export function unitsOfMarks(marks: readonly SealMark[]): {
  pressureUnit?: PressureUnit;
  temperatureUnit?: TemperatureUnit;
} {
  const readings = marks.flatMap((mark) => ('reading' in mark && mark.reading ? [mark.reading] : []));
  const pressureUnit = readings.findLast(({ pressure }) => pressure)?.pressure?.unit;
  const temperatureUnit = readings.findLast(({ temperature }) => temperature)?.temperature?.unit;
  return { ...(pressureUnit ? { pressureUnit } : {}), ...(temperatureUnit ? { temperatureUnit } : {}) };
}
