import { type BikeFigures, filled } from './figures.ts';
import { brakesMark, type Corners, cornersOf, headMiddle } from './points.ts';
import type { BikeZone, PencilLine, Spot } from './shape.ts';
import { strokesOf } from './strokes.ts';

/** Two rows of three: where each zone is touched, from left to right. */
export type ZoneRows = readonly (readonly [BikeZone, BikeZone, BikeZone])[];

export interface BikeDrawing {
  /** Size of the drawing, mm of the bike. */
  width: number;
  height: number;
  strokes: PencilLine[];
  /** Where the state of a zone is marked; inside the third of its row that is touched for it. */
  marks: Record<BikeZone, Spot>;
  rows: ZoneRows;
}

/** White round the bike, mm. */
const MARGIN = 40;
/** A mark keeps so far from the edge of its third, as a share of the whole width. */
const INSET = 0.05;

function marksOf(at: Corners): Record<BikeZone, Spot> {
  return {
    saddle: { x: at.rails.x - 90, y: at.rails.y },
    'fork-and-bars': headMiddle(at),
    brakes: brakesMark(at),
    'rear-wheel': at.rearAxle,
    cranks: at.spindle,
    'front-wheel': at.frontAxle,
  };
}

/**
 * A bike seen from its right, front to the right, from its own figures; a usual figure stands in for one that is not
 * known, and what it draws is dashed. Nothing is mirrored or stretched.
 * @param known figures of this bike, mm and counts
 * @returns strokes, marks and the zones in two rows of three, in mm of the bike, the upper left corner at 0, 0
 * @example bikeDrawing({ frontWheelMm: 678, rearWheelMm: 678 }).rows[1] //=> ['rear-wheel', 'cranks', 'front-wheel']
 */
export function bikeDrawing(known: BikeFigures): BikeDrawing {
  const figures = filled(known);
  const at = cornersOf(figures);
  const left = at.rearAxle.x - at.rearRadius - MARGIN;
  const right = at.frontAxle.x + at.frontRadius + MARGIN;
  const top = Math.min(at.clamp.y - 100, at.rails.y - 70, at.seatTop.y) - MARGIN;
  const width = Math.round(right - left);
  const height = Math.round(MARGIN - top);
  const moved = ({ x, y }: Spot): Spot => ({ x: x - left, y: y - top });
  const corners = Object.fromEntries(
    Object.entries(at).map(([name, value]) => [name, typeof value === 'object' ? moved(value) : value]),
  ) as unknown as Corners;
  const marks = marksOf(corners);
  // On a long bike the bar stands in the middle, and the brake beside the front wheel.
  const long = at.kind === 'long';
  const rows: ZoneRows = [
    long ? ['saddle', 'fork-and-bars', 'brakes'] : ['saddle', 'brakes', 'fork-and-bars'],
    ['rear-wheel', 'cranks', 'front-wheel'],
  ];
  for (const row of rows)
    row.forEach((zone, third) => {
      const least = (third / 3 + INSET) * width;
      const most = ((third + 1) / 3 - INSET) * width;
      marks[zone] = { ...marks[zone], x: Math.min(most, Math.max(least, marks[zone].x)) };
    });
  return { width, height, strokes: strokesOf(corners, figures), marks, rows };
}
