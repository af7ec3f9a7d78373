import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Band, band } from '../../../src/mechanics/band.ts';
import { clampMargin } from '../../../src/mechanics/clamps/clampMargin.ts';
import { riderMomentNm, worstRiderMomentNm } from '../../../src/mechanics/clamps/clampMoment.ts';
import { bondedShimNm, shimChain } from '../../../src/mechanics/clamps/clampShim.ts';
import {
  axialSlipN,
  clampPressureMPa,
  clampTensionN,
  slipTorqueNm,
} from '../../../src/mechanics/clamps/clampSlip.ts';
import { engagementForFullStrengthMm, strippingLoadN } from '../../../src/mechanics/screws/engagement.ts';
import { assemblyPreloadN, assemblyTorqueNm } from '../../../src/mechanics/screws/preloadAssembly.ts';
import { preloadBandN, torqueForPreloadNm } from '../../../src/mechanics/screws/preloadFromTorque.ts';
import { preloadUse } from '../../../src/mechanics/screws/preloadUse.ts';
import { stressAreaMm2 } from '../../../src/mechanics/screws/threadGeometry.ts';
import { looseningRatio, looseningTorqueNm } from '../../../src/mechanics/screws/torqueLongForm.ts';
import { plausibleTorque } from '../../../src/mechanics/screws/torquePlausible.ts';
import { torqueAtScrewNm, wrenchSettingNm } from '../../../src/mechanics/screws/wrenchExtension.ts';

type Six = [number, number, number, number, number, number];
const thread = (diameterMm: number, pitchMm: number) => ({ diameterMm, pitchMm, form: 'iso' }) as const;
const joint = ([d, p, µt, µb, dkm]: Six) => ({
  thread: thread(d, p),
  threadFriction: µt,
  bearingFriction: µb,
  bearingDiameterMm: dkm,
});
const sorted = (a: number, b: number, c: number): Band => {
  const [lo = 0, mid = 0, hi = 0] = [a, b, c].sort((x, y) => x - y);
  return band(lo, mid, hi);
};

const computations: Record<string, (six: Six) => unknown> = {
  stressAreaMm2: ([d, p]) => stressAreaMm2(thread(d, p)),
  torqueForPreloadNm: ([n, d, k]) => torqueForPreloadNm(n, d, k),
  preloadBandN: ([nm, d, a, b, c, w]) => preloadBandN(nm, d, sorted(a, b, c), w),
  looseningTorqueNm: (six) => looseningTorqueNm(six[5], joint(six)),
  looseningRatio: (six) => looseningRatio(joint(six)),
  assemblyPreloadN: ([d, p, y, µ, ν]) => assemblyPreloadN(thread(d, p), y, µ, ν),
  assemblyTorqueNm: (six) => assemblyTorqueNm(joint(six), six[5]),
  preloadUse: ([a, b, c, proofN]) => preloadUse(sorted(a, b, c), proofN),
  clampTensionN: ([n, tubeArmMm, boltArmMm]) =>
    clampTensionN({ kind: 'one-slit-stiff', bolts: 2, tubeArmMm, boltArmMm }, n),
  slipTorqueNm: ([n, µ, d]) => slipTorqueNm(n, µ, d),
  axialSlipN: ([n, µ]) => axialSlipN(n, µ),
  clampPressureMPa: ([n, d, l]) => clampPressureMPa(n, d, l),
  shimChain: ([n, d, µ, d2, µ2]) =>
    shimChain(
      [
        { name: 'inner', diameterMm: d, friction: µ },
        { name: 'outer', diameterMm: d2, friction: µ2 },
      ],
      n,
    ),
  bondedShimNm: ([τ, d, l]) => bondedShimNm(τ, d, l),
  clampMargin: ([a, b, c, nm]) => clampMargin(sorted(a, b, c), nm),
  riderMomentNm: ([riseMm, reachMm, downN, forwardN]) =>
    riderMomentNm({ riseMm, reachMm }, { downN, forwardN }),
  worstRiderMomentNm: ([riseMm, reachMm, n]) => worstRiderMomentNm({ riseMm, reachMm }, n),
  wrenchSettingNm: ([nm, wrenchMm, extensionMm, angleDeg]) =>
    wrenchSettingNm(nm, { wrenchMm, extensionMm, angleDeg }),
  torqueAtScrewNm: ([nm, wrenchMm, extensionMm, angleDeg]) =>
    torqueAtScrewNm(nm, { wrenchMm, extensionMm, angleDeg }),
  engagementForFullStrengthMm: ([d, p, screwMPa, femaleMPa]) =>
    engagementForFullStrengthMm(thread(d, p), { screwMPa, femaleMPa }),
  strippingLoadN: ([d, p, mm, mpa]) => strippingLoadN(thread(d, p), mm, mpa),
  plausibleTorque: ([nm, d]) => plausibleTorque(nm, d),
};

const figures = (result: unknown): number[] =>
  typeof result === 'number'
    ? [result]
    : typeof result === 'object' && result !== null
      ? Object.values(result).flatMap(figures)
      : [];

const anything = fc.double();
const ordinary = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
const six = (figure: fc.Arbitrary<number>) => fc.tuple(figure, figure, figure, figure, figure, figure);

test.each(Object.entries(computations))(
  '%s gives finite figures or says RangeError, whatever it is given',
  (_, run) => {
    fc.assert(
      fc.property(fc.oneof(six(ordinary), six(fc.oneof(ordinary, anything))), (given) => {
        let result: unknown;
        try {
          result = run(given);
        } catch (error) {
          expect(error).toBeInstanceOf(RangeError);
          return;
        }
        for (const figure of figures(result)) expect(Number.isFinite(figure)).toBe(true);
      }),
      { numRuns: 300 },
    );
  },
);
