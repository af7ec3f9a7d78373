import { describe, expect, test } from 'vitest';
import { clockOrDayText, spanShort, timeLeftText } from '../../../src/words/timeLeft.ts';

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

describe('examples of the docstrings', () => {
  test('250 s are 4:10', () => expect(timeLeftText(250_000)).toEqual({ value: '4:10', unit: 'min' }));
  test('250 s in few signs', () => expect(spanShort(250_000)).toBe('5 min'));
  test('the epoch in UTC', () => expect(clockOrDayText(0, 0, 'UTC')).toBe('00:00'));
});

test.each([
  [0, '0:00'],
  [1, '0:01'],
  [59_000, '0:59'],
  [59_001, '1:00'],
  [HOUR_MS - 1000, '59:59'],
  [HOUR_MS - 1, '1 h 00'],
  [HOUR_MS + 5 * MINUTE_MS, '1 h 05'],
  [23 * HOUR_MS + 59 * MINUTE_MS, '23 h 59'],
  [24 * HOUR_MS, '1 d 0 h'],
  [52.4 * HOUR_MS, '2 d 4 h'],
])('%s ms is written %s', (spanMs, value) => expect(timeLeftText(spanMs).value).toBe(value));

test.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('a span of %s is refused', (spanMs) =>
  expect(() => timeLeftText(spanMs)).toThrow(RangeError),
);

test('no wait is ever told shorter than it is', () => {
  for (let spanMs = 0; spanMs < HOUR_MS - 1000; spanMs += 977) {
    const [minutes, seconds] = timeLeftText(spanMs).value.split(':').map(Number);
    expect((minutes! * 60 + seconds!) * 1000).toBeGreaterThanOrEqual(spanMs);
  }
});

// 2026-11-25T13:10Z; offsets of these zones on that day: IANA time zone database (Apia +13, Santiago -3, Kolkata +5:30).
const noonMs = Date.UTC(2026, 10, 25, 13, 10);
test.each([
  ['UTC', '13:10'],
  ['Pacific/Apia', '02:10'],
  ['America/Santiago', '10:10'],
  ['Asia/Kolkata', '18:40'],
])('IANA zone %s shows %s', (zone, text) => expect(clockOrDayText(noonMs, noonMs, zone)).toBe(text));

test('another day is named, and it is the day of the zone, not of Greenwich', () => {
  const laterMs = noonMs + 8 * HOUR_MS;
  expect(clockOrDayText(laterMs, noonMs, 'UTC')).toBe('21:10');
  expect(clockOrDayText(laterMs, noonMs, 'Asia/Kolkata')).toContain('26 Nov');
});
