import { type Band, band } from '../band.ts';
import { positive } from '../range.ts';

/**
 * Tightening factor αA = Fmax/Fmin of a symmetric scatter ±u: (1 + u)/(1 − u).
 * @param scatter fraction, 0 ≤ u < 1
 * @throws RangeError when out of range
 * @example tighteningFactor(0.25) //=> 1.666…
 */
export function tighteningFactor(scatter: number): number {
  if (!(scatter >= 0 && scatter < 1)) throw new RangeError(`scatter must be 0 ≤ u < 1: ${scatter}`);
  return (1 + scatter) / (1 - scatter);
}

/**
 * Symmetric scatter of a tightening factor: u = (αA − 1)/(αA + 1).
 * @param factor αA, ≥ 1
 * @throws RangeError when below 1
 * @example scatterOfFactor(1.6) //=> 0.2307…
 */
export function scatterOfFactor(factor: number): number {
  if (!(factor >= 1 && Number.isFinite(factor))) throw new RangeError(`factor must be at least 1: ${factor}`);
  return (factor - 1) / (factor + 1);
}

/**
 * The band below a greatest preload: Fmin = Fmax/αA, with the middle halfway.
 * @example preloadBelowMaximumN(41900, 1.8) //=> lo 23 278, hi 41 900
 */
export function preloadBelowMaximumN(maximumN: number, factor: number): Band {
  positive({ maximumN });
  scatterOfFactor(factor);
  const leastN = maximumN / factor;
  return band(leastN, (leastN + maximumN) / 2, maximumN);
}
