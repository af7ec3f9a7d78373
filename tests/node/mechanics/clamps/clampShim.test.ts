import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bondedShimNm, shimChain } from '../../../../src/mechanics/clamps/clampShim.ts';
import { slipTorqueNm } from '../../../../src/mechanics/clamps/clampSlip.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

const barInShim = { name: 'bar in shim', diameterMm: 22.2, friction: 0.2 };
const shimInClamp = { name: 'shim in clamp', diameterMm: 25.4, friction: 0.2 };

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

refusesBadNumbers({ shearMPa: 'positive', diameterMm: 'positive', lengthMm: 'positive' }, (name, value) => {
  const args = { shearMPa: 10, diameterMm: 22.2, lengthMm: 45, [name]: value };
  return bondedShimNm(args.shearMPa, args.diameterMm, args.lengthMm);
});
