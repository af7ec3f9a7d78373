import type { DueLine, Duty } from '../../journal/answers.ts';
import type { Id } from '../../journal/entries.ts';
import { overWord } from '../../words/waitWords.ts';

const SOON_MS = 7 * 86_400_000;

export interface DueSections {
  late: Duty[];
  waits: Duty[];
  soon: Duty[];
}

/** A line of the index of instants in the shape of all duties. */
const dutyOfLine = (line: DueLine): Duty => ({
  ...line,
  left: {},
  likelyMs: line.dueAtMs,
  latestByMs: line.dueAtMs,
});

/**
 * What is due, what waits, and what is likely to fall due within a week. A wait that is over goes first: work goes on
 * there, and a pile of re-checks must not fold it away. What has cured needs no action: it stays first among
 * the waits.
 * @param lines what has an instant, earliest first: read at once
 * @param duties all of it, with what falls due by rides or distance and the tools to be checked; read a moment later
 * @param away bikes put away: not ridden, so their re-checks and defects stay with them; what cures or seals
 * goes on
 * @example dueSections([], undefined, new Set(), 0) //=> { late: [], waits: [], soon: [] }
 */
export function dueSections(
  lines: readonly DueLine[],
  duties: readonly Duty[] | undefined,
  away: ReadonlySet<Id>,
  nowMs: number,
): DueSections {
  const isHere = ({ is, bikeId = '' }: Duty) => is === 'wait' || !away.has(bikeId);
  const shown = (duties ?? lines.map(dutyOfLine)).filter(isHere);
  const isOver = ({ dueAtMs }: Duty) => dueAtMs !== undefined && dueAtMs <= nowMs;
  const cured = ({ is, kind }: Duty) => is === 'wait' && overWord(kind) !== undefined;
  const over = shown.filter(isOver);
  const ahead = shown.filter((duty) => !isOver(duty));
  return {
    late: over
      .filter((line) => !cured(line))
      .toSorted((a, b) => Number(b.is === 'wait') - Number(a.is === 'wait')),
    waits: [...over.filter(cured), ...ahead.filter(({ is }) => is === 'wait')],
    soon: ahead.filter(({ is, likelyMs }) => is !== 'wait' && likelyMs <= nowMs + SOON_MS),
  };
}
