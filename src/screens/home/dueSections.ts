import type { Id } from '../../journal/entries.ts';
import type { DueLine } from '../../logbook.ts';

const SOON_MS = 7 * 86_400_000;

export interface DueSections {
  late: DueLine[];
  running: DueLine[];
  soon: DueLine[];
}

/**
 * What is due, what waits, and what falls due within a week. A wait that is over goes first: work goes on there,
 * and a pile of re-checks must not fold it away.
 * @param lines earliest first
 * @param away bikes put away: not ridden, so their re-checks and defects stay with them; what cures or seals goes on
 * @example dueSections([], new Set(), 0) //=> { late: [], running: [], soon: [] }
 */
export function dueSections(lines: readonly DueLine[], away: ReadonlySet<Id>, nowMs: number): DueSections {
  const shown = lines.filter(({ is, bikeId }) => is === 'wait' || !away.has(bikeId));
  const late = shown.filter(({ dueAtMs }) => dueAtMs <= nowMs);
  const ahead = shown.filter(({ dueAtMs }) => dueAtMs > nowMs);
  return {
    late: late.toSorted((a, b) => Number(b.is === 'wait') - Number(a.is === 'wait')),
    running: ahead.filter(({ is }) => is === 'wait'),
    soon: ahead.filter(({ is, dueAtMs }) => is !== 'wait' && dueAtMs <= nowMs + SOON_MS),
  };
}
