import type { Id } from './entries.ts';
import type { PartRow, StepRow } from './rows.ts';

type CutStep = Pick<StepRow, 'stepId' | 'kind' | 'partId' | 'state' | 'addedAtMs' | 'doneAtMs'>;

/**
 * Which change of a part each step that is done stands on: one change finishes one step, the earliest one that was made
 * between planning the step and finishing it: a later one is left for a later step.
 * @param part as it stands, with its changes
 * @param steps of the bike, of every kind
 * @returns the step by the entry of its change
 * @example stepsByChange({ partId: 'p', changes: [] }, []).size //=> 0
 */
export function stepsByChange<S extends CutStep>(
  { partId, changes }: Pick<PartRow, 'partId' | 'changes'>,
  steps: readonly S[],
): Map<Id, S> {
  const taken = new Map<Id, S>();
  const oldest = changes.toSorted((a, b) => a.atMs - b.atMs);
  const done = steps.filter((step) => step.kind === 'cut' && step.partId === partId && step.state === 'done');
  for (const step of done.toSorted((a, b) => (a.doneAtMs ?? 0) - (b.doneAtMs ?? 0))) {
    const { addedAtMs, doneAtMs = Number.POSITIVE_INFINITY } = step;
    const change = oldest.find(
      ({ entryId, atMs }) => !taken.has(entryId) && atMs >= addedAtMs && atMs <= doneAtMs,
    );
    if (change) taken.set(change.entryId, step);
  }
  return taken;
}
