import { notNegative, positive } from '../range.ts';

/** What a torque tool's kind promises; the figures come from its class. */
export interface ToolTolerance {
  /** Fraction of the reading, up to and including 10 N·m of full scale. */
  upTo10Nm: number;
  /** Fraction of the reading above. */
  above10Nm: number;
  /** Fraction of full scale under which nothing is promised. */
  usableFrom: number;
}

/** One tool in the drawer. */
export interface TorqueTool {
  minNm: number;
  maxNm: number;
  tolerance: ToolTolerance;
}

export type ToolDoubt = 'above-full-scale' | 'below-its-scale' | 'below-a-fifth-of-full-scale';

/**
 * Whether a tool can be trusted at a setting.
 * @param settingNm N·m, > 0
 * @returns the error to reckon with as a fraction, or a named doubt; below the usable part of the scale no error is promised
 * @throws RangeError when the tool's scale makes no sense
 * Source: ISO 6789 (from memory): error in per cent of the reading, promised from 20 % of full scale up.
 * @example toolAtSetting({ minNm: 40, maxNm: 200, tolerance: click }, 5) //=> { ok: false, reason: 'below-its-scale' }
 */
export function toolAtSetting(
  tool: TorqueTool,
  settingNm: number,
): { ok: true; error: number } | { ok: false; reason: ToolDoubt } {
  const { minNm, maxNm, tolerance } = tool;
  positive({ settingNm, maxNm });
  notNegative({ minNm });
  if (minNm > maxNm) throw new RangeError(`scale from ${minNm} to ${maxNm}`);
  if (settingNm > maxNm) return { ok: false, reason: 'above-full-scale' };
  if (settingNm < minNm) return { ok: false, reason: 'below-its-scale' };
  // A tool with one fixed torque has no scale to be at the bottom of.
  if (minNm < maxNm && settingNm < tolerance.usableFrom * maxNm)
    return { ok: false, reason: 'below-a-fifth-of-full-scale' };
  return { ok: true, error: maxNm <= 10 ? tolerance.upTo10Nm : tolerance.above10Nm };
}

export type CheckState = 'current' | 'due-soon' | 'overdue' | 'never-checked';

/** What makes a tool's check run out, whichever comes first. */
export interface CheckInterval {
  months: number;
  cycles: number;
}

const MONTH_MS = 30.4375 * 86_400_000;

/**
 * Whether a torque tool's own check is still good.
 * @param lastCheckMs instant of the last check, or undefined when there was none
 * @param cyclesSince clicks since then, ≥ 0
 * @param nowMs instant to judge at
 * @returns `due-soon` in the last tenth of either span
 * @throws RangeError when the interval is not positive
 * Source: ISO 6789 (from memory): 12 months or 5000 cycles.
 * @example toolCheckState(undefined, 0, 0, { months: 12, cycles: 5000 }) //=> 'never-checked'
 */
export function toolCheckState(
  lastCheckMs: number | undefined,
  cyclesSince: number,
  nowMs: number,
  { months, cycles }: CheckInterval,
): CheckState {
  positive({ months, cycles });
  notNegative({ cyclesSince });
  if (lastCheckMs === undefined) return 'never-checked';
  const used = Math.max((nowMs - lastCheckMs) / (months * MONTH_MS), cyclesSince / cycles);
  if (!Number.isFinite(used)) throw new RangeError(`instants ${lastCheckMs}, ${nowMs}`);
  if (used >= 1) return 'overdue';
  return used >= 0.9 ? 'due-soon' : 'current';
}
