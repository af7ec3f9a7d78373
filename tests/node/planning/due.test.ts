import { describe, expect, test } from 'vitest';
import { timeDueMs } from '../../../src/planning/due.ts';

const HOUR = 3_600_000;

describe('timeDueMs', () => {
  test('a day later, the example of its description', () => {
    // Noon UTC on 3 May; no zone of the test run changes its clocks that night.
    expect(timeDueMs(Date.UTC(2026, 4, 3, 12), 1)).toBe(Date.UTC(2026, 4, 4, 12));
  });

  test('no days, no due time', () => expect(timeDueMs(0, undefined)).toBeUndefined());

  test('half a day is twelve hours', () => {
    const from = new Date(2026, 5, 10, 8).getTime();
    expect((timeDueMs(from, 0.5) ?? 0) - from).toBe(12 * HOUR);
  });

  test.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('%d days are a programmer error', (days) => {
    expect(() => timeDueMs(0, days)).toThrow(RangeError);
  });

  // Facts of the time-zone database: all of 2026 is walked, so every change of the clocks of the zone is met.
  test(`set at nine in the morning it falls due at nine, on every day of a year (${process.env['TZ'] ?? 'the zone of this machine'})`, () => {
    for (let day = 0; day < 365; day += 1) {
      const from = new Date(2026, 0, 1 + day, 9).getTime();
      for (const span of [1, 7, 30, 90, 180]) {
        const due = new Date(timeDueMs(from, span) ?? 0);
        expect([due.getHours(), due.getMinutes()]).toEqual([9, 0]);
        const expected = new Date(2026, 0, 1 + day + span, 9);
        expect(due.getTime()).toBe(expected.getTime());
      }
    }
  });
});
