import { type LeastSquares, leastSquares } from './leastSquares.ts';

export interface SettlingFit extends LeastSquares {
  /** How fast it settles, for each unit of x; 1 / τ. */
  perX: number;
  /** One standard deviation of that, for the sigmas given. */
  perXSigma: number;
}

/** How finely the first look at the rate goes, for each factor of ten. */
const LOOKS_A_DECADE = 24;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Fits y ≈ Σ factor·column + D·(1 − e^(−b·x)): a leak that seals, on top of what stays.
 * @param columns what stays, one array for each factor; may be empty
 * @param x times, of which the largest is > 0
 * @param y readings
 * @param sigmas one standard deviation of each, > 0
 * @returns factors, D last, and b; undefined when no rate fits better than the ends of the range looked at
 * Source: separable least squares (linear factors solved for each rate, the rate searched), textbook; checked against
 * NIST StRD BoxBOD and Misra1a.
 */
export function settlingFit(
  columns: readonly (readonly number[])[],
  x: readonly number[],
  y: readonly number[],
  sigmas: readonly number[],
): SettlingFit | undefined {
  const most = Math.max(...x);
  const least = Math.min(...x.filter((value) => value > 0));
  const at = (perX: number) =>
    leastSquares([...columns, x.map((value) => -Math.expm1(-perX * value))], y, sigmas);
  const leftOver = (log: number) => at(Math.exp(log))?.chiSquare ?? Number.POSITIVE_INFINITY;
  const [from, to] = [Math.log(0.01 / most), Math.log(20 / least)];
  const looks = Math.ceil(((to - from) / Math.LN10) * LOOKS_A_DECADE);
  let best = 0;
  let lowest = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= looks; i++) {
    const value = leftOver(from + ((to - from) * i) / looks);
    if (value < lowest) [best, lowest] = [i, value];
  }
  if (best === 0 || best === looks) return undefined;
  const step = (to - from) / looks;
  const perX = Math.exp(lowestBetween(leftOver, from + step * (best - 1), from + step * (best + 1)));
  const fit = at(perX);
  if (!fit) return undefined;
  const d = fit.factors.at(-1)!;
  // The rate beside the linear factors: its column is the slope of the curve with the rate.
  const whole = leastSquares(
    [
      ...columns,
      x.map((value) => -Math.expm1(-perX * value)),
      x.map((value) => d * value * Math.exp(-perX * value)),
    ],
    y,
    sigmas,
  );
  if (!whole) return undefined;
  const { covariance } = whole;
  return { ...fit, covariance, perX, perXSigma: Math.sqrt(covariance.at(-1)!.at(-1)!) };
}

/** Where a function with one low point between two ends is lowest, by golden section. */
function lowestBetween(of: (x: number) => number, from: number, to: number): number {
  let [a, b] = [from, to];
  let [c, d] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
  let [atC, atD] = [of(c), of(d)];
  // As fine as the flat bottom of a sum of squares can be told.
  for (let turn = 0; turn < 40; turn++) {
    if (atC < atD) {
      [b, d, atD] = [d, c, atC];
      c = b - GOLDEN * (b - a);
      atC = of(c);
    } else {
      [a, c, atC] = [c, d, atD];
      d = a + GOLDEN * (b - a);
      atD = of(d);
    }
  }
  return (a + b) / 2;
}
