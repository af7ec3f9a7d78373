import type { RideCheckRow } from '../../journal/rows.ts';
import type { RideCheckGroup } from '../../standards/checks/rideCheck.ts';

export type CheckAnswer = { ok: true } | { ok: false; words: string };
/** By item. */
export type CheckAnswers = Record<string, CheckAnswer>;

type Confirmed = RideCheckRow['groups'][string];

/** Answers a group was confirmed with, as a start for looking again. */
export function answersOf(confirmed: Confirmed | undefined): CheckAnswers {
  return Object.fromEntries(
    (confirmed?.items ?? []).map(({ itemId, ok, words = '' }) => [itemId, ok ? { ok } : { ok, words }]),
  );
}

/** How many items of a group have an answer. */
export function answeredCount(group: RideCheckGroup, answers: CheckAnswers): number {
  return group.items.filter(({ id }) => answers[id] !== undefined).length;
}

/** The answers as the logbook takes them, in the order of the check. */
export function confirmedItems(group: RideCheckGroup, answers: CheckAnswers): Confirmed['items'] {
  return group.items.flatMap(({ id }) => {
    const answer = answers[id];
    return answer ? [{ itemId: id, ...answer }] : [];
  });
}
