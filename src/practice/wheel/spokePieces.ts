import type { WheelSideAbout } from '../../journal/aboutWheels.ts';
import { convert } from '../../mechanics/units.ts';
import { buttedPieces } from '../../mechanics/wheels/spokeCrossing.ts';
import type { SpokePiece } from '../../mechanics/wheels/spokeLengthCorrections.ts';

/** The usual plain spoke, mm. Source: from memory. */
const USUAL_MM = 2;
/**
 * A spoke of one side as pieces from the hub to the nipple: one where it is plain, three where it is butted.
 * @param side its thickness, as far as it is known; 2 mm where it is not
 * @param lengthMm 80 to 400
 * @example spokePieces({ spokes: 18, crosses: 3 }, 184) //=> [{ lengthMm: 184, diameterMm: 2 }]
 */
export function spokePieces({ thin, thick }: WheelSideAbout, lengthMm: number): SpokePiece[] {
  const thinMm = thin && convert(thin.value, thin.unit, 'mm');
  const thickMm = thick && convert(thick.value, thick.unit, 'mm');
  const middle = thinMm ?? thickMm ?? USUAL_MM;
  return buttedPieces(lengthMm, middle, thickMm ?? middle);
}
