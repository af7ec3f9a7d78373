import { type Band, band } from '../band.ts';
import { notNegative, positive } from '../range.ts';

/** Each end of the tape goes this far past the valve hole, mm. Assembly article: 10 to 15 cm. */
const OVERLAP_MM = 125;

/**
 * Width of rim tape, mm: onto the walls of the channel, not over the bead seats.
 * Source: assembly article, inner width + 2 to 5 mm; another guide takes it a little narrower than the channel.
 * @throws RangeError when the width is not positive
 * @example tapeWidthMm(23) //=> { lo: 25, mid: 26.5, hi: 28 }
 */
export function tapeWidthMm(rimInnerMm: number): Band {
  positive({ rimInnerMm });
  return band(rimInnerMm + 2, rimInnerMm + 3.5, rimInnerMm + 5);
}

/**
 * Width of a channel along its own profile, mm: why tape as wide as the opening is too narrow.
 * @param innerMm inner width, mm, > 0
 * @param flankMm run of one flank, mm, ≥ 0, both within the width
 * @param depthMm depth of the channel, mm, ≥ 0
 * @throws RangeError when a value is out of range
 * @example channelWidthMm(25, 4, 4) //=> 28.3
 */
export function channelWidthMm(innerMm: number, flankMm: number, depthMm: number): number {
  positive({ innerMm });
  notNegative({ flankMm, depthMm });
  if (2 * flankMm > innerMm) throw new RangeError(`flanks of ${flankMm} do not fit in ${innerMm}`);
  return innerMm + 2 * (Math.hypot(flankMm, depthMm) - flankMm);
}

/**
 * Length of tape to cut, m: every turn once round the bead seat, and both ends past the valve hole.
 * @param turns whole turns, ≥ 1
 * @throws RangeError when a value is out of range
 * @example tapeLengthM(2, 622) //=> 4.16
 */
export function tapeLengthM(turns: number, beadSeatMm: number): number {
  positive({ beadSeatMm });
  if (!Number.isInteger(turns) || turns < 1) throw new RangeError(`not a number of turns: ${turns}`);
  return (turns * Math.PI * beadSeatMm + 2 * OVERLAP_MM) / 1000;
}
