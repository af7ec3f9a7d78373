import fc from 'fast-check';
import { expect, test } from 'vitest';
import { torqueScale } from '../../../../src/drawing/scales/torqueScale.ts';

test('example of the docstring', () => {
  expect(torqueScale({ target: [5, 5], applied: 4 }).applied).toBeCloseTo(4 / 6, 12);
});

test('a rule from nought in round steps: 12 to 14, applied 13, found 9', () => {
  expect(torqueScale({ target: [12, 14], applied: 13, found: 9 })).toEqual({
    endNm: 15,
    ticks: [0, 5, 10, 15],
    target: { from: 12 / 15, to: 14 / 15 },
    applied: 13 / 15,
    found: 9 / 15,
  });
});

test('whatever the torques, all lie on the rule, in their order, and it has a few marks', () => {
  const nm = fc.double({ min: 0.2, max: 400, noNaN: true });
  fc.assert(
    fc.property(nm, nm, nm, nm, (a, b, applied, found) => {
      const lo = Math.min(a, b);
      const hi = Math.max(a, b);
      const scale = torqueScale({ target: [lo, hi], applied, found });
      for (const share of [scale.target.from, scale.target.to, scale.applied ?? 0, scale.found ?? 0]) {
        expect(share).toBeGreaterThan(0);
        expect(share).toBeLessThanOrEqual(1);
      }
      expect(scale.ticks.length).toBeGreaterThanOrEqual(3);
      expect(scale.ticks.length).toBeLessThanOrEqual(8);
      expect(scale.ticks.at(-1)).toBeCloseTo(scale.endNm, 3);
      expect((scale.applied ?? 0) < (scale.found ?? 0)).toBe(applied < found);
    }),
  );
});
