import { expect, test } from 'vitest';
import { spanTyped, usualSpans } from '../../../src/planning/spanTyped.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

test.each([
  ['20 min', 'h', 20 * MINUTE],
  ['20', 'min', 20 * MINUTE],
  ['24', 'h', 24 * HOUR],
  ['1.5', 'h', 90 * MINUTE],
  ['1,5 h', 'min', 90 * MINUTE],
  ['24h', 'min', 24 * HOUR],
  ['2 days', 'min', 48 * HOUR],
  ['3 d', 'h', 72 * HOUR],
  ['1 h 30 min', 'h', 90 * MINUTE],
  ['1h30', 'h', 90 * MINUTE],
  ['1 day 2 hours', 'h', 26 * HOUR],
  ['90 mins', 'h', 90 * MINUTE],
  ['60', 'd', 60 * 24 * HOUR],
] as const)('%s, %s where no unit is typed', (text, unit, ms) => {
  expect(spanTyped(text, unit)).toBe(ms);
});

test.each(['', 'soon', '0', '-5', '61 d', '1.2.3 h', '5 weeks', '20 min 5', '1 h h'])(
  'refused: %s',
  (text) => {
    expect(spanTyped(text, 'min')).toBeUndefined();
  },
);

test('what is offered reads as what it sets', () => {
  for (const { words, waitMs } of usualSpans) expect(spanTyped(words, 'd')).toBe(waitMs);
});
