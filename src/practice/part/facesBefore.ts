import type { Face } from '../../fit/faces/face.ts';
import type { HistoryLine } from '../../journal/answers.ts';
import type { OneWayChange } from '../../journal/entries.ts';
import { convert, type LengthUnit } from '../../mechanics/units.ts';

/** Finer than a caliper reads twice alike. */
const SAME_MM = 0.05;

/** The lengths a face holds, as the fit check takes them: measured before printed. */
function lengthsMm({ nominal, measured }: Face): number[] {
  const printed = Object.entries(nominal).flatMap(([key, value]) =>
    key.endsWith('Mm') && !measured[key] ? [value] : [],
  );
  const read = Object.values(measured).flatMap(({ value, unit }) =>
    unit === '1' || unit === 'bar' ? [] : [convert<LengthUnit>(value, unit, 'mm')],
  );
  return [...printed, ...read];
}

/**
 * Whether the faces of a part still say what they said before its last change: nothing was written about them
 * since, and none of them holds the size it was brought to.
 * @param lines history of the part, newest first
 * @example facesBefore([], { value: 130, unit: 'mm', typed: '130' }, []) //=> false
 */
export function facesBefore(
  faces: readonly Face[],
  after: NonNullable<OneWayChange['after']> | undefined,
  lines: readonly HistoryLine[],
): boolean {
  const afterMm = after && convert<LengthUnit>(after.value, after.unit, 'mm');
  if (faces.flatMap(lengthsMm).some((mm) => afterMm !== undefined && Math.abs(mm - afterMm) < SAME_MM))
    return false;
  const last = lines
    .flatMap((line) => line.now ?? [])
    .find(
      (entry) =>
        entry.type === 'part-changed' || (entry.type === 'part-described' && entry.faces !== undefined),
    );
  return faces.length > 0 && last?.type === 'part-changed';
}
