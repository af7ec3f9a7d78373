import { describe, expect, test } from 'vitest';
import { finite, inRange, notNegative, positive, wholeInRange } from '../../../src/mechanics/range.ts';

describe('argument checks', () => {
  test('sound values pass in silence', () => {
    expect(positive({ torqueNm: 5 })).toBeUndefined();
    expect(notNegative({ friction: 0 })).toBeUndefined();
    expect(finite({ angleDeg: -90 })).toBeUndefined();
  });

  test.each([
    ['positive', positive, [0, -1, Number.NaN, Number.POSITIVE_INFINITY]],
    ['notNegative', notNegative, [-1e-9, Number.NaN, Number.POSITIVE_INFINITY]],
    ['finite', finite, [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]],
  ] as const)('%s names the argument it refuses', (_, check, values) => {
    for (const value of values) expect(() => check({ good: 1, culprit: value })).toThrow(/culprit/);
  });
});

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
