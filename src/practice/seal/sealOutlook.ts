import type { SealRow } from '../../journal/rows.ts';
import { type LeakForecast, leakForecast } from '../../mechanics/leak/leakForecast.ts';
import { type LeakJudgement, leakState } from '../../mechanics/leak/leakState.ts';
import { type LookReason, nextLook } from '../../mechanics/leak/nextLook.ts';
import { dropIsProvable } from '../../mechanics/leak/readingError.ts';
import { settlingCurve } from '../../mechanics/leak/settlingCurve.ts';
import { afterChecksBar } from '../../mechanics/leak/tyreAir.ts';
import { leakReadings, ridingBar, type SealReading } from './leakReadings.ts';

/** Air in the hose of a floor pump, mL. Common practice, no source. */
const HOSE_ML = 30;
const HOUR_MS = 3_600_000;

export interface SealOutlook {
  judged: LeakJudgement;
  readings: SealReading[];
  /** The riding pressure at workshop temperature, bar, where one is set. */
  ridingBar?: number;
  /** When the riding pressure is reached; only for a leak that stays what it is. */
  reached?: { fromMs: number; atMs?: number; toMs?: number };
  /** While it seals: at its last rate, and at the rate that is left in the end. */
  sealingReach?: { pessimisticMs: number; hopefulMs?: number };
  look?: { atMs: number; why: LookReason };
  /** What one check with a pump hose lets out, bar. */
  checkCostBar?: number;
  /** The last two readings of one segment differ by more than reading error. */
  dropBar?: number;
}

/**
 * What the readings of a seal prove, when the riding pressure is reached, and when to look again.
 * @param marks of the seal
 * @param tyreL air in the tyre, litres, where its size is known
 * @example sealOutlook([], undefined).judged.state //=> 'too-early'
 */
export function sealOutlook(marks: SealRow['marks'], tyreL: number | undefined): SealOutlook {
  const readings = leakReadings(marks);
  const judged = leakState(readings);
  const last = readings.at(-1);
  const riding = ridingBar(marks);
  const outlook: SealOutlook = { judged, readings, ...(riding === undefined ? {} : { ridingBar: riding }) };
  if (!last) return outlook;
  const firstMs = readings[0]!.atMs;
  const msOf = (hours: number) => firstMs + hours * HOUR_MS;
  const bends = judged.state === 'sealing' || judged.state === 'worsening';
  const asked = riding !== undefined && riding > 0 && !bends && judged.because !== 'few';
  const forecast: LeakForecast | undefined =
    asked && judged.because !== 'scatter' ? leakForecast(readings, riding) : undefined;
  if (forecast) {
    const { from, at, to } = forecast;
    outlook.reached = {
      fromMs: msOf(from),
      ...(at === undefined ? {} : { atMs: msOf(at) }),
      ...(to === undefined ? {} : { toMs: msOf(to) }),
    };
  }
  if (judged.state === 'sealing' && riding !== undefined && riding < last.bar)
    outlook.sealingReach = whileSealing(judged, readings, last, riding);
  const { inHours, why } = nextLook({ judged, count: readings.length, last, forecast });
  outlook.look = { atMs: last.atMs + inHours * HOUR_MS, why };
  if (tyreL !== undefined) outlook.checkCostBar = last.bar - afterChecksBar(last.bar, tyreL, HOSE_ML, 1);
  const before = readings.at(-2);
  if (before?.segment === last.segment && dropIsProvable(before.bar, last.bar, last.sigmaBar))
    outlook.dropBar = before.bar - last.bar;
  return outlook;
}

/** Pessimistic at the rate of the last two readings, hopeful at what is left once it has settled. */
function whileSealing(
  judged: LeakJudgement,
  readings: readonly SealReading[],
  last: SealReading,
  riding: number,
): NonNullable<SealOutlook['sealingReach']> {
  const inMs = (perHour: number) => (Math.log(last.bar / riding) / perHour) * HOUR_MS;
  const perHour = Math.max(judged.rates.at(-1)?.perHour ?? 0, 1e-6);
  const stays = settlingCurve(readings)?.staysPerHour ?? 0;
  return {
    pessimisticMs: last.atMs + inMs(perHour),
    ...(stays > 0 && stays < perHour ? { hopefulMs: last.atMs + inMs(stays) } : {}),
  };
}
