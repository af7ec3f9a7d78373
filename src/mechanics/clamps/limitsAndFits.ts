import { finite } from '../range.ts';
import type { Known } from '../working.ts';

/** One size step of ISO 286: over (not including) … up to (including), mm. */
export interface ToleranceStep {
  readonly overMm: number;
  readonly upToMm: number;
  /** Standard tolerances, µm, by grade (7 for IT7). */
  readonly gradeUm: Readonly<Record<number, number>>;
  /** Fundamental deviation of shafts, µm: the upper one for a to h, the lower one for k to zc. */
  readonly shaftUm: Readonly<Record<string, number>>;
  /** Lower deviation of the shafts j5 to j7, and upper one of the holes J6 to J8, µm, by grade: they follow no rule. */
  readonly jShaftUm: Readonly<Record<number, number>>;
  readonly jHoleUm: Readonly<Record<number, number>>;
  /** Tolerance classes of this step that were read in a public copy of the tables. */
  readonly seen: readonly string[];
}

/** Deviations from the nominal size, µm. */
export interface Limits {
  ok: true;
  upperUm: number;
  lowerUm: number;
  known: Known;
}

export type LimitsRefusal =
  | 'not-a-class'
  | 'size-outside-table'
  | 'letter-not-in-table'
  | 'grade-not-in-table';

/** The step a size belongs to: 50.00 mm is in 30 to 50, 50.01 mm is not. */
const toleranceStepOf = (steps: readonly ToleranceStep[], sizeMm: number) =>
  steps.find((step) => sizeMm > step.overMm && sizeMm <= step.upToMm);

/** js and JS lie half above the nominal size and half below; j and J a little off that, by a table of their own. */
function straddles(step: ToleranceStep, letter: string, hole: boolean, grade: number, toleranceUm: number) {
  if (letter === 'js') return [toleranceUm / 2, -toleranceUm / 2] as const;
  const edge = (hole ? step.jHoleUm : step.jShaftUm)[grade];
  if (edge === undefined) return null;
  return hole ? ([edge, edge - toleranceUm] as const) : ([edge + toleranceUm, edge] as const);
}

function shaftLimits(step: ToleranceStep, letter: string, grade: number, toleranceUm: number) {
  const deviation = step.shaftUm[letter]!;
  if (letter <= 'h') return [deviation, deviation - toleranceUm] as const;
  // k is only lifted off the nominal line in grades 4 to 7.
  const lower = letter === 'k' && (grade < 4 || grade > 7) ? 0 : deviation;
  return [lower + toleranceUm, lower] as const;
}

function holeLimits(step: ToleranceStep, letter: string, grade: number, toleranceUm: number) {
  const deviation = step.shaftUm[letter]!;
  if (letter <= 'h') return [-deviation + toleranceUm, -deviation] as const;
  const finer = step.gradeUm[grade - 1];
  const corrected = grade <= (letter < 'p' ? 8 : 7);
  // Loose K, M, N holes follow rules of their own that a bicycle does not need.
  if (finer === undefined || (!corrected && letter < 'p')) return null;
  const delta = corrected && step.overMm >= 3 ? toleranceUm - finer : 0;
  const upper = -deviation + delta;
  return [upper, upper - toleranceUm] as const;
}

/**
 * Limits of a tolerance class, ISO 286: capital letters are holes, small letters shafts.
 * Holes from K on mirror the shaft of the same letter and are lifted by the difference to the next finer
 * grade, so that H7/p6 and P7/h6 fit alike.
 * @param steps the table of size steps
 * @param nominalMm nominal size, mm
 * @param toleranceClass for example 'H7' or 'k6'
 * @throws RangeError when the size is not finite
 * Source: ISO 286-1 rule (from memory), confirmed by the hole rows M7, N7, R7 read in public tables.
 * @example limits(isoFits, 44, 'H7') //=> { ok: true, upperUm: 25, lowerUm: 0, known: 'seen' }
 */
export function limits(
  steps: readonly ToleranceStep[],
  nominalMm: number,
  toleranceClass: string,
): Limits | { ok: false; reason: LimitsRefusal } {
  finite({ nominalMm });
  const match = /^(js|JS|[A-Za-z])(\d{1,2})$/.exec(toleranceClass);
  if (!match) return { ok: false, reason: 'not-a-class' };
  const step = toleranceStepOf(steps, nominalMm);
  if (!step) return { ok: false, reason: 'size-outside-table' };
  const letter = match[1]!.toLowerCase();
  const grade = Number(match[2]);
  const straddling = letter === 'j' || letter === 'js';
  if (!straddling && step.shaftUm[letter] === undefined) return { ok: false, reason: 'letter-not-in-table' };
  const toleranceUm = step.gradeUm[grade];
  if (toleranceUm === undefined) return { ok: false, reason: 'grade-not-in-table' };
  const hole = letter !== match[1];
  const of = hole ? holeLimits : shaftLimits;
  const pair = straddling
    ? straddles(step, letter, hole, grade, toleranceUm)
    : of(step, letter, grade, toleranceUm);
  if (!pair) return { ok: false, reason: 'grade-not-in-table' };
  // Adding zero keeps a mirrored zero from becoming minus zero.
  const [upperUm, lowerUm] = [pair[0] + 0, pair[1] + 0];
  return { ok: true, upperUm, lowerUm, known: step.seen.includes(toleranceClass) ? 'seen' : 'memory' };
}

export interface ToleranceFit {
  /** Diametral interference, µm; negative is play. */
  mostUm: number;
  leastUm: number;
  kind: 'clearance' | 'transition' | 'interference';
}

/**
 * What a hole and a shaft of one nominal size make together.
 * @example fitTogether({ upperUm: 25, lowerUm: 0 }, { upperUm: 42, lowerUm: 26 }) //=> mostUm 42, leastUm 1, 'interference'
 */
export function fitTogether(
  hole: Pick<Limits, 'upperUm' | 'lowerUm'>,
  shaft: Pick<Limits, 'upperUm' | 'lowerUm'>,
): ToleranceFit {
  const mostUm = shaft.upperUm - hole.lowerUm;
  const leastUm = shaft.lowerUm - hole.upperUm;
  const kind = leastUm > 0 ? 'interference' : mostUm <= 0 ? 'clearance' : 'transition';
  return { mostUm, leastUm, kind };
}
