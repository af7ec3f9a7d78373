import type { DueLine } from '../../journal/answers.ts';
import type { Id } from '../../journal/entries.ts';
import { overWord } from '../../words/waitWords.ts';

const SOON_MS = 7 * 86_400_000;

export interface DueSections {
  late: DueLine[];
  waits: DueLine[];
  soon: DueLine[];
}

/**
 * What is due, what waits, and what falls due within a week. A wait that is over goes first: work goes on
 * there, and a pile of re-checks must not fold it away. What has cured needs no action: it stays first among
 * the waits.
 * @param lines earliest first
 * @param away bikes put away: not ridden, so their re-checks and defects stay with them; what cures or seals
 * goes on
 * @example dueSections([], new Set(), 0) //=> { late: [], waits: [], soon: [] }
 */
export function dueSections(lines: readonly DueLine[], away: ReadonlySet<Id>, nowMs: number): DueSections {
  const shown = lines.filter(({ is, bikeId }) => is === 'wait' || !away.has(bikeId));
  const over = shown.filter(({ dueAtMs }) => dueAtMs <= nowMs);
  const cured = ({ is, kind }: DueLine) => is === 'wait' && overWord(kind) !== undefined;
  const ahead = shown.filter(({ dueAtMs }) => dueAtMs > nowMs);
  return {
    late: over
      .filter((line) => !cured(line))
      .toSorted((a, b) => Number(b.is === 'wait') - Number(a.is === 'wait')),
    waits: [...over.filter(cured), ...ahead.filter(({ is }) => is === 'wait')],
    soon: ahead.filter(({ is, dueAtMs }) => is !== 'wait' && dueAtMs <= nowMs + SOON_MS),
  };
}
