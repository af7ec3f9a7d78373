import type { Id } from '../../journal/entries.ts';
import type { JointRow, StepRow } from '../../journal/rows.ts';
import { type OrderedPart, orderedJoints } from '../../planning/orderedJoints.ts';
import { placeInOrder } from '../../planning/placeInOrder.ts';
import type { OrderedStep } from '../../planning/workPairs.ts';
import { jointKindRow } from '../../standards/jointKinds.ts';

/** A joint as far as the place of its steps depends on it. */
export type JointInList = Pick<JointRow, 'jointId' | 'kind' | 'partIds' | 'between' | 'state'>;

/** A step that stands in the list, or will by the time the next one is put in. */
export type StepInList = OrderedStep & Pick<StepRow, 'stepId'>;

/** The list new steps are put into, in its order. */
export interface StepList {
  steps: StepInList[];
  joints: JointInList[];
  parts: readonly OrderedPart[];
}

/** What a step is put behind; null puts it before all others. */
export type Behind = Id | null;

/** Just before the first step of a joint that is not yet done; at the end where it has none. */
function beforeJoint({ steps }: StepList, jointId: Id | undefined): number {
  const at = steps.findIndex((step) => step.jointId === jointId && (step.state ?? 'open') === 'open');
  return at < 0 ? steps.length : at;
}

/** Behind the last step of a joint that comes no later in a build. */
function inBuildOrder({ steps, joints }: StepList, jointId: Id | undefined): number {
  const orderOf = (id: Id | undefined): number => {
    const joint = joints.find((one) => one.jointId === id);
    return joint ? jointKindRow(joint.kind).buildOrder : Number.POSITIVE_INFINITY;
  };
  return steps.findLastIndex((step) => orderOf(step.jointId) <= orderOf(jointId)) + 1;
}

/**
 * Puts a step of a bridge where it belongs: into the work on its joint, or where such a joint comes in a build, as near
 * to that as the order of work allows.
 * @param list takes the step in
 * @param joint whether the joint was there before
 * @returns what it is put behind
 */
export function putStep(list: StepList, step: StepInList, joint: 'there' | 'new'): Behind {
  const wanted = (joint === 'there' ? beforeJoint : inBuildOrder)(list, step.jointId);
  const joints = orderedJoints(
    list.joints.map((one) => ({ ...one, locked: undefined })),
    list.parts,
  );
  const at = placeInOrder(list.steps, step, wanted, joints);
  list.steps.splice(at, 0, step);
  return list.steps[at - 1]?.stepId ?? null;
}
