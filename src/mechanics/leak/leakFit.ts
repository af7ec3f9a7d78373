import { type LawShape, type LeakLaw, lawShapes } from './leakLaws.ts';
import { type LeastSquares, leastSquares } from './leastSquares.ts';

/** One reading, brought to one temperature. */
export interface LeakReading {
  /** Hours since the first of them. */
  hours: number;
  /** Gauge pressure, bar, > 0. */
  bar: number;
  /** One standard deviation, bar, > 0. */
  sigmaBar: number;
  /** Readings of one segment have no pump-up, burp, sealant or other gauge between them. */
  segment: number;
}

/** The even measure of one law as a line in time: one slope for all segments, the height of the last one. */
export interface LeakLine {
  law: LeakLaw;
  /** Measure per hour; negative while air is lost. */
  slope: number;
  slopeSigma: number;
  /** Measure of the last segment at hour 0. */
  start: number;
  startSigma: number;
  covariance: number;
  chiSquare: number;
  spare: number;
}

const segmentsOf = (readings: readonly LeakReading[]): number[] => [
  ...new Set(readings.map(({ segment }) => segment)),
];

/** One column for the height of each segment, the last one at the end. */
export function heights(readings: readonly LeakReading[]): number[][] {
  return segmentsOf(readings).map((one) => readings.map(({ segment }) => (segment === one ? 1 : 0)));
}

function measured(readings: readonly LeakReading[], shape: LawShape) {
  const y = readings.map(({ bar }) => shape.of(bar));
  const sigmas = readings.map(({ bar, sigmaBar }) => shape.slope(bar) * sigmaBar);
  return { y, sigmas };
}

const hoursOf = (readings: readonly LeakReading[]) => readings.map(({ hours }) => hours);

/**
 * Fits one law: weighted, one slope for all segments, a height for each.
 * @param readings in the order of time
 * @returns the line, or undefined while the readings do not settle it
 * Source: ln p and its like on time with weights (slope·σ)⁻², covariance for σ known.
 */
export function leakLine(readings: readonly LeakReading[], law: LeakLaw): LeakLine | undefined {
  const columns = [...heights(readings), hoursOf(readings)];
  if (readings.length < columns.length) return undefined;
  const { y, sigmas } = measured(readings, lawShapes[law]);
  const fit = leastSquares(columns, y, sigmas);
  if (!fit) return undefined;
  const [start, slope] = fit.factors.slice(-2) as [number, number];
  const [ofStart, ofSlope] = fit.covariance.slice(-2) as [number[], number[]];
  return {
    law,
    slope,
    slopeSigma: Math.sqrt(ofSlope.at(-1)!),
    start,
    startSigma: Math.sqrt(ofStart.at(-2)!),
    covariance: ofSlope.at(-2)!,
    chiSquare: fit.chiSquare,
    spare: fit.spare,
  };
}

/** The same with a bend, for the test of curvature. */
function bent(readings: readonly LeakReading[], law: LeakLaw): LeastSquares | undefined {
  const hours = hoursOf(readings);
  const columns = [...heights(readings), hours, hours.map((hour) => hour * hour)];
  if (readings.length < columns.length) return undefined;
  const { y, sigmas } = measured(readings, lawShapes[law]);
  return leastSquares(columns, y, sigmas);
}

/**
 * By how many standard deviations the even measure of a law bends: above 0 the leak slows beyond that law, below 0 it
 * grows.
 * @returns undefined while there are too few readings for a bend
 * Source: quadratic term over its standard deviation.
 */
export function bendZ(readings: readonly LeakReading[], law: LeakLaw): number | undefined {
  const fit = bent(readings, law);
  if (!fit) return undefined;
  return fit.factors.at(-1)! / Math.sqrt(fit.covariance.at(-1)!.at(-1)!);
}

export interface IntervalRate {
  /** Loss as a share of the pressure per hour. */
  perHour: number;
  sigma: number;
  /** The hours it lies between. */
  fromHours: number;
  toHours: number;
}

/**
 * Rates between neighbouring readings of one segment: ln(p1 / p2) / Δt. Neighbours share a reading, so their errors go
 * together.
 * @example intervalRates(D2)[0].perHour //=> 0.1237
 */
export function intervalRates(readings: readonly LeakReading[]): IntervalRate[] {
  return readings.slice(1).flatMap((after, i) => {
    const before = readings[i]!;
    const span = after.hours - before.hours;
    if (after.segment !== before.segment || !(span > 0)) return [];
    const perHour = Math.log(before.bar / after.bar) / span;
    const sigma = Math.hypot(before.sigmaBar / before.bar, after.sigmaBar / after.bar) / span;
    return [{ perHour, sigma, fromHours: before.hours, toHours: after.hours }];
  });
}
