import { describe, expect, test } from 'vitest';
import { finite, notNegative, positive } from '../../../src/mechanics/range.ts';

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
