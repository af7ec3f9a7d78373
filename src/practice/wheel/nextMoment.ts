import type { WheelMoment } from '../../journal/aboutWheels.ts';
import type { LaidSpoke } from '../../mechanics/wheels/spokeLayout.ts';

/** What usually follows in the life of a wheel. */
const follows: Record<WheelMoment, WheelMoment> = {
  building: 'building',
  before: 'after',
  after: 'stress-relieved',
  'stress-relieved': 'first-ride',
  'first-ride': 'later',
  later: 'later',
};

/**
 * The moment a new set of readings is most likely of.
 * @param last that of the set before
 * @example nextMoment('before') //=> 'after'
 */
export const nextMoment = (last: WheelMoment | undefined): WheelMoment => (last ? follows[last] : 'building');

/**
 * The places of the spokes in the order in which they are read.
 * @param sidesApart one side first, then the other; else as they come
 * @returns places in the layout, from 0
 * @example readingOrder(layout, true) //=> [0, 2, 4, …, 1, 3, 5, …]
 */
export function readingOrder(layout: readonly LaidSpoke[], sidesApart: boolean): number[] {
  const places = layout.map((_, at) => at);
  const first = layout[0]?.side;
  if (!sidesApart) return places;
  return [
    ...places.filter((at) => layout[at]?.side === first),
    ...places.filter((at) => layout[at]?.side !== first),
  ];
}
