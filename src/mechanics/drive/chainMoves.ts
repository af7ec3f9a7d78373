import type { ChainDrive } from './chainDrive.ts';
import { axleFromPitches, longestPitches, shortestPitches } from './chainLength.ts';
import { TEETH } from './pitchDiameter.ts';

/** Axle travel of each change a mechanic may make, mm, positive to the back; null where the change cannot be made. */
export interface AxleMoves {
  ringToothMore: number | null;
  ringToothLess: number | null;
  sprocketToothMore: number | null;
  sprocketToothLess: number | null;
  /** one pitch more: a half-link put in */
  halfLinkMore: number | null;
  halfLinkLess: number | null;
  /** two pitches more: an inner and an outer link, what an ordinary chain is lengthened by */
  linkPairMore: number | null;
  linkPairLess: number | null;
}

/** Taut position, or null when such a drive or chain does not exist. */
function axleOrNull(drive: ChainDrive, pitches: number): number | null {
  const known = [drive.ringTeeth, drive.sprocketTeeth].every((n) => n >= TEETH.fewest && n <= TEETH.most);
  if (!known || pitches < shortestPitches(drive) || pitches > longestPitches(drive)) return null;
  return axleFromPitches(drive, pitches);
}

/**
 * How far one tooth, one half-link or one pair of links moves the taut axle, everything else left alone.
 * @param drive 6 to 120 teeth each
 * @param pitches chain length, pitches
 * @throws RangeError when the drive and the chain to start from do not fit together
 * Source: differences of `axleFromPitches`. Rules of thumb (half an inch per pair, an eighth per tooth) come near.
 * @example axleMoves({ ringTeeth: 36, sprocketTeeth: 15 }, 86).linkPairMore //=> 12.77…
 */
export function axleMoves(drive: ChainDrive, pitches: number): AxleMoves {
  const nowMm = axleFromPitches(drive, pitches);
  const move = (ring: number, sprocket: number, links: number): number | null => {
    const changed = {
      ...drive,
      ringTeeth: drive.ringTeeth + ring,
      sprocketTeeth: drive.sprocketTeeth + sprocket,
    };
    const thenMm = axleOrNull(changed, pitches + links);
    return thenMm === null ? null : thenMm - nowMm;
  };
  return {
    ringToothMore: move(1, 0, 0),
    ringToothLess: move(-1, 0, 0),
    sprocketToothMore: move(0, 1, 0),
    sprocketToothLess: move(0, -1, 0),
    halfLinkMore: move(0, 0, 1),
    halfLinkLess: move(0, 0, -1),
    linkPairMore: move(0, 0, 2),
    linkPairLess: move(0, 0, -2),
  };
}
