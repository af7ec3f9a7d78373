import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { DefectRow, RecheckRow, RidesRow, ToolRow, WaitRow } from '../../../src/journal/rows.ts';
import { type DutyRow, dutyOf, likelyRidden, nineOf } from '../../../src/planning/due.ts';
import { toolCheckDueMs, toolState } from '../../../src/planning/toolState.ts';

const DAY_MS = 86_400_000;
const nowMs = new Date(2026, 4, 10, 12).getTime();
const head = { lastMs: 0, lastId: 'e' };
const of = (row: DutyRow, rides?: RidesRow) =>
  dutyOf(row, { nowMs, bikeName: 'Magpie', title: 'Stem', rides });

const wait: WaitRow = {
  ...{ ...head, key: 'wait/w1', is: 'wait', waitId: 'w1', bikeId: 'b1', waitKind: 'cure', title: 'Stem' },
  ...{ startedAtMs: nowMs, waitMs: DAY_MS, clockMovedMs: 0, dueAtMs: nowMs + DAY_MS },
};
const recheck: RecheckRow = {
  ...{ ...head, key: 'recheck/r1', is: 'recheck', recheckId: 'r1', bikeId: 'b1', jointId: 'j1' },
  ...{ kind: 'inspect', title: 'Stem', instruction: 'Look', turn: 0, setAtMs: nowMs - DAY_MS },
  ...{ setOrder: { ms: 0, id: 'a' } as unknown as RecheckRow['setOrder'], ridesThen: 0, kmThen: 0 },
};
const defect: DefectRow = {
  ...{ ...head, key: 'defect/d1', is: 'defect', defectId: 'd1', bikeId: 'b1', words: 'Bell', area: 'other' },
  ...{ decision: 'ride-limited', foundAtMs: nowMs - DAY_MS },
  foundOrder: { ms: 0, id: 'a' } as unknown as DefectRow['foundOrder'],
};
const tool: ToolRow = { ...head, key: 'tool/t1', is: 'tool', toolId: 't1', name: 'Wrench' };
const rides = (km: readonly number[]): RidesRow => {
  const log = km.map((one, at) => ({
    ...({ ms: at, id: `${at}` } as unknown as RidesRow['log'][number]),
    atMs: nowMs - DAY_MS / 2 + at,
    km: one,
  }));
  const sum = km.reduce((all, one) => all + one, 0);
  return { ...head, key: 'rides/b1', is: 'rides', bikeId: 'b1', count: km.length, km: sum, minutes: 0, log };
};

test('two rides at one every other day: the example of its description', () =>
  expect(likelyRidden({ rides: 2 }, { ridesPerDay: 0.5, kmPerDay: 10 }, 0)).toBe(345_600_000));

test('whichever comes first: rides or distance', () => {
  const pace = { ridesPerDay: 0.5, kmPerDay: 10 };
  expect(likelyRidden({ rides: 2, km: 10 }, pace, 0)).toBe(DAY_MS);
  expect(likelyRidden({ rides: 1, km: 100 }, pace, 0)).toBe(2 * DAY_MS);
  expect(likelyRidden({}, pace, 0)).toBeUndefined();
});

test('nine of a day to come, of tomorrow where it is past', () => {
  expect(new Date(nineOf(nowMs + 3 * DAY_MS, nowMs)).getHours()).toBe(9);
  expect(nineOf(nowMs, nowMs)).toBe(new Date(2026, 4, 11, 9).getTime());
  expect(nineOf(nowMs - DAY_MS, nowMs)).toBe(new Date(2026, 4, 11, 9).getTime());
});

describe('one shape for all that waits or falls due', () => {
  test('a wait is due by the clock', () =>
    expect(of(wait)).toMatchObject({
      is: 'wait',
      id: 'w1',
      likelyMs: nowMs + DAY_MS,
      latestByMs: nowMs + DAY_MS,
    }));

  test('a re-check by days keeps its instant, and says what may be ridden before', () => {
    const dueAtMs = nowMs + 30 * DAY_MS;
    const duty = of(
      { ...recheck, timeDueMs: dueAtMs, dueAtMs, dueRides: 2, dueKm: 50, dueDays: 31 },
      rides([12]),
    );
    expect(duty).toMatchObject({
      dueAtMs,
      latestByMs: dueAtMs,
      left: { rides: 1, km: 38 },
      startedAtMs: nowMs - DAY_MS,
    });
    // One ride left at one a week.
    expect(duty?.likelyMs).toBe(nowMs + 7 * DAY_MS);
  });

  test('a re-check by rides alone is latest by nine on the likely day', () => {
    const duty = of({ ...recheck, dueRides: 1 });
    expect(duty?.dueAtMs).toBeUndefined();
    expect(duty?.latestByMs).toBe(new Date(2026, 4, 17, 9).getTime());
  });

  test('a re-check whose rides are used up is due', () => {
    const duty = of({ ...recheck, dueRides: 1, dueAtMs: nowMs - 5, reachedAtMs: nowMs - 5 }, rides([3]));
    expect(duty).toMatchObject({ dueAtMs: nowMs - 5, likelyMs: nowMs - 5, left: { rides: 0 } });
  });

  test('a problem counts the distance since it was found', () =>
    expect(of({ ...defect, untilKm: 20 }, rides([6, 6]))).toMatchObject({ is: 'defect', left: { km: 8 } }));

  test('a tool is due for its check a year after the last one; at once after a fall', () => {
    const lastCheckMs = nowMs - 300 * DAY_MS;
    expect(of({ ...tool, lastCheckMs })?.dueAtMs).toBe(lastCheckMs + 365 * DAY_MS);
    expect(of({ ...tool, lastCheckMs, droppedAtMs: nowMs - DAY_MS })?.dueAtMs).toBe(nowMs - DAY_MS);
  });

  test.each<[string, DutyRow]>([
    ['an ended wait', { ...wait, endedAtMs: nowMs }],
    ['an answered re-check', { ...recheck, dueRides: 1, answeredAtMs: nowMs }],
    ['a dropped re-check', { ...recheck, dueRides: 1, dropped: 'gone' }],
    ['a re-check without a span', recheck],
    ['a problem that was fixed', { ...defect, untilKm: 5, closed: 'new bell' }],
    ['a problem that stops the bike', { ...defect, decision: 'do-not-ride', untilKm: 5 }],
    ['a tool that was never checked', tool],
    ['a tool put away', { ...tool, lastCheckMs: 0, putAway: 'sold' }],
  ])('%s is no duty', (_name, row) => expect(of(row)).toBeUndefined());
});

test('a tool counts as checked only while no check of it is due', () => {
  const at = fc.integer({ min: 1, max: 800 }).map((days) => days * DAY_MS);
  const checks = fc.record(
    {
      lastCheckMs: at,
      checkEveryDays: fc.integer({ min: 1, max: 700 }),
      droppedAtMs: at,
      foundOut: fc.record({ atMs: at }),
    },
    { requiredKeys: ['lastCheckMs'] },
  );
  fc.assert(
    fc.property(checks, at, (tool, now) => {
      const dueMs = toolCheckDueMs(tool) ?? Number.POSITIVE_INFINITY;
      if (dueMs >= now) return;
      expect(toolState(tool, now)).not.toBe('checked');
    }),
  );
});
