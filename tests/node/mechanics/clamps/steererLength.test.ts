import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { steererLengthMm, steererSpare } from '../../../../src/mechanics/clamps/steererLength.ts';

const stack = { lowerStackMm: 10.9, headTubeMm: 110.2, upperStackMm: 16.5, spacersMm: 25.3, stemClampMm: 40 };

test('builder’s blog, worked example: 202.9 mm of stack make a steerer of 200 (199.9) mm', () =>
  expect(steererLengthMm(stack)).toBeCloseTo(199.9, 9));

test('a steerer of 160 mm is 39.9 mm short of that stack', () =>
  expect(steererSpare(160, stack).spareMm).toBeCloseTo(-39.9, 9));
test('a steerer of 163 mm is 36.9 mm short of that stack and 0.1 mm deep in the stem', () => {
  const { spareMm, insideStemMm } = steererSpare(163, stack);
  expect(spareMm).toBeCloseTo(-36.9, 9);
  expect(insideStemMm).toBeCloseTo(0.1, 9);
});
test('a steerer as long as wanted fills the stem but for the gap', () =>
  expect(steererSpare(199.9, stack).insideStemMm).toBeCloseTo(37, 9));
test('a steerer left long fills the stem and stands out', () =>
  expect(steererSpare(230, stack)).toEqual({ spareMm: expect.closeTo(30.1, 9), insideStemMm: 40 }));

describe('properties', () => {
  const part = fc.double({ min: 5, max: 150, noNaN: true });
  const anyStack = fc.record({
    lowerStackMm: part,
    headTubeMm: part,
    upperStackMm: part,
    spacersMm: part,
    stemClampMm: part,
  });
  test('a spacer more asks for as much more steerer', () => {
    fc.assert(
      fc.property(anyStack, fc.double({ min: 0, max: 50, noNaN: true }), (s, mm) => {
        const taller = { ...s, spacersMm: s.spacersMm + mm };
        expect(steererLengthMm(taller) - steererLengthMm(s)).toBeCloseTo(mm, 9);
      }),
    );
  });
  test('what is inside the stem is never negative nor more than its clamp', () => {
    fc.assert(
      fc.property(anyStack, fc.double({ min: 50, max: 600, noNaN: true }), (s, steererMm) => {
        const { insideStemMm } = steererSpare(steererMm, s);
        expect(insideStemMm).toBeGreaterThanOrEqual(0);
        expect(insideStemMm).toBeLessThanOrEqual(s.stemClampMm);
      }),
    );
  });
});

test.each([
  [
    'a stack of nothing',
    () => steererLengthMm({ lowerStackMm: 0, headTubeMm: 0, upperStackMm: 0, spacersMm: 0, stemClampMm: 0 }),
  ],
  ['a head tube of no length', () => steererLengthMm({ ...stack, headTubeMm: Number.NaN })],
  ['a negative spacer', () => steererLengthMm({ ...stack, spacersMm: -5 })],
  ['no steerer', () => steererSpare(0, stack)],
])('%s is refused', (_, call) => expect(call).toThrow(RangeError));
