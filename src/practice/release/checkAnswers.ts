import { fittedHere, lackingHere, type WrittenBike } from '../../fit/fittedHere.ts';
import type { CheckAnswered } from '../../journal/entries.ts';
import type { RideCheckRow } from '../../journal/rows.ts';
import type { RideCheckGroup } from '../../standards/checks/rideCheck.ts';

export type CheckAnswer = { ok: true } | { ok: false; words: string } | { ok: false; absent: true };
/** By item. */
export type CheckAnswers = Record<string, CheckAnswer>;

type Confirmed = RideCheckRow['groups'][string];

const answerOf = ({ ok, absent, words = '' }: CheckAnswered): CheckAnswer =>
  ok ? { ok } : absent ? { ok, absent } : { ok, words };

/** Answers a group was confirmed with, as a start for looking again. */
export function answersOf(confirmed: Confirmed | undefined): CheckAnswers {
  return Object.fromEntries((confirmed?.items ?? []).map((item) => [item.itemId, answerOf(item)]));
}

/**
 * Answers to begin a group with: as it was confirmed, but for what the bike has by now; for the rest, what the bike is known
 * not to have need not be asked.
 */
export function firstAnswers(
  group: RideCheckGroup,
  confirmed: Confirmed | undefined,
  bike: WrittenBike,
): CheckAnswers {
  const lacking = group.items.filter(({ id }) => lackingHere(id, bike));
  const known = Object.entries(answersOf(confirmed)).filter(
    ([itemId, answer]) => !('absent' in answer && fittedHere(itemId, bike)),
  );
  return {
    ...Object.fromEntries(lacking.map(({ id }) => [id, { ok: false, absent: true } as const])),
    ...Object.fromEntries(known),
  };
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
