import { type JointKind, jointKindRow } from '../standards/jointKinds.ts';
import {
  type HeadsetCap,
  headsetWords,
  jointWork,
  type WorkId,
  type WorkStep,
} from '../standards/jointWork.ts';

/** What the order of work needs to know of a joint. */
export interface JointToBuild {
  jointId: string;
  name: string;
  kind: JointKind;
  partNames: string[];
  /** What goes between, in words: shim, adapter, grease. */
  between: string[];
  locker: boolean;
  /** A retaining compound goes on before the faces come together. */
  bonded?: boolean;
  /** Something is screwed in it. */
  screwed: boolean;
  /** A torque was given for it. */
  figure?: boolean;
  /** Pressed, whatever is usual for its kind. */
  pressed?: boolean;
  /** A piece that other faces go into, as a sleeve for cups: put together and nothing more. */
  bare?: boolean;
  /** Bearings that drop in are not pressed. */
  dropIn?: boolean;
  /** How the play of a headset is taken up. */
  cap?: HeadsetCap;
  /** Pulled by a cable that has a joint of its own. */
  cabled?: boolean;
}

/** A step without its place and its id. */
export interface PlannedStep {
  kind: 'fit' | 'torque' | 'press' | 'lock' | 'seat' | 'adjust' | 'check';
  title: string;
  detail?: string;
  jointId: string;
  work?: WorkId;
}

function togetherWords(joint: JointToBuild): string | undefined {
  const parts = joint.partNames.filter((name) => name !== '').join(' + ');
  const between = joint.between.length > 0 ? `between: ${joint.between.join(', ')}` : '';
  const detail = [parts, between].filter((text) => text !== '').join('; ');
  return detail === '' ? undefined : detail;
}

/**
 * What the title of a step says behind the name of its joint: no two steps bear the same name.
 * @example stepTitle('Headset', 'press') //=> 'Headset: press'
 */
export const stepTitle = (joint: string, what: string): string => `${joint}: ${what}`;

function workSteps(joint: JointToBuild, works: readonly WorkStep[] = []): PlannedStep[] {
  const { jointId, name, cap = 'cap', cabled } = joint;
  return works
    .filter(({ work }) => !(work === 'bleed' && cabled))
    .map(({ work, kind, what, how }) => ({
      ...{ kind, title: stepTitle(name, what), jointId, work },
      detail: work === 'play' ? headsetWords[cap] : how,
    }));
}

/** The steps of one joint, in the order of the hand: a locker goes on the thread before it is tightened. */
function stepsOfJoint(joint: JointToBuild): PlannedStep[] {
  const { jointId, name, kind, locker, bonded, screwed, figure, pressed, dropIn, bare } = joint;
  const work = jointWork[kind];
  const detail = togetherWords(joint);
  const way = pressed ? 'press' : dropIn ? 'fit' : work.together;
  const plain = (of: PlannedStep['kind'], what: string): PlannedStep => ({
    ...{ kind: of, title: stepTitle(name, what), jointId },
  });
  const torqued = figure || (screwed && !work.noWrench);
  return [
    ...workSteps(joint, work.first),
    ...(bonded ? [plain('lock', 'retaining compound')] : []),
    { ...plain(way, work.called ?? way), ...(detail ? { detail } : {}) },
    ...(locker && !bonded ? [plain('lock', 'threadlocker')] : []),
    ...(torqued ? [plain('torque', 'torque')] : []),
    ...(bare ? [] : workSteps(joint, work.afterwards)),
  ];
}

/**
 * The joints of a bike as steps: bearings and wheels before what hangs on them, and within a joint the work its kind asks
 * for.
 * @param joints joints to build, in any order
 * @returns steps in the order of work; joints of equal order keep the order they came in
 * @example stepsFor([]) //=> []
 */
export function stepsFor(joints: JointToBuild[]): PlannedStep[] {
  const order = ({ kind }: JointToBuild) => jointKindRow(kind).buildOrder;
  return joints.toSorted((a, b) => order(a) - order(b)).flatMap(stepsOfJoint);
}
