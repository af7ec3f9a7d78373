import { type JointArea, type JointKind, jointKindRow } from '../jointKinds.ts';
import type { Sourced } from '../known.ts';

/** Kinds of steps, as the plan has them. */
type GatedStep = 'fit' | 'torque' | 'press' | 'lock' | 'seat' | 'measure' | 'cut' | 'adjust' | 'check';

/** A thing left undone keeps the bike where it is, or is only named on the release. */
export type GateEffect = 'stops' | 'named';

export interface GateRow extends Sourced {
  /** Joints of this area, or these kinds of joint alone; a kind goes before its area. */
  readonly at: JointArea | readonly JointKind[];
  readonly steps: readonly GatedStep[];
  readonly open: GateEffect;
  readonly skipped: GateEffect;
  /** A torque logged on the joint says that it is together: then the step is a mere line in the list. */
  readonly provenByTorque?: true;
  readonly why: string;
}

const brakes: Sourced = {
  source: 'ISO 4210-2:2014 excerpt: two brakes that work independently',
  known: 'seen',
};
const locking: Sourced = {
  source: 'ISO 4210-2:2014 excerpt, list of screws that need a locking device',
  known: 'seen',
};
const steering: Sourced = {
  source: 'ISO 4210-2:2014 excerpt: steering free, without tight spots or slack',
  known: 'seen',
};
const spokes: Sourced = { source: '16 CFR 1512.11, wheels', known: 'seen' };
const retention: Sourced = { source: '16 CFR 1512.12, wheel retention', known: 'seen' };
const own: Sourced = { source: 'our suggestion: what can throw the rider', known: 'proposal' };
const stops = { open: 'stops', skipped: 'stops' } as const;

/**
 * What an undone step stops, by the joint it is about. It holds for joints that matter on their bike; what is not listed, and
 * every step of a joint that does not matter, is named on the release and stops nothing.
 */
export const releaseGate: readonly GateRow[] = [
  {
    ...{ at: ['spokes'], steps: ['fit', 'torque', 'measure', 'adjust', 'check'], ...stops, ...spokes },
    why: 'A wheel that was not brought to tension and true folds.',
  },
  {
    ...{ at: ['bead'], steps: ['fit', 'seat'], ...stops, ...own },
    why: 'A bead that was not seated comes off the rim.',
  },
  {
    ...{ at: 'brakes', steps: ['fit', 'torque'], ...stops, ...brakes, provenByTorque: true },
    why: 'A brake that is not tightened does not hold.',
  },
  {
    ...{ at: 'brakes', steps: ['press', 'adjust', 'check'], ...stops, ...brakes },
    why: 'A brake that was not bled or adjusted does not hold.',
  },
  {
    ...{ at: 'brakes', steps: ['lock'], open: 'stops', skipped: 'named', ...locking },
    why: 'Its screws need something that keeps them from turning.',
  },
  {
    ...{ at: 'steering', steps: ['fit', 'torque'], ...stops, ...steering, provenByTorque: true },
    why: 'A steering joint that is not finished slips or comes apart.',
  },
  {
    ...{ at: 'steering', steps: ['press', 'adjust', 'check'], ...stops, ...steering },
    why: 'Steering with play or tight spots throws the rider.',
  },
  {
    ...{
      at: 'wheels',
      steps: ['fit', 'torque', 'adjust', 'check'],
      ...stops,
      ...retention,
      provenByTorque: true,
    },
    why: 'A wheel that is not fixed comes out.',
  },
  {
    ...{ at: 'saddle', steps: ['fit', 'torque'], ...stops, ...own, provenByTorque: true },
    why: 'A seat that slips throws the rider.',
  },
  {
    ...{ at: 'drive', steps: ['fit', 'torque', 'press', 'adjust'], ...stops, ...own, provenByTorque: true },
    why: 'A crank, a pedal or a chain that brakes throws the rider when it fails.',
  },
];

/** Joints that are not turned by a wrench alone, but on which something must have been logged before a ride. */
export const neverUntouched: readonly JointKind[] = ['cable-anchor', 'headset', 'spokes'];

/** Parts that tell where a step belongs which is about no joint. */
const areaOfPart: Readonly<Record<string, JointArea | 'spokes'>> = {
  caliper: 'brakes',
  cable: 'brakes',
  lever: 'brakes',
  rotor: 'brakes',
  'spoke-set': 'spokes',
  rim: 'spokes',
  headset: 'steering',
  fork: 'steering',
  stem: 'steering',
  bar: 'steering',
};

/**
 * The row that says what an undone step does to a release.
 * @param about the joint it is about, or for want of one the kind of its part
 * @returns undefined where it is only named
 * @example gateOf({ jointKind: 'spokes' }, 'adjust')?.skipped //=> 'stops'
 */
export function gateOf(
  about: { jointKind?: JointKind | undefined; partKind?: string | undefined },
  step: GatedStep,
): GateRow | undefined {
  const byPart = about.partKind === undefined ? undefined : areaOfPart[about.partKind];
  const kind = about.jointKind ?? (byPart === 'spokes' ? 'spokes' : undefined);
  const area = about.jointKind ? jointKindRow(about.jointKind).area : byPart;
  const rows = releaseGate.filter(({ steps }) => steps.includes(step));
  const single = releaseGate.filter(({ at }) => typeof at !== 'string' && kind && at.includes(kind));
  if (single.length > 0) return single.find(({ steps }) => steps.includes(step));
  return rows.find(({ at }) => at === area);
}
