import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { leastRingTeeth, ringBossMm } from '../../../src/fit/wholes/leastTeeth.ts';
import { ringMounts } from '../../../src/standards/interfaces/ringMounts.ts';

test('example of the docstring', () => {
  expect(leastRingTeeth(104, 4)).toEqual({ teethCount: 32, listed: true });
  expect(ringBossMm(32, 104)).toBeCloseTo(8.9, 1);
});

test.each(ringMounts.filter(({ leastTeethCount }) => leastTeethCount !== null))(
  'bolt circle pages: $id from $leastTeethCount teeth; geometry alone comes within one',
  ({ id, leastTeethCount }) => {
    const [circle = 0] = id.split('/').map(Number);
    // Seven bolts: no such row, so the answer comes from geometry.
    const reckoned = leastRingTeeth(circle, 7);
    expect(reckoned.listed).toBe(false);
    expect(Math.abs(reckoned.teethCount - (leastTeethCount ?? 0))).toBeLessThanOrEqual(1);
  },
);

test('a bigger circle never allows a smaller ring', () => {
  fc.assert(
    fc.property(fc.integer({ min: 30, max: 199 }), (circle) => {
      expect(leastRingTeeth(circle + 1, 7).teethCount).toBeGreaterThanOrEqual(
        leastRingTeeth(circle, 7).teethCount,
      );
    }),
  );
});

test.each([
  [5, 104],
  [32, 0],
  [Number.NaN, 104],
])('%f teeth on %f is refused', (teethCount, circle) => {
  expect(() => ringBossMm(teethCount, circle)).toThrow(RangeError);
});

test('no bolt circle of 10 or of a metre', () => {
  expect(() => leastRingTeeth(10, 4)).toThrow(RangeError);
  expect(() => leastRingTeeth(1000, 4)).toThrow(RangeError);
});
