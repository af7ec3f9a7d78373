import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CHAIN_PITCH_MM, rollerCircleMm, TEETH } from '../../../../src/mechanics/drive/pitchDiameter.ts';

// [computed] regression rows; catalogue and textbook values stand in tests/fixtures/outside/chain.ts.
test.each([
  [17, 69.116],
  [8, 33.187],
  [15, 61.084],
  [20, 81.184],
  [36, 145.716],
  [44, 178.023],
])('%s teeth: %s mm', (teeth, mm) => expect(rollerCircleMm(teeth)).toBeCloseTo(mm, 3));

describe('properties', () => {
  const teeth = fc.integer({ min: TEETH.fewest, max: TEETH.most - 1 });
  test('neighbouring rollers placed on the circle are one pitch apart', () => {
    fc.assert(
      fc.property(teeth, (n) => {
        const r = rollerCircleMm(n) / 2;
        const step = (2 * Math.PI) / n;
        expect(Math.hypot(r * Math.cos(step) - r, r * Math.sin(step))).toBeCloseTo(CHAIN_PITCH_MM, 9);
      }),
    );
  });
  test('one tooth more is a larger circle', () => {
    fc.assert(
      fc.property(teeth, (n) => {
        expect(rollerCircleMm(n + 1)).toBeGreaterThan(rollerCircleMm(n));
      }),
    );
  });
});

test.each([5, 15.5, 121, Number.NaN])('%s teeth are refused', (teeth) =>
  expect(() => rollerCircleMm(teeth)).toThrow(RangeError),
);
test('a chain without pitch is refused', () => expect(() => rollerCircleMm(15, 0)).toThrow(RangeError));
