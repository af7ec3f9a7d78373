import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bondedShimNm,
  closedRingPressureMPa,
  shimChain,
  tensionThroughRingN,
} from '../../../../src/mechanics/clamps/clampShim.ts';
import { slipTorqueNm } from '../../../../src/mechanics/clamps/clampSlip.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

const barInShim = { name: 'bar in shim', diameterMm: 22.2, friction: 0.2 };
const shimInClamp = { name: 'shim in clamp', diameterMm: 25.4, friction: 0.2 };
const ring = { modulusMPa: 70000, wallMm: 1.6, radiusMm: 11.9, radialGapMm: 0.05 };

test('examples', () => {
  expect(shimChain([barInShim, shimInClamp], 20000).weakest.name).toBe('bar in shim');
  expect(closedRingPressureMPa(ring)).toBeCloseTo(39.5, 1);
  expect(tensionThroughRingN(20000, 45, ring)).toBe(0);
  expect(bondedShimNm(10, 22.2, 45)).toBeCloseTo(348.4, 1);
});

describe('a chain is as strong as its weakest face', () => {
  test('a loose shim holds no more than a clamp of the bar’s own size', () => {
    expect(shimChain([barInShim, shimInClamp], 20000).slipNm).toEqual(slipTorqueNm(20000, 0.2, 22.2));
  });
  test('a greasy outer face decides although it is the larger', () => {
    const greasy = { ...shimInClamp, friction: 0.1 };
    expect(shimChain([barInShim, greasy], 20000).weakest).toBe(greasy);
  });
  test('a face behind a closed ring gets only what comes through, never more than the clamp gives', () => {
    const starved = { ...barInShim, tensionN: 2000 };
    expect(shimChain([starved, shimInClamp], 20000).slipNm.lo).toBeCloseTo(8.88, 9);
    expect(shimChain([{ ...barInShim, tensionN: 90000 }], 20000).slipNm).toEqual(
      slipTorqueNm(20000, 0.2, 22.2),
    );
  });
  test('one more shim never helps', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 36, noNaN: true }),
        fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        (d, µ) => {
          const more = [barInShim, { name: 'second shim', diameterMm: d, friction: µ }, shimInClamp];
          expect(shimChain(more, 20000).slipNm.lo).toBeLessThanOrEqual(
            shimChain([barInShim, shimInClamp], 20000).slipNm.lo,
          );
        },
      ),
    );
  });
  test('an empty chain is refused', () => expect(() => shimChain([], 20000)).toThrow(RangeError));
});

describe('a closed ring', () => {
  test('without a gap it costs nothing', () => {
    expect(tensionThroughRingN(20000, 45, { ...ring, radialGapMm: 0 })).toBe(20000);
  });
  test('it takes its pressure times diameter times length: 7.91 MPa × 23.8 mm × 45 mm off 20 000 N', () => {
    expect(tensionThroughRingN(20000, 45, { ...ring, radialGapMm: 0.01 })).toBeCloseTo(20000 - 8471, 0);
  });
  test('a wider gap lets less through, never less than nothing', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (gap) => {
        const here = tensionThroughRingN(20000, 45, { ...ring, radialGapMm: gap });
        const wider = tensionThroughRingN(20000, 45, { ...ring, radialGapMm: gap + 0.01 });
        expect(wider).toBeLessThanOrEqual(here);
        expect(wider).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

refusesBadNumbers(
  { modulusMPa: 'positive', wallMm: 'positive', radiusMm: 'positive', radialGapMm: 'or-zero' },
  (name, value) => closedRingPressureMPa({ ...ring, [name]: value }),
);
refusesBadNumbers({ shearMPa: 'positive', diameterMm: 'positive', lengthMm: 'positive' }, (name, value) => {
  const args = { shearMPa: 10, diameterMm: 22.2, lengthMm: 45, [name]: value };
  return bondedShimNm(args.shearMPa, args.diameterMm, args.lengthMm);
});
refusesBadNumbers({ tensionN: 'or-zero', lengthMm: 'positive' }, (name, value) =>
  name === 'tensionN' ? tensionThroughRingN(value, 45, ring) : tensionThroughRingN(20000, value, ring),
);
