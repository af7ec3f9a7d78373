import { expect, test } from 'vitest';
import { calendarOutcome, calendarWords } from '../../../src/words/calendarWords.ts';

const seal = {
  is: 'wait',
  kind: 'seal',
  title: 'Rear tyre',
  bikeName: 'Magpie',
  left: {},
  dueAtMs: 1,
} as const;

test('a seal: the bike, then the thing', () => {
  const { summary, description } = calendarWords(seal, 'km');
  expect(summary).toBe('Magpie: Seal: Rear tyre');
  expect(description).toContain('Look at it');
  expect(description).not.toContain('guess');
});

test('what cures by the clock asks for no look', () =>
  expect(calendarWords({ ...seal, kind: 'cure' }, 'km').description).toMatch(/^Curing time over\./));

test('a tool has no bike', () =>
  expect(
    calendarWords({ ...seal, is: 'tool', kind: 'tool-check', title: 'Wrench', bikeName: '' }, 'km').summary,
  ).toBe('Check the tool: Wrench'));

test('with a date as well, rides only come sooner; without one the date is a guess', () => {
  const check = { ...seal, is: 'recheck', kind: 'inspect', left: { rides: 1, km: 16.09344 } } as const;
  expect(calendarWords(check, '[mi_i]').description).toContain('In 1 ride or 10 mi, if that comes sooner.');
  expect(calendarWords(check, 'km').description).not.toContain('guess');
  const { dueAtMs: _dueAtMs, ...undated } = check;
  expect(calendarWords(undated, 'km').description).toContain('The date is estimated');
});

test.each([
  ['saved', 1, 'Saved. Open the file to add it; the calendar rings, not this app.'],
  ['saved', 3, 'Saved with 3 entries. Open the file to add them; the calendar rings, not this app.'],
  ['shared', 2, 'Handed over with 2 entries. The calendar rings, not this app.'],
  ['closed', 1, 'Not added.'],
  ['none', 0, 'Nothing is due later.'],
] as const)('%s with %d: %s', (was, events, words) => expect(calendarOutcome(was, events)).toBe(words));
