import { expect, test } from 'vitest';
import { around, exactly } from '../../../../src/mechanics/band.ts';
import { clampMargin } from '../../../../src/mechanics/clamps/clampMargin.ts';
import { riderMomentNm } from '../../../../src/mechanics/clamps/clampMoment.ts';
import { bondedShimNm, shimChain, tensionThroughRingN } from '../../../../src/mechanics/clamps/clampShim.ts';
import { slipTorqueBandNm } from '../../../../src/mechanics/clamps/clampSlip.ts';
import {
  bondedShimWorking,
  marginWorking,
  riderMomentWorking,
  ringWorking,
  shimWorking,
  slipWorking,
} from '../../../../src/mechanics/clamps/clampWorkings.ts';
import { provesWorkings } from '../workingChecks.ts';

const preloadN = around(5000, 0.3);
const friction = exactly(0.2);
const lever = { kind: 'one-slit-stiff', bolts: 2, tubeArmMm: 20, boltArmMm: 40 } as const;
const band = { kind: 'one-slit-flexible', bolts: 2 } as const;
const plate = { kind: 'two-piece', bolts: 4 } as const;
const faces = [
  { name: 'bar in shim', diameterMm: 22.2, friction: 0.2, tensionN: 15000 },
  { name: 'shim in clamp', diameterMm: 25.4, friction: 0.2 },
];
const ring = { modulusMPa: 70000, wallMm: 1.6, radiusMm: 11.9, radialGapMm: 0.01 };
const place = { riseMm: 200, reachMm: -50 };
const force = { downN: 100, forwardN: -400 };
const slipNm = { lo: 71, mid: 129, hi: 208 };

provesWorkings(
  [
    [
      'stiff slit',
      slipWorking(lever, preloadN, friction, 28.6),
      slipTorqueBandNm(lever, preloadN, friction, 28.6),
      'N·m',
    ],
    [
      'flexible slit',
      slipWorking(band, preloadN, friction, 28.6),
      slipTorqueBandNm(band, preloadN, friction, 28.6),
      'N·m',
    ],
    [
      'face plate',
      slipWorking(plate, preloadN, friction, 31.8),
      slipTorqueBandNm(plate, preloadN, friction, 31.8),
      'N·m',
    ],
    ['shims', shimWorking(faces, 20000), shimChain(faces, 20000).slipNm, 'N·m'],
    ['closed ring', ringWorking(20000, 45, ring), tensionThroughRingN(20000, 45, ring), 'N'],
    ['bonded shim', bondedShimWorking(10, 22.2, 45), bondedShimNm(10, 22.2, 45), 'N·m'],
    ['rider', riderMomentWorking(place, force), riderMomentNm(place, force), 'N·m'],
    ['margin', marginWorking(slipNm, 60, 'ISO 4210-5'), clampMargin(slipNm, 60).ratio, ''],
  ],
  // An index stands for each face of a chain.
  { di: 'd', µi: 'µ', ΣFi: 'ΣF' },
);

test('the working of a shimmed clamp names the face that decides, and the margin who asks', () => {
  expect(shimWorking(faces, 20000).formula).toContain('bar in shim');
  expect(marginWorking(slipNm, 60, 'ISO 4210-5').source).toBe('ISO 4210-5');
});
