import type { SealMark } from '../../journal/entries.ts';
import type { SealRow } from '../../journal/rows.ts';
import type { LeakReading } from '../../mechanics/leak/leakFit.ts';
import { GAUGE_SIGMA_BAR, readingSigmaBar, UNMEASURED_SIGMA_K } from '../../mechanics/leak/readingError.ts';
import { atTemperatureBar } from '../../mechanics/leak/tyreAir.ts';
import { convert, pressureBar } from '../../mechanics/units.ts';

/** All readings are brought to this temperature, and one that was not measured is taken for it, °C. Own choice. */
export const WORKSHOP_C = 20;
/** A thermometer in a workshop, K. Own proposal. */
const MEASURED_SIGMA_K = 0.5;
/** Nearly flat: the error of the gauge is too large a part of what is left. Own proposal. */
const FITTED_ABOVE_BAR = 0.3;
const HOUR_MS = 3_600_000;

export interface SealReading extends LeakReading {
  atMs: number;
  /** Nothing below was read at a temperature that was written down. */
  measuredC?: number;
}

/** What begins another leak: readings before it say nothing about the one after. */
const beginsAnew = (mark: SealMark) => mark.mark === 'seated' || mark.mark === 'sealant';
/** What moves air: the leak stays, the height of its line does not. */
const cuts = (mark: SealMark) => mark.mark === 'pumped' || mark.mark === 'let-down' || mark.mark === 'burped';

const celsius = (temperature: { value: number; unit: 'Cel' | '[degF]' }): number =>
  Math.min(80, Math.max(-60, convert(temperature.value, temperature.unit, 'Cel')));

/**
 * The readings of the leak a tyre has now, at workshop temperature, cut into segments at every pump-up, let-down, burp and
 * change of gauge. A seating and fresh sealant begin another leak.
 * @param marks of the seal, oldest first
 * @example leakReadings([]) //=> []
 */
export function leakReadings(marks: SealRow['marks']): SealReading[] {
  const sorted = marks.toSorted((a, b) => a.atMs - b.atMs);
  const from = Math.max(0, sorted.findLastIndex(beginsAnew));
  const found: SealReading[] = [];
  let segment = 0;
  let gauge: string | undefined;
  for (const mark of sorted.slice(from)) {
    if (cuts(mark)) segment += 1;
    const reading = 'reading' in mark ? mark.reading : undefined;
    if (!reading?.pressure) continue;
    if (reading.gauge !== undefined && gauge !== undefined && reading.gauge !== gauge) segment += 1;
    gauge = reading.gauge ?? gauge;
    const readBar = pressureBar(reading.pressure.value, reading.pressure.unit);
    const measuredC = reading.temperature && celsius(reading.temperature);
    const bar = atTemperatureBar(readBar, measuredC ?? WORKSHOP_C, WORKSHOP_C);
    if (bar < FITTED_ABOVE_BAR) continue;
    const last = found.at(-1);
    // The same instant twice in one segment is one reading corrected by the next.
    if (last?.atMs === mark.atMs && last.segment === segment) found.pop();
    const firstMs = found[0]?.atMs ?? mark.atMs;
    found.push({
      atMs: mark.atMs,
      hours: (mark.atMs - firstMs) / HOUR_MS,
      bar,
      sigmaBar: readingSigmaBar({
        gaugeBar: readBar,
        gaugeSigmaBar: GAUGE_SIGMA_BAR,
        temperatureSigmaK: measuredC === undefined ? UNMEASURED_SIGMA_K : MEASURED_SIGMA_K,
      }),
      segment,
      ...(measuredC === undefined ? {} : { measuredC }),
    });
  }
  return found;
}

/** The riding pressure that was set last, brought to workshop temperature, bar; nothing while none is set. */
export function ridingBar(marks: SealRow['marks']): number | undefined {
  const set = marks.toSorted((a, b) => a.atMs - b.atMs).findLast(({ mark }) => mark === 'riding');
  if (set?.mark !== 'riding') return undefined;
  const bar = pressureBar(set.pressure.value, set.pressure.unit);
  return atTemperatureBar(bar, set.temperature ? celsius(set.temperature) : WORKSHOP_C, WORKSHOP_C);
}
