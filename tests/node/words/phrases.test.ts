import { expect, test } from 'vitest';
import {
  countWords,
  dayWords,
  listWords,
  numberWords,
  quantityWords,
  remark,
  spanInWords,
} from '../../../src/words/phrases.ts';

test.each([
  [{ value: 5.2, unit: 'N.m', typed: '5,2' }, '5,2 N·m'],
  [{ value: 5.2, unit: 'N.m', typed: '5,2 Nm' }, '5,2 Nm'],
  [{ value: 1.125, unit: '[in_i]', typed: '1 1/8"' }, '1 1/8"'],
] as const)('%j stays as it was typed and has its unit once', (typed, words) => {
  expect(quantityWords(typed)).toBe(words);
});

// A day has 24 hours of 60 minutes.
test.each([
  [93_600_000, '1 day and 2 hours'],
  [0, 'less than a minute'],
  [90 * 60_000, '1 hour and 30 minutes'],
  [86_400_000 * 2 + 3_600_000 + 60_000, '2 days, 1 hour and 1 minute'],
])('a span of %d ms is %s', (ms, words) => {
  expect(spanInWords(ms)).toBe(words);
});

// IANA time zone database: in May, Apia is 13 hours ahead of UTC and Santiago 4 behind.
test.each([
  [Date.UTC(2026, 4, 3, 23), 'Pacific/Apia', '4 May 2026'],
  [Date.UTC(2026, 4, 3, 2), 'America/Santiago', '2 May 2026'],
  [Date.UTC(2026, 4, 3, 2), 'UTC', '3 May 2026'],
])('%d is lived in %s as %s', (ms, zone, words) => {
  expect(dayWords(ms, zone)).toBe(words);
});

test('lists, counts and remarks read as people write them', () => {
  expect(listWords(['fork', 'stem', 'shim'])).toBe('fork, stem and shim');
  expect(listWords([])).toBe('');
  expect(countWords(1, 'pass', 'passes')).toBe('1 pass');
  expect(numberWords(8.25)).toBe('8.3');
  expect(remark('Why', ' too wide. ')).toBe(' Why: too wide.');
  expect(remark('Why', '  ')).toBe('');
});
