import { describe, expect, test } from 'vitest';
import {
  recheckInstructions,
  recheckRows,
  recheckSchedule,
  type ScheduleRow,
  spanOfTurn,
} from '../../../../src/standards/checks/recheckSchedule.ts';
import { jointKinds } from '../../../../src/standards/jointKinds.ts';

const first = (...args: Parameters<typeof recheckRows>): ScheduleRow =>
  recheckRows(...args)[0] as ScheduleRow;

describe('examples of the docstrings', () => {
  test('a cured rotor is bedded in and looked at', () =>
    expect(recheckRows('rotor', true).map((row) => row.instruction)).toEqual([
      'brake-bed-in',
      'look-at-mark',
    ]));
  test('spokes a second time', () =>
    expect(spanOfTurn(first('spokes', false), 1)).toEqual({ km: 100, days: 30 }));
});

describe('the schedule', () => {
  test('every kind of joint is looked at again, and no other', () => {
    const scheduled = new Set<string>(recheckSchedule.map((row) => row.jointKind));
    expect([...scheduled].sort()).toEqual(jointKinds.map((row) => row.kind).sort());
  });

  test('every span can fall due, and says by which calendar day unless rides or hours do', () => {
    for (const row of recheckSchedule)
      for (const span of [row.whenFirst, row.then, row.afterwards]) {
        if (span === null) continue;
        const figures = Object.values(span);
        expect(figures.length, row.jointKind).toBeGreaterThan(0);
        for (const figure of figures) expect(figure, row.jointKind).toBeGreaterThanOrEqual(0);
      }
  });

  test('whatever matters is looked at after the first ride at the latest (16 CFR 1512.17, road test of 6.4 km)', () => {
    for (const { kind, matters } of jointKinds)
      if (matters)
        expect(
          recheckSchedule.some((row) => row.jointKind === kind && row.whenFirst.afterRides === 1),
          kind,
        ).toBe(true);
  });

  // Generic owner's manual, public copy: first check within 30 days, or after 3 to 15 hours; then every 10 to 20 hours.
  test("no first check later than the generic owner's manual allows: 30 days, 15 hours", () => {
    for (const row of recheckSchedule) {
      expect(row.whenFirst.days ?? 0, row.jointKind).toBeLessThanOrEqual(30);
      expect(row.whenFirst.hours ?? 0, row.jointKind).toBeLessThanOrEqual(15);
    }
  });
  test("no later check further apart than the generic owner's manual allows: 20 hours", () => {
    for (const row of recheckSchedule)
      for (const span of [row.then, row.afterwards])
        expect(span?.hours ?? 0, row.jointKind).toBeLessThanOrEqual(20);
  });

  test('a cured thread is never pulled (bond breaks; bolting engineers call audits of bonded threads unsuitable)', () => {
    for (const { kind } of jointKinds)
      expect(recheckRows(kind, true).filter((row) => row.instruction === 'retorque')).toEqual([]);
  });

  test('a dry clamp is pulled', () => expect(first('bar-clamp', false).instruction).toBe('retorque'));

  test('every instruction in use has words', () => {
    for (const row of recheckSchedule) expect(recheckInstructions[row.instruction].words).toMatch(/[.?]$/);
  });
});

describe('turns', () => {
  test('bedding in is done once', () => {
    const bedIn = first('rotor', false);
    expect(spanOfTurn(bedIn, 0)).toEqual({ afterRides: 0 });
    expect(spanOfTurn(bedIn, 1)).toBeNull();
    expect(spanOfTurn(bedIn, 5)).toBeNull();
  });
  test('axles are looked at every ride (common practice, no source)', () =>
    expect(spanOfTurn(first('rear-axle', false), 9)).toEqual({ afterRides: 1 }));
  test.each([-1, 0.5, Number.NaN])('turn %s is a programmer error', (turn) =>
    expect(() => spanOfTurn(first('fork', false), turn)).toThrow(RangeError),
  );
});
