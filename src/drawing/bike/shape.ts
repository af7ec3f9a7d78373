/** The six places of a bike, the same wherever it is drawn. */
export type BikeZone = 'saddle' | 'brakes' | 'fork-and-bars' | 'rear-wheel' | 'cranks' | 'front-wheel';

/** A point of a drawing: to the right and down, in the units of the drawing (mm of the bike). */
export interface Spot {
  x: number;
  y: number;
}

/** How thick a stroke is. */
export type Weight = 'tyre' | 'tube' | 'line' | 'thin';

/** One stroke of the pencil. */
export interface PencilLine {
  /** What it shows: "rear tyre", "down tube". */
  part: string;
  zone: BikeZone | 'frame';
  weight: Weight;
  /** Its own figure is not known: a usual one was taken. */
  dashed: boolean;
  /** SVG path data. */
  path: string;
  /** Thickness where the weight alone does not tell, mm: a tyre. */
  widthMm?: number;
}

const at = ({ x, y }: Spot): string => `${Math.round(x)} ${Math.round(y)}`;

/** A line through points, as path data. @example lineThrough({ x: 0, y: 0 }, { x: 5, y: 9 }) //=> 'M0 0L5 9' */
export const lineThrough = (first: Spot, ...more: Spot[]): string =>
  `M${at(first)}${more.map((spot) => `L${at(spot)}`).join('')}`;

/** A curve with one bend. @example bendTo({ x: 0, y: 0 }, { x: 5, y: 0 }, { x: 5, y: 9 }) //=> 'M0 0Q5 0 5 9' */
export const bendTo = (from: Spot, over: Spot, to: Spot): string => `M${at(from)}Q${at(over)} ${at(to)}`;

/** A circle as path data. @example circleAt({ x: 9, y: 9 }, 5) //=> 'M4 9a5 5 0 1 0 10 0a5 5 0 1 0 -10 0' */
export function circleAt({ x, y }: Spot, radius: number): string {
  const r = Math.round(radius);
  return `M${Math.round(x) - r} ${Math.round(y)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;
}

/** A point on the way from one to another; 0 is the first, 1 the second. */
export const partWay = (one: Spot, other: Spot, share: number): Spot => ({
  x: one.x + (other.x - one.x) * share,
  y: one.y + (other.y - one.y) * share,
});

/** A point so many mm from another in a direction; 0° is forward, 90° up. */
export function away({ x, y }: Spot, mm: number, degrees: number): Spot {
  const turned = (degrees * Math.PI) / 180;
  return { x: x + mm * Math.cos(turned), y: y - mm * Math.sin(turned) };
}

/**
 * Where a belt leaves and meets two wheels, above or below: the outer tangent.
 * @param side 1 above, -1 below
 * @returns the two points where it touches, first wheel first
 */
export function tangent(one: Spot, r1: number, other: Spot, r2: number, side: 1 | -1): [Spot, Spot] {
  const along = Math.atan2(-(other.y - one.y), other.x - one.x);
  const length = Math.hypot(other.x - one.x, other.y - one.y);
  const lean = Math.acos(Math.max(-1, Math.min(1, (r1 - r2) / length)));
  const turned = ((along + side * lean) * 180) / Math.PI;
  return [away(one, r1, turned), away(other, r2, turned)];
}
