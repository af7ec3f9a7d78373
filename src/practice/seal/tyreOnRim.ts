import type { Face } from '../../fit/faces/face.ts';
import { readingOf, traitOf } from '../../fit/faces/reading.ts';
import { faceAmong, type TyreParts } from '../../fit/tyreCeiling.ts';
import type { Band } from '../../mechanics/band.ts';
import { sealantDose, tyreVolumeL } from '../../mechanics/tyres/tyreVolume.ts';

const mid = (face: Face | undefined, key: string) => face && readingOf(face, key)?.mid;

/** Width and bead seat of the tyre, mm, where both are written down. */
function sizeOf(parts: TyreParts): { tyre: Face; widthMm: number; beadSeatMm: number } | undefined {
  const tyre = faceAmong(parts, 'tyre-bead');
  const widthMm = mid(tyre, 'widthMm');
  const beadSeatMm = mid(tyre, 'beadSeatMm') ?? mid(faceAmong(parts, 'rim-seat'), 'beadSeatMm');
  return tyre && widthMm !== undefined && beadSeatMm !== undefined
    ? { tyre, widthMm, beadSeatMm }
    : undefined;
}

/**
 * Air in the tyre, litres.
 * @returns undefined where width or bead seat is not written down
 * Source: `mechanics/tyreVolume.ts`.
 * @example tyreLitres([]) //=> undefined
 */
export function tyreLitres(parts: TyreParts): number | undefined {
  const size = sizeOf(parts);
  return size && tyreVolumeL(size.widthMm, size.beadSeatMm);
}

/**
 * How much sealant its size suggests, mL.
 * @param refill sealant is in already
 * @returns the band, or undefined where width or bead seat is not written down
 * Source: `mechanics/tyreVolume.ts`, fitted to published doses; our suggestion for other sizes.
 */
export function sealantHint(parts: TyreParts, refill: boolean): Band | undefined {
  const size = sizeOf(parts);
  if (!size) return undefined;
  const dose = sealantDose(size.widthMm, size.beadSeatMm, traitOf(size.tyre, 'tubeless') !== 'yes');
  return refill ? dose.topUpMl : dose.firstMl;
}
