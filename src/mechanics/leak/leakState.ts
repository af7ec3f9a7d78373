import {
  bendZ,
  type IntervalRate,
  intervalRates,
  type LeakLine,
  type LeakReading,
  leakLine,
} from './leakFit.ts';
import { settlingCurve } from './settlingCurve.ts';

export type LeakState = 'too-early' | 'holding' | 'sealing' | 'steady' | 'worsening';

export interface LeakJudgement {
  state: LeakState;
  /** Why it is too early: too few readings, no drop beyond the error of reading, or readings that contradict each other. */
  because?: 'few' | 'not-proven' | 'scatter';
  /** Loss as a share of the pressure, per day; absent where no single figure fits. */
  perDay?: { mid: number; sigma: number; atMost: number };
  line?: LeakLine;
  rates: IntervalRate[];
}

/** A loss below this counts as holding: 3 % of the pressure a day. Own proposal. */
export const HOLDS_BELOW_PER_DAY = 0.03;
/** One-sided 95 %. */
const ONE_SIDED = 1.645;
/** A slope or a bend counts from here on. */
const PROVEN_Z = 2;

/**
 * The upper end of chance for what is left over, one in a thousand.
 * Source: Wilson and Hilferty's cube root, textbook.
 * @example chanceLimit(4) //=> 18.5
 */
export function chanceLimit(spare: number): number {
  const part = 2 / (9 * spare);
  return spare * (1 - part + 3.09 * Math.sqrt(part)) ** 3;
}

/**
 * What a row of readings proves about a seal, and nothing beyond it.
 * @param readings of one leak, brought to one temperature, in the order of time
 * Source: handbook of the trade, decision rule of own proposal: a bend counts as sealing only where ln p and the
 * laminar measure both bend, because a laminar leak slows by itself; as growing only where ln p and ln (p + Pa) both do.
 */
export function leakState(readings: readonly LeakReading[]): LeakJudgement {
  const rates = intervalRates(readings);
  const line = leakLine(readings, 'permeation');
  if (readings.length < 3 || !line || line.spare < 1) return { state: 'too-early', because: 'few', rates };
  const bend = bendZ(readings, 'permeation') ?? Number.NaN;
  const laminar = bendZ(readings, 'laminar') ?? Number.NaN;
  const orifice = bendZ(readings, 'orifice') ?? Number.NaN;
  const slows = rates.length > 1 && rates.at(-1)!.perHour < rates[0]!.perHour;
  const sealing = bend > PROVEN_Z && laminar > PROVEN_Z && slows;
  const worsening = bend < -PROVEN_Z && orifice < -PROVEN_Z;
  const scatter = { state: 'too-early', because: 'scatter', line, rates } as const;
  if (sealing || worsening) {
    // Whatever is said of a bend, the readings have to lie on some bent curve.
    const left = [line.chiSquare - bend * bend, sealing ? settlingCurve(readings)?.chiSquare : undefined];
    const least = Math.min(...left.map((value) => value ?? Number.POSITIVE_INFINITY));
    if (line.spare > 1 && least > chanceLimit(line.spare - 1)) return scatter;
    return { state: sealing ? 'sealing' : 'worsening', line, rates };
  }
  if (line.chiSquare > chanceLimit(line.spare)) return scatter;
  const [mid, sigma] = [-line.slope * 24, line.slopeSigma * 24];
  const perDay = { mid, sigma, atMost: mid + ONE_SIDED * sigma };
  const found = { perDay, line, rates };
  if (perDay.atMost < HOLDS_BELOW_PER_DAY) return { state: 'holding', ...found };
  if (mid > PROVEN_Z * sigma) return { state: 'steady', ...found };
  return { state: 'too-early', because: 'not-proven', ...found };
}
