import { describe, expect, test } from 'vitest';
import { inRange, wholeInRange } from '../../../src/mechanics/inRange.ts';

test('a value between its bounds, or on them, is handed on', () => {
  expect(inRange('slackMm', 0.3, 0, 5)).toBe(0.3);
  expect(inRange('slackMm', 5, 0, 5)).toBe(5);
  expect(inRange('offsetMm', -1e9)).toBe(-1e9);
  expect(wholeInRange('ringTeeth', 36, 6, 120)).toBe(36);
});

describe('programmer errors name the argument', () => {
  test.each([-0.001, 5.001, Number.NaN, Number.POSITIVE_INFINITY])('%s', (value) =>
    expect(() => inRange('slackMm', value, 0, 5)).toThrow(/^slackMm must/),
  );
  test.each([36.5, 5, 121, Number.NaN])('%s teeth', (value) =>
    expect(() => wholeInRange('ringTeeth', value, 6, 120)).toThrow(/^ringTeeth must/),
  );
  test('no bounds still means finite', () =>
    expect(() => inRange('offsetMm', Number.NEGATIVE_INFINITY)).toThrow(RangeError));
});
