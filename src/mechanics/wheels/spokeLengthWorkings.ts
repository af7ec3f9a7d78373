import { given, type Working } from '../working.ts';
import { bracingAngleDeg, type LacedSide, tensionRatio } from './bracing.ts';
import { spokeLengthMm, spokeSpanMm, type WheelSide } from './spokeLength.ts';
import {
  type RimRing,
  rimShrinkMm,
  type SpokePiece,
  spokeStiffnessN,
  spokeStretchMm,
} from './spokeLengthCorrections.ts';
import { type StraightPullSide, straightPullLengthMm } from './spokeLengthStraightPull.ts';

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

/** A spoke without elbow. @example straightPullWorking(side).unit //=> 'mm' */
export function straightPullWorking(side: StraightPullSide): Working {
  return {
    result: straightPullLengthMm(side),
    unit: 'mm',
    formula: `L = √((√(R² − p²) ${side.head === 'rim-side' ? '−' : '+'} √(rs² − p²))² + w²)`,
    inputs: [
      given('R', side.erdMm / 2, 'mm'),
      given('rs', side.headCircleMm / 2, 'mm'),
      given('p', side.lineOffsetMm, 'mm'),
      given('w', side.flangeMm, 'mm'),
    ],
    source: 'right triangles on the spoke’s line, derived here',
    known: 'computed',
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

/** Left over drive-side tension. @example tensionRatioWorking(left, drive).unit //=> '' */
export function tensionRatioWorking(left: LacedSide, drive: LacedSide): Working {
  return {
    result: tensionRatio(left, drive),
    unit: '',
    formula: 'T left/T drive = (n drive·w drive/Lp drive) / (n left·w left/Lp left)',
    inputs: (
      [
        ['left', left],
        ['drive', drive],
      ] as const
    ).flatMap(([name, side]) => [
      given(`n ${name}`, side.spokes, ''),
      given(`w ${name}`, side.flangeMm, 'mm'),
      given(`Lp ${name}`, spokeSpanMm(side, side.crossingDeg), 'mm'),
    ]),
    source: 'zero net side force on the rim; dissertation on bicycle wheels',
    known: 'seen',
  };
}

/** Stretch under tension. @example stretchWorking(1000, [{ lengthMm: 184, diameterMm: 2 }]).unit //=> 'mm' */
export function stretchWorking(tensionN: number, pieces: readonly SpokePiece[]): Working {
  return {
    result: spokeStretchMm(tensionN, pieces),
    unit: 'mm',
    formula: 'ΔL = T·L/(E·A)',
    inputs: [
      given('T', tensionN, 'N'),
      given(
        'L',
        pieces.reduce((sum, piece) => sum + piece.lengthMm, 0),
        'mm',
      ),
      given('E·A', spokeStiffnessN(pieces), 'N'),
    ],
    source: 'Hooke’s law; E from material sheets',
    known: 'seen',
  };
}

/** Shrinking of the rim. @example rimShrinkWorking(36, 1000, { radiusMm: 304, areaMm2: 104, rimGPa: 69 }).unit //=> 'mm' */
export function rimShrinkWorking(spokes: number, tensionN: number, rim: Required<RimRing>): Working {
  return {
    result: rimShrinkMm(spokes, tensionN, rim),
    unit: 'mm',
    formula: 'v = R·N·T/(2π·E·A)',
    inputs: [
      given('R', rim.radiusMm, 'mm'),
      given('N', spokes, ''),
      given('T', tensionN, 'N'),
      given('E', rim.rimGPa, 'GPa'),
      given('A', rim.areaMm2, 'mm²'),
    ],
    source: 'thin ring; dissertation on bicycle wheels',
    known: 'seen',
  };
}
