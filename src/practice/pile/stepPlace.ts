import type { Id } from '../../journal/entries.ts';
import type { JointRow, StepRow } from '../../journal/rows.ts';
import { jointKindRow } from '../../standards/jointKinds.ts';

/** The list a new step is put into, in its order. */
export interface StepList {
  steps: readonly StepRow[];
  joints: readonly JointRow[];
}

/** What a step is put behind; null puts it before all others. */
export type Behind = Id | null;

/**
 * Behind which step the work on an existing joint begins: just before its first step not yet done.
 * @returns undefined when it has none, and the step goes to the end
 */
export function beforeJoint({ steps }: StepList, jointId: Id): Behind | undefined {
  const at = steps.findIndex((step) => step.jointId === jointId && step.state === 'open');
  return at < 0 ? undefined : (steps[at - 1]?.stepId ?? null);
}

/**
 * Behind which step a new joint is built: the last of a joint that comes no later in a build.
 * @param order build order of the new joint, see `jointKinds`
 * @returns undefined when the list is empty
 */
export function placeInBuildOrder({ steps, joints }: StepList, order: number): Behind | undefined {
  const orderOf = (step: StepRow): number => {
    const joint = joints.find(({ jointId }) => jointId === step.jointId);
    return joint ? jointKindRow(joint.kind).buildOrder : Number.POSITIVE_INFINITY;
  };
  if (steps.length === 0) return undefined;
  return steps.findLast((step) => orderOf(step) <= order)?.stepId ?? null;
}
