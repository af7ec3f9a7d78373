import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactly } from '../../../../src/mechanics/band.ts';
import {
  preloadBandN,
  preloadFromTorqueN,
  torqueForPreloadNm,
} from '../../../../src/mechanics/screws/preloadFromTorque.ts';
import { around } from '../../../fixtures/rows.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

test('Mechanical Engineering Design, example 8-3 (from memory): ¾-16 at 25 000 lbf and K 0.2 wants 3750 in·lbf; pounds and inches cancel', () => {
  expect(torqueForPreloadNm(25000, 0.75, 0.2) * 1000).toBeCloseTo(3750, 9);
});

const sound = fc.double({ min: 1e-3, max: 1e4, noNaN: true });
const nutFactor = fc.double({ min: 0.05, max: 0.6, noNaN: true });

describe('properties', () => {
  test('more torque is more preload; a slipperier thread is more preload', () => {
    fc.assert(
      fc.property(sound, sound, nutFactor, (nm, d, k) => {
        expect(preloadFromTorqueN(nm * 1.01, d, k)).toBeGreaterThan(preloadFromTorqueN(nm, d, k));
        expect(preloadFromTorqueN(nm, d, k * 0.99)).toBeGreaterThan(preloadFromTorqueN(nm, d, k));
      }),
    );
  });
  test('a poorer tool only widens the band', () => {
    fc.assert(
      fc.property(sound, nutFactor, fc.double({ min: 0, max: 0.4, noNaN: true }), (nm, k, w) => {
        const fine = preloadBandN(nm, 5, around(k, 0.2), w);
        const coarse = preloadBandN(nm, 5, around(k, 0.2), w + 0.1);
        expect(coarse.lo).toBeLessThan(fine.lo);
        expect(coarse.mid).toBe(fine.mid);
        expect(coarse.hi).toBeGreaterThan(fine.hi);
      }),
    );
  });
});

refusesBadNumbers({ torqueNm: 'positive', diameterMm: 'positive', nutFactor: 'positive' }, (name, value) => {
  const args = { torqueNm: 5, diameterMm: 5, nutFactor: 0.2, [name]: value };
  return preloadFromTorqueN(args.torqueNm, args.diameterMm, args.nutFactor);
});
refusesBadNumbers({ preloadN: 'positive' }, (_, value) => torqueForPreloadNm(value, 5, 0.2));
refusesBadNumbers({ toolError: 'or-zero' }, (_, value) => preloadBandN(5, 5, exactly(0.2), value));
test('a tool that may be all wrong is refused', () => {
  expect(() => preloadBandN(5, 5, exactly(0.2), 1)).toThrow(RangeError);
});
