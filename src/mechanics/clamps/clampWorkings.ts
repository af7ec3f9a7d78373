import type { Band } from '../band.ts';
import { given, type Working, type WorkingInput } from '../working.ts';
import { clampMargin } from './clampMargin.ts';
import { type HandForce, type HandPlace, riderMomentNm } from './clampMoment.ts';
import { bondedShimNm } from './clampShim.ts';
import { type ClampConstruction, slipTorqueBandNm } from './clampSlip.ts';

// Each function runs one computation and writes down, beside the result, what a person needs to do it again by hand.

const tensionFormula: Record<ClampConstruction['kind'], string> = {
  'two-piece': 'ΣF = n·F',
  'one-slit-flexible': 'ΣF = 2·n·F',
  'one-slit-stiff': 'ΣF = n·F·l2/l1',
};

function clampInputs(construction: ClampConstruction, boltForceN: Band): WorkingInput[] {
  const inputs = [given('n', construction.bolts), given('F', boltForceN, 'N')];
  return construction.kind === 'one-slit-stiff'
    ? [...inputs, given('l1', construction.tubeArmMm, 'mm'), given('l2', construction.boltArmMm, 'mm')]
    : inputs;
}

const clampSource = 'clamp joint design in machine-element textbooks; c = 1 agrees with printed sample runs';

/** Slip torque of a plain clamp. @example slipWorking({ kind: 'two-piece', bolts: 4 }, exactly(5000), exactly(0.2), 25.4).unit //=> 'N·m' */
export function slipWorking(
  construction: ClampConstruction,
  boltForceN: Band,
  friction: Band,
  diameterMm: number,
): Working {
  return {
    result: slipTorqueBandNm(construction, boltForceN, friction, diameterMm),
    unit: 'N·m',
    formula: `M = c·µ·ΣF·d, ${tensionFormula[construction.kind]}, c = 1 … π/2`,
    inputs: [...clampInputs(construction, boltForceN), given('µ', friction), given('d', diameterMm, 'mm')],
    source: clampSource,
    known: 'seen',
  };
}

/** What the bond of a shim holds. @example bondedShimWorking(10, 22.2, 45).unit //=> 'N·m' */
export function bondedShimWorking(shearMPa: number, diameterMm: number, lengthMm: number): Working {
  return {
    result: bondedShimNm(shearMPa, diameterMm, lengthMm),
    unit: 'N·m',
    formula: 'M = τ·π·d²·L/2',
    inputs: [given('τ', shearMPa, 'MPa'), given('d', diameterMm, 'mm'), given('L', lengthMm, 'mm')],
    source: 'definition of shear on a cylinder',
    known: 'exact',
  };
}

/** The rider's turning moment. @example riderMomentWorking({ riseMm: 200, reachMm: -50 }, { downN: 0, forwardN: -400 }).unit //=> 'N·m' */
export function riderMomentWorking(place: HandPlace, force: HandForce): Working {
  return {
    result: riderMomentNm(place, force),
    unit: 'N·m',
    formula: 'M = Fdown·reach + Fforward·rise',
    inputs: [
      given('Fdown', force.downN, 'N'),
      given('reach', place.reachMm, 'mm'),
      given('Fforward', force.forwardN, 'N'),
      given('rise', place.riseMm, 'mm'),
    ],
    source: 'statics',
    known: 'exact',
  };
}

/**
 * Slip torque over the moment asked of it.
 * @param demandSource who asks for that moment: the clause of a test standard, or the rider's own reckoning
 * @example marginWorking(slipNm, 60, 'ISO 4210-5').unit //=> ''
 */
export function marginWorking(slipNm: Band, demandNm: number, demandSource: string): Working {
  return {
    result: clampMargin(slipNm, demandNm).ratio,
    unit: '',
    formula: 'Mslip / Mdemand',
    inputs: [given('Mslip', slipNm, 'N·m'), given('Mdemand', demandNm, 'N·m')],
    source: demandSource,
    known: 'computed',
  };
}
