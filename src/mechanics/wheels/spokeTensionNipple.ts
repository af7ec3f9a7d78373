import { type Band, band } from '../band.ts';
import { inRange } from '../range.ts';
import { type SpokePiece, spokeStiffnessN } from './spokeLengthCorrections.ts';

/** 56 turns to the inch, the usual spoke thread, mm. Source: trade standard, from memory. */
export const NIPPLE_PITCH_MM = 25.4 / 56;

/**
 * Tension that one turn of a nipple would add if the rim did not give at all. The real gain is smaller: the rim
 * yields there and the neighbours go slack, so this is a ceiling, for choosing the size of a turn.
 * @param pieces the spoke; see `spokeStiffnessN`
 * @param pitchMm thread pitch, mm, 0.3 to 0.7
 * @returns N a turn
 * @throws RangeError when a figure is out of range
 * Source: Hooke's law over one pitch.
 * @example tensionPerTurnN([{ lengthMm: 290, diameterMm: 2 }]) //=> 948 (about)
 */
export function tensionPerTurnN(pieces: readonly SpokePiece[], pitchMm = NIPPLE_PITCH_MM): number {
  const lengthMm = pieces.reduce((sum, piece) => sum + piece.lengthMm, 0);
  return (spokeStiffnessN(pieces) * inRange('pitchMm', pitchMm, 0.3, 0.7)) / lengthMm;
}

/** Shear stiffness of spoke steel, GPa, and radius at which the thread rubs, mm. Source: estimates, from memory. */
const SHEAR_GPA = 75;
const THREAD_RADIUS_MM = 1.05;

/**
 * How far a spoke twists along with its nipple before it slips: overshoot by that and come back.
 * @param tensionN 0 to 3000 N
 * @param lengthMm spoke, mm, 50 to 400
 * @param diameterMm thinnest part, mm, 1 to 4
 * @param friction of the thread, oiled to dry
 * @returns band, degrees
 * @throws RangeError when a figure is out of range
 * Source: thread moment T·(P/2π + µ·r) on a round bar; an estimate, not measured.
 * @example windupDeg(1000, 290, 2).lo //=> 24.99…
 */
export function windupDeg(
  tensionN: number,
  lengthMm: number,
  diameterMm: number,
  friction: Band = band(0.1, 0.15, 0.2),
): Band {
  inRange('tensionN', tensionN, 0, 3000);
  inRange('lengthMm', lengthMm, 50, 400);
  const stiffness = SHEAR_GPA * 1000 * ((Math.PI * inRange('diameterMm', diameterMm, 1, 4) ** 4) / 32);
  const twist = (mu: number): number => {
    const momentNmm =
      tensionN * (NIPPLE_PITCH_MM / (2 * Math.PI) + inRange('friction', mu, 0, 1) * THREAD_RADIUS_MM);
    return (((momentNmm * lengthMm) / stiffness) * 180) / Math.PI;
  };
  return band(twist(friction.lo), twist(friction.mid), twist(friction.hi));
}
