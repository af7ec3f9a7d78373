import type { StepState } from '../../journal/rows.ts';

/** What the order of work needs to know of a step. */
export interface ListedStep {
  stepId: string;
  state: StepState;
}

/** A step, or the end of the list. */
export type PlaceInPlan = { at: 'step'; index: number } | { at: 'end' };

const END: PlaceInPlan = { at: 'end' };

/**
 * Where work goes on: at the step that was open, else at the first that is not done, else at the end.
 * @param steps the list in its order, without dropped steps
 * @param openStepId the step opened last, if any
 * @example stepInHand([], undefined) //=> { at: 'end' }
 */
export function stepInHand(steps: readonly ListedStep[], openStepId: string | undefined): PlaceInPlan {
  const opened = steps.findIndex(({ stepId, state }) => stepId === openStepId && state === 'open');
  const index = opened === -1 ? steps.findIndex(({ state }) => state === 'open') : opened;
  return index === -1 ? END : { at: 'step', index };
}

/**
 * The next open step behind one just logged. Nothing open behind it leads to the end of the list, which says
 * what was left out on the way.
 * @param index place of the step just logged
 * @example stepAfter([{ stepId: 'a', state: 'done' }], 0) //=> { at: 'end' }
 */
export function stepAfter(steps: readonly ListedStep[], index: number): PlaceInPlan {
  const next = steps.findIndex(({ state }, place) => place > index && state === 'open');
  return next === -1 ? END : { at: 'step', index: next };
}

/**
 * One step on or back in the list, whatever its state; behind the last comes the end.
 * @param steps the list in its order
 * @param from where one is
 * @example neighbour([], { at: 'end' }, -1) //=> { at: 'end' }
 */
export function neighbour(steps: readonly ListedStep[], from: PlaceInPlan, by: 1 | -1): PlaceInPlan {
  const index = (from.at === 'end' ? steps.length : from.index) + by;
  if (index >= steps.length || steps.length === 0) return END;
  return { at: 'step', index: Math.max(0, index) };
}

/**
 * Places, counted from 1, that were passed without being done: open before the step in hand, and skipped anywhere.
 * @param index place of the step in hand, or the length of the list at its end
 * @example leftBehind([{ stepId: 'a', state: 'open' }], 1) //=> [1]
 */
export function leftBehind(steps: readonly ListedStep[], index: number): number[] {
  return steps.flatMap(({ state }, place) =>
    state === 'skipped' || (state === 'open' && place < index) ? [place + 1] : [],
  );
}
