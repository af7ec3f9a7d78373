import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { riderMomentNm, worstRiderMomentNm } from '../../../../src/mechanics/clamps/clampMoment.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

test('examples: pulling 400 N back on a bar that rises 200 mm', () => {
  expect(riderMomentNm({ riseMm: 200, reachMm: -50 }, { downN: 0, forwardN: -400 })).toBe(-80);
  expect(worstRiderMomentNm({ riseMm: 200, reachMm: 0 }, 400)).toBe(80);
});

test('weight on grips straight above the clamp turns nothing', () => {
  expect(riderMomentNm({ riseMm: 150, reachMm: 0 }, { downN: 600, forwardN: 0 })).toBe(0);
});

const mm = fc.double({ min: -300, max: 300, noNaN: true });
test('no direction of the same force beats the worst one, and one reaches it', () => {
  fc.assert(
    fc.property(mm, mm, fc.double({ min: 0, max: 7, noNaN: true }), (riseMm, reachMm, angle) => {
      const worst = worstRiderMomentNm({ riseMm, reachMm }, 500);
      const push = { downN: 500 * Math.cos(angle), forwardN: 500 * Math.sin(angle) };
      expect(Math.abs(riderMomentNm({ riseMm, reachMm }, push))).toBeLessThanOrEqual(worst + 1e-9);
      const across = Math.atan2(riseMm, reachMm);
      const best = { downN: 500 * Math.cos(across), forwardN: 500 * Math.sin(across) };
      expect(riderMomentNm({ riseMm, reachMm }, best)).toBeCloseTo(worst, 9);
    }),
  );
});

refusesBadNumbers({ forceN: 'or-zero' }, (_, value) => worstRiderMomentNm({ riseMm: 1, reachMm: 1 }, value));
test.each(['riseMm', 'reachMm', 'downN', 'forwardN'])('%s must be finite', (name) => {
  const all = { riseMm: 1, reachMm: 1, downN: 1, forwardN: 1, [name]: Number.NaN };
  expect(() => riderMomentNm(all, all)).toThrow(name);
});
