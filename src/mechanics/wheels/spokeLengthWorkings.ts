import { given, type Working } from '../working.ts';
import { bracingAngleDeg } from './bracing.ts';
import { spokeLengthMm, spokeSpanMm, type WheelSide } from './spokeLength.ts';

// Each function runs one computation and writes down, beside the result, what a person needs to do it again by hand.

/** An ordinary spoke. @example spokeLengthWorking({ erdMm: 384, pcdMm: 45, flangeMm: 34 }, 60).unit //=> 'mm' */
export function spokeLengthWorking(side: WheelSide, crossingDeg: number): Working {
  return {
    result: spokeLengthMm(side, crossingDeg),
    unit: 'mm',
    formula: 'L = √(R² + r² + w² − 2·R·r·cos α) − h/2',
    inputs: [
      given('R', side.erdMm / 2, 'mm'),
      given('r', side.pcdMm / 2, 'mm'),
      given('w', side.flangeMm, 'mm'),
      given('α', crossingDeg, '°'),
      given('h', 2 * (spokeSpanMm(side, crossingDeg) - spokeLengthMm(side, crossingDeg)), 'mm'),
    ],
    source: 'wheelbuilding notes with worked examples',
    known: 'seen',
  };
}

/** Lean of the spokes. @example bracingWorking({ erdMm: 384, pcdMm: 45, flangeMm: 34 }, 60).unit //=> '°' */
export function bracingWorking(side: WheelSide, crossingDeg: number): Working {
  return {
    result: bracingAngleDeg(side, crossingDeg),
    unit: '°',
    formula: 'β = arcsin(w/Lp)',
    inputs: [given('w', side.flangeMm, 'mm'), given('Lp', spokeSpanMm(side, crossingDeg), 'mm')],
    source: 'right triangle',
    known: 'exact',
  };
}
