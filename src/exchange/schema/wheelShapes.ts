import type {
  WheelAbout,
  WheelEar,
  WheelPart,
  WheelReadings,
  WheelSideAbout,
} from '../../journal/entries.ts';
import type { ForceUnit, Typed } from '../../mechanics/units.ts';
import { length } from './aboutShapes.ts';
import { type Fields, figure, id, listOf, oneOf, optional, orNull, record, text, whole } from './shape.ts';

/** What is said of a wheel, as it stands in an archive. */

const MOST = 1e6;

const force = record<Typed<ForceUnit>>({
  value: figure(0, MOST),
  unit: oneOf<ForceUnit>({ N: 1, kgf: 1, '[lbf_av]': 1 }),
  typed: text,
});

const side = record<WheelSideAbout>({
  spokes: whole(4, 36),
  crosses: whole(0, 9),
  pcd: optional(length),
  flange: optional(length),
  lineOffset: optional(length),
  thin: optional(length),
  thick: optional(length),
  bought: optional(length),
});

const ear = record<WheelEar>({
  ends: oneOf({ 'pinned-pinned': 1, 'clamped-pinned': 1, 'clamped-clamped': 1 }),
  sounds: oneOf({ free: 1, pair: 1, outer: 1 }),
  known: optional(
    listOf(record<{ hz: number; tensionN: number }>({ hz: figure(0, MOST), tensionN: figure(0, MOST) })),
  ),
});

export const wheelAbout: Fields<WheelAbout> = {
  name: text,
  position: optional(oneOf({ front: 1, rear: 1 })),
  parts: listOf(
    record<WheelPart>({
      as: oneOf({
        ...{ hub: 1, rim: 1, spokes: 1, 'left-spokes': 1, 'drive-spokes': 1, nipples: 1, 'goes-with': 1 },
      }),
      partId: id,
    }),
  ),
  drilling: oneOf({ even: 1, 'two-to-one': 1, paired: 1 }),
  pairGapDeg: optional(figure(0, 360)),
  pairsLean: optional(oneOf({ together: 1, apart: 1 })),
  head: oneOf({ elbow: 1, 'straight-pull': 1 }),
  leftSide: side,
  driveSide: side,
  firstSide: oneOf({ left: 1, drive: 1 }),
  erds: optional(listOf(length)),
  erdEnd: optional(oneOf({ 'nipple-slot': 1, 'nipple-seat': 1, 'nipple-top': 1, printed: 1 })),
  erdToEnd: optional(length),
  hubHole: optional(length),
  rimOffset: optional(length),
  stagger: optional(length),
  target: optional(force),
  limit: optional(force),
  gauge: optional(
    listOf(
      record<{ reading: number; tensionN: number }>({
        reading: figure(0, MOST),
        tensionN: figure(0, MOST),
      }),
    ),
  ),
  ear: optional(ear),
  note: optional(text),
};

const eachSpoke = listOf(orNull(figure(-MOST, MOST)));

export const wheelReadings: Fields<WheelReadings> = {
  moment: oneOf({ building: 1, before: 1, after: 1, 'stress-relieved': 1, 'first-ride': 1, later: 1 }),
  tyre: oneOf({ on: 1, off: 1 }),
  readIn: oneOf({ N: 1, kgf: 1, '[lbf_av]': 1, scale: 1, Hz: 1 }),
  read: eachSpoke,
  tensionsN: eachSpoke,
  lateral: optional(length),
  radial: optional(length),
  dish: optional(length),
  sidewaysMm: optional(eachSpoke),
  outwardMm: optional(eachSpoke),
  note: optional(text),
};
