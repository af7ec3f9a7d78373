import type { LeakForecast } from './leakForecast.ts';
import { HOLDS_BELOW_PER_DAY, type LeakJudgement } from './leakState.ts';
import { provableDropBar } from './readingError.ts';

export type LookReason =
  | 'routine'
  | 'drop-shows-then'
  | 'half-way'
  | 'settling'
  | 'holds'
  | 'grows'
  | 'read-again'
  | 'below';

export interface NextLook {
  /** Hours from the last reading. */
  inHours: number;
  why: LookReason;
}

export interface LookParts {
  judged: LeakJudgement;
  /** How many readings there are of this leak. */
  count: number;
  /** The last reading: hour on the clock of the readings, pressure, deviation. */
  last: { hours: number; bar: number; sigmaBar: number };
  /** When the riding pressure is reached, if one is given and a forecast can be made. */
  forecast?: Pick<LeakForecast, 'from'> | undefined;
}

/** Looks of the first day: two hours after the first reading, then six, then over night. Own proposal, common practice. */
const ROUTINE_H = [0, 2, 6, 12];
/** A tyre that holds is looked at after three days. Own proposal. */
const HOLDS_H = 72;

const between = (least: number, value: number, most: number) => Math.min(most, Math.max(least, value));

/** Hours until a drop of this leak is more than reading error. @param perHour share of the pressure, > 0 */
export const provableInHours = (bar: number, sigmaBar: number, perHour: number): number => {
  const drop = provableDropBar(sigmaBar);
  return drop < bar ? -Math.log(1 - drop / bar) / perHour : Number.POSITIVE_INFINITY;
};

/**
 * When to look again, and why then: while nothing is proven, when a drop would show; once a leak is proven, half the
 * time to the earliest hour at which the riding pressure may be reached, never later than that.
 * Source: handbook of the trade, own proposal.
 * @example nextLook({ judged: steady, count: 4, last: { hours: 7, bar: 2.05, sigmaBar: 0.05 }, forecast: { from: 14.33 } })
 *   //=> { inHours: 3.67, why: 'half-way' }
 */
export function nextLook({ judged, count, last, forecast }: LookParts): NextLook {
  const left = forecast === undefined ? Number.POSITIVE_INFINITY : forecast.from - last.hours;
  const wanted = wantedLook(judged, count, last, left);
  if (left <= 0 && judged.state !== 'too-early') return { inHours: 0, why: 'below' };
  return wanted.inHours > left / 2 && left > 0 ? { inHours: left / 2, why: 'half-way' } : wanted;
}

function wantedLook(
  judged: LeakJudgement,
  count: number,
  { bar, sigmaBar }: LookParts['last'],
  left: number,
): NextLook {
  const rate = judged.rates.at(-1)?.perHour ?? 0;
  if (judged.state === 'holding') return { inHours: HOLDS_H, why: 'holds' };
  if (judged.state === 'worsening') return { inHours: 1, why: 'grows' };
  if (judged.state === 'sealing')
    return {
      inHours: between(0.5, provableInHours(bar, sigmaBar, Math.max(rate, 1e-3)), 12),
      why: 'settling',
    };
  if (judged.because === 'few') return { inHours: ROUTINE_H[Math.min(count, 3)]!, why: 'routine' };
  if (judged.because === 'scatter') return { inHours: 1, why: 'read-again' };
  const perHour = Math.max(judged.perDay?.mid ?? 0, HOLDS_BELOW_PER_DAY) / 24;
  const shows = between(1, provableInHours(bar, sigmaBar, perHour), 48);
  if (judged.state === 'steady' && Number.isFinite(left)) return { inHours: left / 2, why: 'half-way' };
  return { inHours: shows, why: 'drop-shows-then' };
}
