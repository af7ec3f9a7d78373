import { describe, expect, test } from 'vitest';
import type { DueLine } from '../../../src/logbook.ts';
import { dueSections } from '../../../src/screens/home/dueSections.ts';

const DAY_MS = 86_400_000;
const nobody = new Set<string>();
const line = (key: string, is: DueLine['is'], dueAtMs: number, bikeId = 'b1') =>
  ({ key, is, dueAtMs, bikeId }) as DueLine;
const keys = (lines: readonly DueLine[]) => lines.map(({ key }) => key);

describe('dueSections', () => {
  test('of nothing', () => expect(dueSections([], nobody, 0)).toEqual({ late: [], running: [], soon: [] }));

  test('a wait that is over goes before re-checks that are later still; each kind stays earliest first', () => {
    const lines = [
      line('stem', 'recheck', -9 * DAY_MS),
      line('bell', 'defect', -2 * DAY_MS),
      line('glue', 'wait', -DAY_MS),
      line('bead', 'wait', 0),
    ];
    expect(keys(dueSections(lines, nobody, 0).late)).toEqual(['glue', 'bead', 'stem', 'bell']);
  });

  test('a wait that runs is shown however long it has to run, a re-check only within a week', () => {
    const lines = [
      line('stem', 'recheck', 7 * DAY_MS),
      line('bar', 'recheck', 7 * DAY_MS + 1),
      line('bead', 'wait', 40 * DAY_MS),
    ];
    const { late, running, soon } = dueSections(lines, nobody, 0);
    expect([late, running, soon].map(keys)).toEqual([[], ['bead'], ['stem']]);
  });

  test('of a bike put away only what cures or seals is shown', () => {
    const lines = [line('stem', 'recheck', -1), line('glue', 'wait', -1), line('bead', 'wait', 1)];
    const { late, running } = dueSections(lines, new Set(['b1']), 0);
    expect([late, running].map(keys)).toEqual([['glue'], ['bead']]);
  });
});
