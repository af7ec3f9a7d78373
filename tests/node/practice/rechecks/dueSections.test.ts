import { describe, expect, test } from 'vitest';
import type { Duty } from '../../../../src/journal/answers.ts';
import type { DueLine } from '../../../../src/logbook.ts';
import { dueSections } from '../../../../src/practice/rechecks/dueSections.ts';

const DAY_MS = 86_400_000;
const noneAway = new Set<string>();
const line = (key: string, is: DueLine['is'], dueAtMs: number, kind = 'seal') =>
  ({ key, is, kind, dueAtMs, bikeId: 'b1' }) as DueLine;
const keys = (lines: readonly { key: string }[]) => lines.map(({ key }) => key);

describe('dueSections', () => {
  test('of nothing', () =>
    expect(dueSections([], undefined, noneAway, 0)).toEqual({ late: [], waits: [], soon: [] }));

  test('a wait that is over goes before re-checks that are later still; each kind stays earliest first', () => {
    const lines = [
      line('stem', 'recheck', -9 * DAY_MS),
      line('bell', 'defect', -2 * DAY_MS),
      line('paint', 'wait', -DAY_MS, 'other'),
      line('bead', 'wait', 0),
    ];
    expect(keys(dueSections(lines, undefined, noneAway, 0).late)).toEqual(['paint', 'bead', 'stem', 'bell']);
  });

  test('a wait that runs is shown however long it has to run, a re-check only within a week', () => {
    const lines = [
      line('stem', 'recheck', 7 * DAY_MS),
      line('bar', 'recheck', 7 * DAY_MS + 1),
      line('bead', 'wait', 40 * DAY_MS),
    ];
    const { late, waits, soon } = dueSections(lines, undefined, noneAway, 0);
    expect([late, waits, soon].map(keys)).toEqual([[], ['bead'], ['stem']]);
  });

  test('of a bike put away only what cures or seals is shown', () => {
    const lines = [line('stem', 'recheck', -1), line('tyre', 'wait', -1), line('bead', 'wait', 1)];
    const { late, waits } = dueSections(lines, undefined, new Set(['b1']), 0);
    expect([late, waits].map(keys)).toEqual([['tyre'], ['bead']]);
  });

  test('what cured is not due: it stands first among the waits', () => {
    const lines = [
      line('glue', 'wait', -2, 'adhesive'),
      line('locker', 'wait', -1, 'cure'),
      line('tyre', 'wait', -1),
      line('bead', 'wait', 1),
    ];
    const { late, waits } = dueSections(lines, undefined, noneAway, 0);
    expect([late, waits].map(keys)).toEqual([['tyre'], ['glue', 'locker', 'bead']]);
  });

  test('with all duties known, what rides or distance make due soon is in it, and a tool that is overdue', () => {
    const duty = (key: string, is: Duty['is'], about: Partial<Duty>) =>
      ({ key, is, kind: 'inspect', left: {}, likelyMs: 0, latestByMs: 0, bikeId: 'b1', ...about }) as Duty;
    const duties = [
      duty('wrench', 'tool', { dueAtMs: -5 }),
      duty('chain', 'recheck', { left: { km: 10 }, likelyMs: 5 * DAY_MS }),
      duty('braze', 'recheck', { left: { rides: 4 }, likelyMs: 28 * DAY_MS }),
      duty('bead', 'wait', { dueAtMs: 9 * DAY_MS, likelyMs: 9 * DAY_MS }),
    ];
    const { late, waits, soon } = dueSections([], duties, noneAway, 0);
    expect([late, waits, soon].map((part) => part.map(({ key }) => key))).toEqual([
      ['wrench'],
      ['bead'],
      ['chain'],
    ]);
  });
});
