import type { SealRow } from '../../journal/rows.ts';
import { convert, type PressureUnit } from '../../mechanics/units.ts';

const HOUR_MS = 3_600_000;
const axes = [
  { most: 3 * HOUR_MS, ms: 60_000, xLabel: 'minutes' },
  { most: 96 * HOUR_MS, ms: HOUR_MS, xLabel: 'hours' },
  { most: Number.POSITIVE_INFINITY, ms: 24 * HOUR_MS, xLabel: 'days' },
];

/**
 * Pressures as they were read since the tyre was last seated, over the time since the first of them. Nothing
 * is corrected for temperature.
 * @param unit the unit of the settings
 * @example pressurePoints([], 'bar').points //=> []
 */
export function pressurePoints(
  marks: SealRow['marks'],
  unit: PressureUnit,
): { points: { x: number; y: number }[]; xLabel: string } {
  const from = Math.max(
    0,
    marks.findLastIndex(({ mark }) => mark === 'seated'),
  );
  const read = marks
    .slice(from)
    .flatMap((mark) =>
      'reading' in mark && mark.reading?.pressure ? [{ atMs: mark.atMs, ...mark.reading.pressure }] : [],
    )
    .toSorted((a, b) => a.atMs - b.atMs);
  const firstMs = read[0]?.atMs ?? 0;
  const spanMs = (read.at(-1)?.atMs ?? 0) - firstMs;
  const { ms, xLabel } = axes.find(({ most }) => spanMs <= most)!;
  const rounded = (value: number) => Number(value.toPrecision(4));
  const points = read.map((one) => ({
    x: (one.atMs - firstMs) / ms,
    y: rounded(convert(one.value, one.unit, unit)),
  }));
  return { points, xLabel };
}
