import type { Face } from '../../fit/faces/face.ts';
import { readingOf, traitOf } from '../../fit/faces/reading.ts';
import { faceAmong, type TyreParts } from '../../fit/tyreCeiling.ts';
import type { Band } from '../../mechanics/band.ts';
import { sealantDose } from '../../mechanics/tyres/tyreVolume.ts';

const mid = (face: Face | undefined, key: string) => face && readingOf(face, key)?.mid;

/**
 * How much sealant its size suggests, mL.
 * @param refill sealant is in already
 * @returns the band, or undefined where width or bead seat is not written down
 * Source: `mechanics/tyreVolume.ts`, fitted to published doses; our suggestion for other sizes.
 */
export function sealantHint(parts: TyreParts, refill: boolean): Band | undefined {
  const tyre = faceAmong(parts, 'tyre-bead');
  const widthMm = mid(tyre, 'widthMm');
  const beadSeatMm = mid(tyre, 'beadSeatMm') ?? mid(faceAmong(parts, 'rim-seat'), 'beadSeatMm');
  if (!tyre || widthMm === undefined || beadSeatMm === undefined) return undefined;
  const dose = sealantDose(widthMm, beadSeatMm, traitOf(tyre, 'tubeless') !== 'yes');
  return refill ? dose.topUpMl : dose.firstMl;
}
