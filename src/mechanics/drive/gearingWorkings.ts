import { given, type Working, type WorkingInput } from '../working.ts';
import { developmentM, gainRatio, gearInches, gearRatio, speedKmh } from './gearing.ts';

// Each function runs one computation and writes down, beside the result, what a person needs to do it again by hand.

const teeth = (ringTeeth: number, sprocketTeeth: number): WorkingInput[] => [
  given('ring', ringTeeth, ''),
  given('sprocket', sprocketTeeth, ''),
];

/** Development of a pair of teeth. @example developmentWorking(36, 15, 660).unit //=> 'm' */
export function developmentWorking(
  ringTeeth: number,
  sprocketTeeth: number,
  wheelDiameterMm: number,
): Working {
  return {
    result: developmentM(gearRatio(ringTeeth, sprocketTeeth), wheelDiameterMm),
    unit: 'm',
    formula: 'ring/sprocket·π·D/1000',
    inputs: [...teeth(ringTeeth, sprocketTeeth), given('D', wheelDiameterMm, 'mm')],
    source: 'definition; published gear tables agree',
    known: 'seen',
  };
}

/** Gear inches of a pair of teeth. @example gearInchesWorking(36, 15, 660).unit //=> 'in' */
export function gearInchesWorking(
  ringTeeth: number,
  sprocketTeeth: number,
  wheelDiameterMm: number,
): Working {
  return {
    result: gearInches(gearRatio(ringTeeth, sprocketTeeth), wheelDiameterMm),
    unit: 'in',
    formula: 'ring/sprocket·D/25.4',
    inputs: [...teeth(ringTeeth, sprocketTeeth), given('D', wheelDiameterMm, 'mm')],
    source: 'definition; published gear tables agree',
    known: 'seen',
  };
}

/** Gain ratio of a pair of teeth. @example gainWorking(36, 15, 660, 170).unit //=> '' */
export function gainWorking(
  ringTeeth: number,
  sprocketTeeth: number,
  wheelDiameterMm: number,
  crankMm: number,
): Working {
  return {
    result: gainRatio(gearRatio(ringTeeth, sprocketTeeth), wheelDiameterMm, crankMm),
    unit: '',
    formula: 'ring/sprocket·(D/2)/crank',
    inputs: [
      ...teeth(ringTeeth, sprocketTeeth),
      given('D', wheelDiameterMm, 'mm'),
      given('crank', crankMm, 'mm'),
    ],
    source: 'definition; published gear tables agree',
    known: 'seen',
  };
}

/** Speed at a cadence. @example speedWorking(2, 50).unit //=> 'km/h' */
export function speedWorking(developmentMetres: number, cadence: number): Working {
  return {
    result: speedKmh(developmentMetres, cadence),
    unit: 'km/h',
    formula: 'development·cadence·60/1000',
    inputs: [given('development', developmentMetres, 'm'), given('cadence', cadence, '1/min')],
    source: 'definition; bicycle education page agrees',
    known: 'seen',
  };
}
