import type { WheelAbout } from '../../journal/aboutWheels.ts';
import type { Band } from '../../mechanics/band.ts';
import { windupDeg } from '../../mechanics/wheels/spokeTensionNipple.ts';
import { spokePieces } from './spokePieces.ts';
import { sideAbout } from './wheelFigures.ts';
import type { WheelResult } from './wheelResult.ts';

/**
 * How far the spokes of the tighter side twist along with their nipples, degrees: overshoot by that and come back.
 * @param wheel the thickness of its spokes
 * @param result of the same wheel, with the tension its tighter side is to have
 * @returns undefined where the flanges hold no rim
 * @example tighterWindup(wheel, result)?.lo //=> about 16, on a 20 inch wheel of plain spokes at 1000 N
 */
export function tighterWindup(
  wheel: Pick<WheelAbout, 'leftSide' | 'driveSide'>,
  { tensions, sides }: WheelResult,
): Band | undefined {
  if (!tensions.ok) return undefined;
  const side = tensions.tighter === 'left' ? 'left' : 'drive';
  const lengthMm = sides[side].lengths[0]?.exactMm ?? 0;
  const thinnest = Math.min(
    ...spokePieces(sideAbout(wheel, side), lengthMm).map(({ diameterMm }) => diameterMm),
  );
  return windupDeg(Math.max(tensions.leftN, tensions.driveN), lengthMm, thinnest);
}
