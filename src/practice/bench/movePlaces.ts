import type { Id } from '../../journal/entries.ts';
import type { StepRow } from '../../journal/rows.ts';
import { breachWords, newBreach } from '../../planning/placeInOrder.ts';
import type { JointsById } from '../../planning/workPairs.ts';

/** A place in the list that a step can be put at, or why not. */
export interface MovePlace {
  /** What it would stand behind; null for the first place. */
  afterStepId: Id | null;
  /** Why the order of work forbids it. */
  refused?: string;
  /** It stands here already. */
  here?: true;
}

/**
 * Every place of a list for one of its steps: the first, and behind each other step.
 * @param steps the list in its order
 * @param joints of the bike, see `orderedJoints`
 * @example movePlaces([], 's1', new Map()) //=> []
 */
export function movePlaces(steps: readonly StepRow[], stepId: Id, joints: JointsById): MovePlace[] {
  const from = steps.findIndex((step) => step.stepId === stepId);
  const step = steps[from];
  if (!step) return [];
  const others = steps.filter((one) => one !== step);
  return Array.from({ length: others.length + 1 }, (_, index): MovePlace => {
    const afterStepId = others[index - 1]?.stepId ?? null;
    if (index === from) return { afterStepId, here: true };
    const breach = newBreach(others, step, index, joints, from);
    return breach ? { afterStepId, refused: breachWords(breach) } : { afterStepId };
  });
}
