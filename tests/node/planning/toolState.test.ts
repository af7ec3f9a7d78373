import { expect, test } from 'vitest';
import { toolState } from '../../../src/planning/toolState.ts';

const DAY_MS = 86_400_000;

test('checked a day ago, good for ten: the example of its description', () =>
  expect(toolState({ lastCheckMs: 0, checkEveryDays: 10 }, 86_400_000)).toBe('checked'));

test.each([
  ['never-checked', {}, 0],
  ['checked', { lastCheckMs: 0 }, 365 * DAY_MS],
  ['check-overdue', { lastCheckMs: 0 }, 366 * DAY_MS],
  ['check-overdue', { lastCheckMs: 0, checkEveryDays: 30 }, 31 * DAY_MS],
  ['dropped', { lastCheckMs: DAY_MS, droppedAtMs: 2 * DAY_MS }, 3 * DAY_MS],
  ['checked', { lastCheckMs: 3 * DAY_MS, droppedAtMs: 2 * DAY_MS }, 4 * DAY_MS],
  ['dropped', { droppedAtMs: DAY_MS }, 2 * DAY_MS],
  ['checked', { lastCheckMs: 0, droppedAtMs: null }, DAY_MS],
] as const)('%s (12 months: ISO 6789-1, from memory)', (state, checks, atMs) =>
  expect(toolState(checks, atMs)).toBe(state),
);

test('a tool that showed wrong counts as unchecked until it is checked again', () => {
  const foundOut = { atMs: 2 * DAY_MS };
  expect(toolState({ lastCheckMs: DAY_MS, foundOut }, 3 * DAY_MS)).toBe('check-overdue');
  expect(toolState({ lastCheckMs: 3 * DAY_MS, foundOut }, 4 * DAY_MS)).toBe('checked');
});
