import type { WheelSideAbout } from '../../journal/aboutWheels.ts';
import { convert } from '../../mechanics/units.ts';
import type { SpokePiece } from '../../mechanics/wheels/spokeLengthCorrections.ts';

/** The usual plain spoke, mm. Source: from memory. */
const USUAL_MM = 2;
/** Thick ends of a butted spoke at hub and rim, mm. Source: a measured spoke had 71 mm in all; the split is assumed. */
const ENDS_MM = [30, 41] as const;

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
  if (thickMm === undefined || thickMm === middle) return [{ lengthMm, diameterMm: middle }];
  const [hubEnd, rimEnd] = ENDS_MM;
  return [
    { lengthMm: hubEnd, diameterMm: thickMm },
    { lengthMm: lengthMm - hubEnd - rimEnd, diameterMm: middle },
    { lengthMm: rimEnd, diameterMm: thickMm },
  ];
}
