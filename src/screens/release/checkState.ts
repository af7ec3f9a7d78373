import type { MarkState } from '../../controls/figures/Mark.tsx';
import type { RideCheckRow } from '../../journal/rows.ts';
import type { RideCheckGroup } from '../../standards/checks/rideCheck.ts';

export type CheckAnswer = { ok: true } | { ok: false; words: string };
/** By item. */
export type CheckAnswers = Record<string, CheckAnswer>;

type Confirmed = RideCheckRow['groups'][string];

/**
 * How a group of the pre-ride check stands.
 * @param at writes the instant it was confirmed
 * @example groupMark(undefined, String) //=> { state: 'open', word: 'Not done' }
 */
export function groupMark(
  confirmed: Confirmed | undefined,
  at: (ms: number) => string,
): { state: MarkState; word: string } {
  if (!confirmed) return { state: 'open', word: 'Not done' };
  const found = confirmed.items.filter(({ ok }) => !ok).length;
  if (found > 0) return { state: 'held', word: found === 1 ? '1 finding' : `${found} findings` };
  return { state: 'done', word: `Confirmed ${at(confirmed.atMs)}` };
}

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
