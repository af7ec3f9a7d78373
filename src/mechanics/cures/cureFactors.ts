import { type Band, band } from '../band.ts';
import type { Known } from '../working.ts';
import { type CureCurve, coldFactor, hoursToReach } from './cureCurve.ts';

/** Strength at which a joint may be ridden, per cent. */
export const RIDE_PERCENT = 75;
const REFERENCE_C = 22;
const REFERENCE_GAP_MM = 0.05;

/** One surface; without a curve the adhesive does not cure on it, or does harm. */
export interface CureSurfaceRow {
  readonly label: string;
  readonly curve: CureCurve | null;
  readonly plastic?: boolean;
}

/** The table a cure is read from; the rows live with the standards. */
export interface CureGrid {
  /** By surface; null where the adhesive does not cure, or does harm. */
  readonly surfaces: Readonly<Record<string, CureSurfaceRow>>;
  /** The curve all factors are relative to: bare steel, tight, at 22 °C. */
  readonly reference: CureCurve;
  /** The same joint with wider gaps, tightest first. */
  readonly gaps: readonly { readonly gapMm: number; readonly curve: CureCurve }[];
  /** The same joint at other temperatures, coldest first. */
  readonly temperatures: readonly { readonly temperatureC: number; readonly curve: CureCurve }[];
  /** Any metal, primed. */
  readonly primed: CureCurve;
  readonly source: string;
  readonly known: Known;
}

/** One factor between two known points, on a log scale; held at the last known point beyond them. */
function between(points: readonly (readonly [at: number, factor: number])[], at: number): number {
  const rising = [...points].sort((a, b) => a[0] - b[0]);
  const above = rising.findIndex((point) => point[0] >= at);
  if (above === -1) return rising.at(-1)![1];
  const upper = rising[above]!;
  const lower = rising[above - 1];
  if (!lower) return upper[1];
  return lower[1] * (upper[1] / lower[1]) ** ((at - lower[0]) / (upper[0] - lower[0]));
}

/**
 * Hours to riding strength on one curve, its likeliest figure.
 * @throws RangeError when the curve never reaches it
 * @example rideTimeHours({ atHours: [1, 3], percent: [[50, 50], [75, 75]] }) //=> 3
 */
export const rideTimeHours = (curve: CureCurve): number => {
  const hours = hoursToReach(curve, RIDE_PERCENT);
  if (!hours) throw new RangeError('a gap or temperature curve that never reaches riding strength');
  return hours.mid;
};

/**
 * Slow-down by temperature. Two witnesses that differ in the cold, the rule of thumb and the grid, span the band.
 * @example temperatureFactor(cureGrid, 22) //=> { lo: 1, mid: 1, hi: 1 }
 */
export function temperatureFactor(grid: CureGrid, temperatureC: number): Band {
  const reference = rideTimeHours(grid.reference);
  const points = grid.temperatures.map(
    (row) => [row.temperatureC, rideTimeHours(row.curve) / reference] as const,
  );
  const hottest = Math.max(...points.map(([at]) => at));
  // Beyond the hottest known point nothing quicker is promised.
  const rule = coldFactor(Math.min(temperatureC, hottest));
  const table = between([...points, [REFERENCE_C, 1]], temperatureC);
  const lo = Math.min(rule, table);
  const hi = Math.max(rule, table);
  return band(lo, Math.min(hi, Math.max(lo, Math.sqrt(lo * hi))), hi);
}

/** Slow-down by the diametral gap, mm, ≥ 0. @example gapFactor(cureGrid, 0.05) //=> 1 */
export function gapFactor(grid: CureGrid, gapMm: number): number {
  const reference = rideTimeHours(grid.reference);
  const points = grid.gaps.map((row) => [row.gapMm, rideTimeHours(row.curve) / reference] as const);
  return between([[REFERENCE_GAP_MM, 1], ...points], Math.max(gapMm, REFERENCE_GAP_MM));
}
