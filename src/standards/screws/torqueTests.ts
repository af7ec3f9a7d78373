import type { JointKind } from '../jointKinds.ts';
import { type Founded, founded } from '../known.ts';

/** The kinds of bicycle the test standard tells apart. */
export type BicycleUse = 'city' | 'young-adult' | 'mountain' | 'racing';

/**
 * A test load for a whole assembly: a joint that holds it has something in hand. It is never a tightening torque, and
 * passing it in a computation is no claim to have passed the test.
 */
export interface JointTestRow extends Founded {
  readonly id: string;
  readonly joint: JointKind;
  readonly what: string;
  readonly unit: 'N.m' | 'N';
  readonly byUse: Readonly<Record<BicycleUse, number>>;
}

const iso = founded('ISO 4210-5, text of an industry copy, TBIS 4210-5:2016, tables 4 and 5', 'seen', 1);
const federal = (clause: string, known: 'seen' | 'memory') =>
  known === 'seen'
    ? founded(`16 CFR ${clause}`, known, 1)
    : founded(`16 CFR ${clause}, from memory`, known, 0);
const forAll = (load: number) => ({ city: load, 'young-adult': load, mountain: load, racing: load });

export const jointTests: readonly JointTestRow[] = [
  {
    id: 'bar-in-stem',
    joint: 'bar-clamp',
    what: 'bar in stem, held one minute without movement',
    unit: 'N.m',
    byUse: { city: 60, 'young-adult': 60, mountain: 80, racing: 60 },
    ...iso,
  },
  {
    id: 'stem-on-steerer',
    joint: 'stem-steerer',
    what: 'stem on steerer, each way one minute without movement',
    unit: 'N.m',
    byUse: { city: 40, 'young-adult': 40, mountain: 50, racing: 40 },
    ...iso,
  },
  {
    id: 'stem-forward-bend',
    joint: 'stem-steerer',
    what: 'stem bent forwards, second stage',
    unit: 'N',
    byUse: { city: 2000, 'young-adult': 2000, mountain: 2600, racing: 2300 },
    ...iso,
  },
  {
    id: 'stem-in-fork-us',
    joint: 'stem-steerer',
    what: 'stem in fork about the steering axis, no movement',
    unit: 'N.m',
    byUse: forAll(47),
    ...federal('1512.18(h)(1)', 'memory'),
  },
  {
    id: 'rear-wheel-retention-us',
    joint: 'rear-axle',
    what: 'rear axle in the dropouts, half a minute without movement',
    unit: 'N',
    byUse: forAll(1780),
    ...federal('1512.12(a)(1)', 'seen'),
  },
  {
    id: 'front-nut-removal-us',
    joint: 'front-axle',
    what: 'front axle lock holds against loosening',
    unit: 'N.m',
    byUse: forAll(17),
    ...federal('1512.12(a)(2)', 'seen'),
  },
  {
    id: 'wheel-retention',
    joint: 'front-axle',
    what: 'wheel in the dropouts, one minute without movement',
    unit: 'N',
    byUse: forAll(2300),
    ...founded('wheel retention in a text of the EN 15194 family and in EN 14766:2005', 'seen', 2),
  },
  {
    id: 'saddle-clamp-us',
    joint: 'saddle-rails',
    what: 'saddle pressed down 25 mm from its end',
    unit: 'N',
    byUse: forAll(668),
    ...federal('1512.18(l)', 'memory'),
  },
];
