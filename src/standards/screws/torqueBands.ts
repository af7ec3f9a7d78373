import { positive } from '../../mechanics/range.ts';
import type { JointKind } from '../jointKinds.ts';
import type { Sourced } from '../known.ts';

/** How well a band is founded: A two or more printed documents of separate origin, B one, C none (memory, common practice). */
export type BandStrength = 'A' | 'B' | 'C';

/**
 * Torques printed for joints of this kind elsewhere. They are there to compare with, never to be applied in place of the
 * mark on the part.
 */
export interface TorqueBandRow extends Sourced {
  readonly joint: JointKind;
  readonly variant: string;
  readonly loNm: number;
  readonly hiNm: number;
  readonly strength: BandStrength;
}

const bikeManual = 'bicycle owner’s manual with torque page, third printing list';
const shopTable = 'two bicycle shops’ reprints of one torque list (one origin)';
const webGuide = 'bicycle maintenance guide article on torque (no sources given, weak)';
const postManuals = 'two seatpost and saddle fitting manuals';
const axleManual = 'bicycle owner’s manual, torque table in in·lbf';

const seen = (strength: 'A' | 'B', source: string) => ({ strength, source, known: 'seen' }) as const;
const practice = { strength: 'C', source: 'common practice, no source', known: 'memory' } as const;

