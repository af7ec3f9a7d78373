import { exactly } from '../../../../src/mechanics/band.ts';
import { clampMargin } from '../../../../src/mechanics/clamps/clampMargin.ts';
import { riderMomentNm } from '../../../../src/mechanics/clamps/clampMoment.ts';
import { bondedShimNm } from '../../../../src/mechanics/clamps/clampShim.ts';
import { slipTorqueBandNm } from '../../../../src/mechanics/clamps/clampSlip.ts';
import {
  bondedShimWorking,
  marginWorking,
  riderMomentWorking,
  slipWorking,
} from '../../../../src/mechanics/clamps/clampWorkings.ts';
import { around } from '../../../fixtures/rows.ts';
import { provesWorkings } from '../workingChecks.ts';

const preloadN = around(5000, 0.3);
const friction = exactly(0.2);
const lever = { kind: 'one-slit-stiff', bolts: 2, tubeArmMm: 20, boltArmMm: 40 } as const;
const band = { kind: 'one-slit-flexible', bolts: 2 } as const;
const plate = { kind: 'two-piece', bolts: 4 } as const;
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
    ['bonded shim', bondedShimWorking(10, 22.2, 45), bondedShimNm(10, 22.2, 45), 'N·m'],
    ['rider', riderMomentWorking(place, force), riderMomentNm(place, force), 'N·m'],
    ['margin', marginWorking(slipNm, 60, 'ISO 4210-5'), clampMargin(slipNm, 60).ratio, ''],
  ],
  // An index stands for each face of a chain.
  { di: 'd', µi: 'µ', ΣFi: 'ΣF' },
);
