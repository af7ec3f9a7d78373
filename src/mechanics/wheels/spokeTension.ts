import { inRange } from '../range.ts';
import type { Known } from '../working.ts';

/** How evenly one side of a wheel is tensioned. */
export interface TensionSpread {
  count: number;
  meanN: number;
  /** of the sample, n − 1; null for a single reading */
  deviationN: number | null;
  /** deviation over mean, percent; null for a single reading */
  scatterPercent: number | null;
  leastN: number;
  mostN: number;
  /** each reading against the mean of its side, percent, in the order given */
  awayPercent: number[];
  /** greatest of them upward, and downward (0 or below) */
  mostAbovePercent: number;
  mostBelowPercent: number;
}

export type SpreadAnswer =
  | { ok: true; spread: TensionSpread }
  | { ok: false; reason: 'no-readings' | 'negative-reading' | 'not-a-number' | 'all-slack' };

/**
 * Mean and scatter of the readings of one side. Never mix both sides of a dished wheel: their means differ by
 * design, and the mix would hide what is uneven.
 * @param readingsN spoke tensions, N, in spoke order; 0 is a slack spoke
 * Source: sample statistics.
 * @example tensionSpread([1000, 1100]) //=> mean 1050, 4.76 % above, −4.76 % below
 */
export function tensionSpread(readingsN: readonly number[]): SpreadAnswer {
  if (readingsN.length === 0) return { ok: false, reason: 'no-readings' };
  // A gauge reading of a hundred kilonewtons is no number either, and keeps sums finite.
  if (!readingsN.every((n) => Number.isFinite(n) && n < 1e5)) return { ok: false, reason: 'not-a-number' };
  if (readingsN.some((n) => n < 0)) return { ok: false, reason: 'negative-reading' };
  const count = readingsN.length;
  const meanN = readingsN.reduce((sum, n) => sum + n, 0) / count;
  if (meanN === 0) return { ok: false, reason: 'all-slack' };
  const squares = readingsN.reduce((sum, n) => sum + (n - meanN) ** 2, 0);
  const deviationN = count > 1 ? Math.sqrt(squares / (count - 1)) : null;
  // Difference first: 5 % away is 5, not a last bit more.
  const awayPercent = readingsN.map((n) => (100 * (n - meanN)) / meanN);
  return {
    ok: true,
    spread: {
      count,
      meanN,
      deviationN,
      scatterPercent: deviationN === null ? null : (100 * deviationN) / meanN,
      leastN: Math.min(...readingsN),
      mostN: Math.max(...readingsN),
      awayPercent,
      mostAbovePercent: Math.max(...awayPercent),
      mostBelowPercent: Math.min(...awayPercent),
    },
  };
}

/** How many readings lie within a limit of their side's mean. @param limitPercent above 0 @example countWithin(spread, 10) //=> 36 */
export function countWithin(spread: TensionSpread, limitPercent: number): number {
  inRange('limitPercent', limitPercent, 0, 100);
  return spread.awayPercent.filter((percent) => Math.abs(percent) <= limitPercent).length;
}

export type Balance = 'very-even' | 'even' | 'serviceable' | 'uneven';

/** Greatest deviation from the side's mean for each word, percent. */
const BALANCE_LIMITS: { balance: Balance; percent: number; source: string; known: Known }[] = [
  { balance: 'very-even', percent: 5, source: 'wheelbuilder’s article on tension balance', known: 'seen' },
  { balance: 'even', percent: 10, source: 'dissertation on bicycle wheels, test wheels', known: 'seen' },
  { balance: 'serviceable', percent: 20, source: 'usual service limit of gauge makers', known: 'memory' },
];

/** Up to here a spoke is even with its side, percent. */
export const EVEN_PERCENT = BALANCE_LIMITS.find(({ balance }) => balance === 'even')!.percent;

/** The word for a side's worst spoke. @example judgeBalance(spread) //=> 'even' */
export function judgeBalance(spread: TensionSpread): Balance {
  const worst = Math.max(spread.mostAbovePercent, -spread.mostBelowPercent);
  return BALANCE_LIMITS.find(({ percent }) => worst <= percent)?.balance ?? 'uneven';
}