export const torqueBands: readonly TorqueBandRow[] = [
  { joint: 'bar-clamp', variant: 'face plate, M5, light', loNm: 4, hiNm: 6, ...seen('B', webGuide) },
  { joint: 'bar-clamp', variant: 'utility, M6 to M8', loNm: 19.7, hiNm: 29.4, ...seen('B', bikeManual) },
  { joint: 'bar-clamp', variant: 'BMX, M8', loNm: 12, hiNm: 20, ...practice },
  { joint: 'bar-clamp', variant: 'BMX, M6', loNm: 9, hiNm: 12, ...practice },
  { joint: 'stem-steerer', variant: 'light', loNm: 5, hiNm: 7, ...seen('B', webGuide) },
  { joint: 'stem-steerer', variant: 'older, steel', loNm: 13.6, hiNm: 16.3, ...seen('B', bikeManual) },
  { joint: 'stem-quill', variant: 'wedge bolt', loNm: 19.7, hiNm: 29.4, ...seen('B', bikeManual) },
  { joint: 'headset', variant: 'threaded, locknut', loNm: 14.7, hiNm: 16.9, ...seen('B', bikeManual) },
  { joint: 'headset', variant: 'top cap, sets the bearing only', loNm: 1, hiNm: 2, ...seen('B', webGuide) },
  { joint: 'seatpost', variant: 'collar, metal post', loNm: 9.6, hiNm: 14.1, ...seen('A', postManuals) },
  { joint: 'seatpost', variant: 'collar, carbon post', loNm: 7.3, hiNm: 9, ...seen('A', postManuals) },
  { joint: 'seatpost', variant: 'collar, light', loNm: 5, hiNm: 7, ...seen('B', webGuide) },
  { joint: 'saddle-rails', variant: 'one bolt, 6 mm key', loNm: 17, hiNm: 28.3, ...seen('A', postManuals) },
  { joint: 'saddle-rails', variant: 'two bolts, 5 mm key', loNm: 9.6, hiNm: 14.1, ...seen('A', postManuals) },
  { joint: 'saddle-rails', variant: 'two bolts, 4 mm key', loNm: 5.1, hiNm: 6.8, ...seen('A', postManuals) },
  { joint: 'saddle-rails', variant: 'nutted clamp', loNm: 20.3, hiNm: 24.9, ...seen('A', postManuals) },
  {
    joint: 'crank',
    variant: 'square taper and spline, M8',
    loNm: 34.5,
    hiNm: 44.2,
    ...seen('A', `${bikeManual}; ${shopTable}`),
  },
  { joint: 'crank', variant: 'spline, M12 to M15', loNm: 38, hiNm: 54, ...seen('B', shopTable) },
  { joint: 'crank', variant: 'tubular BMX spindle bolt', loNm: 20, hiNm: 35, ...practice },
  { joint: 'crank-pinch', variant: 'two bolts, in turns', loNm: 12, hiNm: 15, ...seen('B', shopTable) },
  { joint: 'crank-pinch', variant: 'BMX, one bolt', loNm: 15, hiNm: 20, ...practice },
  {
    joint: 'chainring',
    variant: 'aluminium bolts',
    loNm: 5,
    hiNm: 9.9,
    ...seen('A', `${bikeManual}; ${shopTable}`),
  },
  {
    joint: 'chainring',
    variant: 'steel bolts',
    loNm: 7.9,
    hiNm: 14,
    ...seen('A', `${bikeManual}; ${shopTable}`),
  },
  { joint: 'bottom-bracket', variant: 'threaded cups', loNm: 33.9, hiNm: 40.7, ...seen('B', shopTable) },
  {
    joint: 'pedal',
    variant: 'in the crank',
    loNm: 34.7,
    hiNm: 40,
    ...seen('A', `${bikeManual}; ${webGuide}`),
  },
  { joint: 'front-axle', variant: 'nuts, 5/16 and 3/8 in', loNm: 20.3, hiNm: 27.1, ...seen('B', axleManual) },
  {
    joint: 'rear-axle',
    variant: 'nuts, 3/8 in',
    loNm: 27.1,
    hiNm: 33.9,
    ...seen('A', `${axleManual}; second manual`),
  },
  { joint: 'rear-axle', variant: 'nuts, 14 mm', loNm: 35, hiNm: 50, ...practice },
  { joint: 'rear-axle', variant: 'bolts M10 in a female axle', loNm: 35, hiNm: 45, ...practice },
  { joint: 'thru-axle', variant: 'fork-end pinch bolts', loNm: 5.1, hiNm: 6.2, ...seen('B', axleManual) },
  {
    joint: 'rotor',
    variant: 'six M5, with threadlocker',
    loNm: 4,
    hiNm: 6.2,
    ...seen('A', `${webGuide}; ${shopTable}`),
  },
  {
    joint: 'rotor',
    variant: 'splined, lockring',
    loNm: 39.5,
    hiNm: 40,
    ...seen('A', `${webGuide}; ${shopTable}`),
  },
  { joint: 'caliper', variant: 'M6', loNm: 11.3, hiNm: 12.4, ...seen('B', shopTable) },
  { joint: 'caliper', variant: 'M6, lighter figure', loNm: 6, hiNm: 8, ...seen('B', webGuide) },
  { joint: 'caliper', variant: 'M5', loNm: 6.8, hiNm: 7.3, ...seen('B', shopTable) },
  { joint: 'caliper', variant: 'rim brake arm', loNm: 7.9, hiNm: 9.6, ...seen('B', shopTable) },
  { joint: 'caliper', variant: 'rim brake pad', loNm: 4.5, hiNm: 9, ...seen('B', shopTable) },
  { joint: 'brake-mount', variant: 'adapter, M6', loNm: 11.3, hiNm: 12.4, ...seen('B', shopTable) },
  { joint: 'brake-mount', variant: 'adapter, M6, lighter figure', loNm: 6, hiNm: 8, ...seen('B', webGuide) },
  { joint: 'cable-anchor', variant: 'any', loNm: 5, hiNm: 7.9, ...seen('A', `${bikeManual}; ${shopTable}`) },
  { joint: 'lever-clamp', variant: 'brake lever', loNm: 4, hiNm: 5, ...seen('B', webGuide) },
  { joint: 'lever-clamp', variant: 'shifter', loNm: 3, hiNm: 4, ...seen('B', webGuide) },
  {
    joint: 'sprocket',
    variant: 'cassette lockring',
    loNm: 30,
    hiNm: 50,
    ...seen('A', `${shopTable}; ${webGuide}`),
  },
  { joint: 'lockring', variant: 'fixed sprocket', loNm: 30, hiNm: 40, ...practice },
  { joint: 'freewheel', variant: 'freewheel, driver', loNm: 30, hiNm: 40, ...practice },
  { joint: 'grip', variant: 'lock-on', loNm: 2, hiNm: 4, ...practice },
];

/** All bands for one kind of joint, in the order of the table; empty where none is known. @example bandsFor('pedal').length //=> 1 */
export const bandsFor = (joint: JointKind): readonly TorqueBandRow[] =>
  torqueBands.filter((row) => row.joint === joint);

/**
 * Where a torque lies among the bands of its joint.
 * @param nm N·m, > 0
 * @throws RangeError when nm is not positive
 * @returns `inside` some band, `below-all`, `above-all`, `between` two bands, or `no-band`
 * @example amongBands('bar-clamp', 60) //=> 'above-all'
 */
export function amongBands(
  joint: JointKind,
  nm: number,
): 'inside' | 'below-all' | 'above-all' | 'between' | 'no-band' {
  positive({ nm });
  const bands = bandsFor(joint);
  if (bands.length === 0) return 'no-band';
  if (bands.some(({ loNm, hiNm }) => nm >= loNm && nm <= hiNm)) return 'inside';
  if (bands.every(({ loNm }) => nm < loNm)) return 'below-all';
  return bands.every(({ hiNm }) => nm > hiNm) ? 'above-all' : 'between';
}
