import type { WheelAbout, WheelEar, WheelPart, WheelReadings, WheelSideAbout } from '../aboutWheels.ts';
import { amount, type Check, either, exactly, id, list, maybe, object, oneOf, whole } from './field.ts';
import { force, offset, someLength } from './quantities.ts';

/** Checks of what is said of a wheel. */

/** More spokes than a wheel has. */
const MOST_SPOKES = 72;

export const wheelParts: Check = list(
  object<WheelPart>({
    as: oneOf<WheelPart['as']>({
      ...{ hub: 1, rim: 1, spokes: 1, 'left-spokes': 1, 'drive-spokes': 1, nipples: 1, 'goes-with': 1 },
    }),
    partId: id,
  }),
  12,
);

export const wheelSide: Check = object<WheelSideAbout>({
  spokes: whole(4, 36),
  crosses: whole(0, 9),
  pcd: maybe(someLength),
  flange: maybe(offset),
  lineOffset: maybe(someLength),
  thin: maybe(someLength),
  thick: maybe(someLength),
  bought: maybe(someLength),
});

export const drilling: Check = oneOf<WheelAbout['drilling']>({ even: 1, 'two-to-one': 1, paired: 1 });
export const spokeHead: Check = oneOf<WheelAbout['head']>({ elbow: 1, 'straight-pull': 1 });
export const firstSide: Check = oneOf<WheelAbout['firstSide']>({ left: 1, drive: 1 });
export const pairsLean: Check = maybe(oneOf<NonNullable<WheelAbout['pairsLean']>>({ together: 1, apart: 1 }));
export const pairGap: Check = maybe(amount(0, 90));
export const erds: Check = maybe(list(someLength, 12));
export const erdEnd: Check = maybe(
  oneOf<NonNullable<WheelAbout['erdEnd']>>({
    ...{ 'nipple-slot': 1, 'nipple-seat': 1, 'nipple-top': 1, printed: 1 },
  }),
);
export const erdToEnd: Check = maybe(offset);
export const hubHole: Check = maybe(someLength);
export const rimOffset: Check = maybe(offset);
export const wheelTension: Check = maybe(force);

/** A spoke breaks well below this. Own judgement. */
const tensionN: Check = amount(0, 10_000);
export const gaugeTable: Check = maybe(
  list(
    object<{ reading: number; tensionN: number }>({ reading: amount(0, 10_000, { above: true }), tensionN }),
    60,
  ),
);
const hz: Check = amount(0, 20_000, { above: true });
export const ear: Check = maybe(
  object<WheelEar>({
    ends: oneOf<WheelEar['ends']>({ 'pinned-pinned': 1, 'clamped-pinned': 1, 'clamped-clamped': 1 }),
    sounds: oneOf<WheelEar['sounds']>({ free: 1, pair: 1, outer: 1 }),
    known: maybe(list(object<{ hz: number; tensionN: number }>({ hz, tensionN }), 12)),
  }),
);

export const moment: Check = oneOf<WheelReadings['moment']>({
  ...{ building: 1, before: 1, after: 1, 'stress-relieved': 1, 'first-ride': 1, later: 1 },
});
export const tyreOn: Check = oneOf<WheelReadings['tyre']>({ on: 1, off: 1 });
export const readIn: Check = oneOf<WheelReadings['readIn']>({
  ...{ N: 1, kgf: 1, '[lbf_av]': 1, scale: 1, Hz: 1 },
});
const perSpoke = (check: Check): Check => list(either(exactly(null), check), MOST_SPOKES);
export const spokesRead: Check = perSpoke(amount(0, 20_000));
export const tensions: Check = perSpoke(tensionN);
/** A rim this far off has left its wheel. Own judgement. */
export const rimRun: Check = maybe(perSpoke(amount(-50, 50)));
