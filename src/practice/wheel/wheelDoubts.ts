import { readingOf } from '../../fit/faces/reading.ts';
import type { PartRow } from '../../journal/rows.ts';
import type { WheelDoubt } from '../../words/wheel/measureWords.ts';
import type { WheelFigures } from './wheelFigures.ts';

/** Spoke ends lie at least this far inside the bead seat, across the rim, mm. Own judgement: shallow rims have 15 or more. */
const BELOW_SEAT_MM = 8;
/** Locknut, spacer and bearing lie between the flange and the end face, mm. Own judgement. */
const INSIDE_HUB_MM = 5;

const sizeOf = (parts: readonly PartRow[], face: string, key: string): number | undefined => {
  const found = parts.flatMap(({ faces = [] }) => faces).find(({ kind }) => kind === face);
  return found && readingOf(found, key)?.mid;
};

/**
 * Slips that the sizes of the parts give away.
 * @param figures of the wheel
 * @param parts its parts
 * @example wheelDoubts(figures, [rimOf584])[0]?.doubt //=> 'erd-is-bead-seat', where 584 was typed as rim diameter
 */
export function wheelDoubts(figures: WheelFigures, parts: readonly PartRow[]): WheelDoubt[] {
  const { erdMm, erdSpreadMm, erdDoubtful, layout, sides } = figures;
  const beadSeatMm = sizeOf(parts, 'rim-seat', 'beadSeatMm');
  const widthMm = sizeOf(parts, 'hub-spacing', 'spacingMm');
  const doubts: WheelDoubt[] = [];
  if (beadSeatMm !== undefined && erdMm > beadSeatMm - BELOW_SEAT_MM)
    doubts.push({ doubt: 'erd-is-bead-seat', beadSeatMm });
  if (erdDoubtful) doubts.push({ doubt: 'erd-uneven', spreadMm: erdSpreadMm });
  for (const side of ['left', 'drive'] as const) {
    const halfMm = (widthMm ?? Number.POSITIVE_INFINITY) / 2;
    if (sides[side].flangeMm > halfMm - INSIDE_HUB_MM)
      doubts.push({ doubt: 'flange-is-half-width', side, halfMm });
  }
  for (const of of ['hub', 'rim'] as const) {
    const holes = sizeOf(parts, `${of}-holes`, 'holesCount');
    if (holes !== undefined && holes !== layout.length) doubts.push({ doubt: 'holes-miscounted', holes, of });
  }
  return doubts;
}
