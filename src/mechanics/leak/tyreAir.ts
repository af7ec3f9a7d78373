import { inRange, notNegative } from '../range.ts';

/** Air pressure at sea level, bar. Source: US Standard Atmosphere 1976. */
export const SEA_LEVEL_BAR = 1.01325;
const ZERO_C_IN_K = 273.15;

/**
 * Air pressure at a height, bar.
 * @param heightM above the sea, 0 to 11 000
 * @throws RangeError outside
 * Source: US Standard Atmosphere 1976, troposphere: 101325·(1 − 0.0065·h / 288.15)^5.2559 Pa.
 * @example atmosphereBar(1000) //=> 0.8987…
 */
export function atmosphereBar(heightM: number): number {
  inRange('heightM', heightM, 0, 11_000);
  return SEA_LEVEL_BAR * (1 - (0.0065 * heightM) / 288.15) ** 5.2559;
}

/**
 * What a gauge would show at another temperature with the same air in the tyre: (p + Pa)·T2 / T1 − Pa.
 * @param gaugeBar as read, 0 or more
 * @param fromC temperature of the air in the tyre as it was read, −60 to 80
 * @param toC temperature asked for
 * @param airBar air pressure around it
 * @returns bar on the gauge, never below 0
 * @throws RangeError outside
 * Source: gas of constant volume, absolute pressure over absolute temperature.
 * @example atTemperatureBar(2.5, 20, 5) //=> 2.3202…
 */
export function atTemperatureBar(
  gaugeBar: number,
  fromC: number,
  toC: number,
  airBar = SEA_LEVEL_BAR,
): number {
  notNegative({ gaugeBar });
  inRange('fromC', fromC, -60, 80);
  inRange('toC', toC, -60, 80);
  const absolute = ((gaugeBar + airBar) * (toC + ZERO_C_IN_K)) / (fromC + ZERO_C_IN_K);
  return Math.max(0, absolute - airBar);
}

/**
 * What is left on the gauge after a check: the hose is filled from the tyre each time.
 * @param gaugeBar before, 0 or more
 * @param tyreL air in the tyre, litres, > 0
 * @param hoseMl air in the hose, mL, 0 or more
 * @param checks how often
 * Source: two volumes joined at one temperature, the hose at air pressure before.
 * @example afterChecksBar(6, 1.257, 30, 1) //=> 5.860…
 */
export function afterChecksBar(gaugeBar: number, tyreL: number, hoseMl: number, checks: number): number {
  notNegative({ gaugeBar, hoseMl, checks });
  inRange('tyreL', tyreL, 0.01, 100);
  return gaugeBar * (tyreL / (tyreL + hoseMl / 1000)) ** checks;
}
