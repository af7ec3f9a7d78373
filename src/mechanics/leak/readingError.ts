import { notNegative, positive } from '../range.ts';
import { SEA_LEVEL_BAR } from './tyreAir.ts';

/** A gauge of a workshop: 0.05 bar as one standard deviation. Own proposal, on the careful side. */
export const GAUGE_SIGMA_BAR = 0.05;
/** How far a temperature that was not measured may be off, K. Own proposal. */
export const UNMEASURED_SIGMA_K = 2;

export interface ReadingErrorParts {
  gaugeBar: number;
  /** Gauge, one standard deviation, bar, > 0. */
  gaugeSigmaBar: number;
  /** Step of its scale, bar, 0 or more. */
  stepBar?: number;
  /** Temperature, one standard deviation, K, 0 or more. */
  temperatureSigmaK?: number;
}

/**
 * How far one reading, brought to one temperature, may be off.
 * @returns one standard deviation, bar
 * @throws RangeError when a figure is negative
 * Source: GUM (JCGM 100) F.2.2.1 for the step of a scale, from memory; dp/dT = P/T for the temperature.
 * @example readingSigmaBar({ gaugeBar: 2.5, gaugeSigmaBar: 0.05 }) //=> 0.05
 */
export function readingSigmaBar(parts: ReadingErrorParts): number {
  const { gaugeBar, gaugeSigmaBar, stepBar = 0, temperatureSigmaK = 0 } = parts;
  positive({ gaugeSigmaBar });
  notNegative({ gaugeBar, stepBar, temperatureSigmaK });
  const ofTemperature = ((gaugeBar + SEA_LEVEL_BAR) / 293.15) * temperatureSigmaK;
  return Math.hypot(gaugeSigmaBar, stepBar / Math.sqrt(12), ofTemperature);
}

/**
 * Smallest drop between two readings that is more than reading error, one-sided 95 %.
 * @example provableDropBar(0.05) //=> 0.1163
 */
export function provableDropBar(sigmaBar: number): number {
  positive({ sigmaBar });
  return 1.645 * Math.SQRT2 * sigmaBar;
}

/**
 * Whether a drop over one ride is more than reading error. Both readings brought to one temperature before.
 * @example dropIsProvable(1.8, 1.62, 0.05) //=> true
 */
export const dropIsProvable = (beforeBar: number, afterBar: number, sigmaBar: number): boolean =>
  beforeBar - afterBar > provableDropBar(sigmaBar);
