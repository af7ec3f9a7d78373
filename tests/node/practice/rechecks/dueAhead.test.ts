import { expect, test } from 'vitest';
import { dueAhead } from '../../../../src/practice/rechecks/dueAhead.ts';

const DAY_MS = 86_400_000;

test.each([
  [0, 5_184_000_000],
  [1, 10_368_000_000],
  [60 * DAY_MS, 10_368_000_000],
])('at %d ms it asks up to %d ms', (nowMs, untilMs) => {
  expect(dueAhead(nowMs)).toEqual({ untilMs });
});

test('the span is two to four months, and the question the same for weeks', () => {
  const nowMs = Date.UTC(2026, 10, 25);
  const asked = new Set(Array.from({ length: 60 }, (_, day) => dueAhead(nowMs + day * DAY_MS).untilMs));
  expect(asked.size).toBeLessThanOrEqual(2);
  for (let day = 0; day < 60; day += 1) {
    const aheadMs = dueAhead(nowMs + day * DAY_MS).untilMs - (nowMs + day * DAY_MS);
    expect(aheadMs).toBeGreaterThanOrEqual(60 * DAY_MS);
    expect(aheadMs).toBeLessThanOrEqual(120 * DAY_MS);
  }
});
