import { type Band, band, scaled } from '../band.ts';
import { positive } from '../range.ts';
import { given, type Working } from '../working.ts';

/**
 * Air in a tyre, litres: a ring of round section, V = (π²/4)·(D + W)·W². The rim well and its width make the
 * real figure differ by about a tenth.
 * @throws RangeError when a size is not positive
 * Source: volume of a torus.
 * @example tyreVolumeL(28, 622) //=> 1.257
 */
export function tyreVolumeL(widthMm: number, beadSeatMm: number): number {
  positive({ widthMm, beadSeatMm });
  return ((Math.PI ** 2 / 4) * (beadSeatMm + widthMm) * widthMm ** 2) / 1e6;
}

/** Inner surface of a tyre, m², S = π²·(D + W)·W. @example innerSurfaceM2(28, 622) //=> 0.1796 */
export function innerSurfaceM2(widthMm: number, beadSeatMm: number): number {
  positive({ widthMm, beadSeatMm });
  return (Math.PI ** 2 * (beadSeatMm + widthMm) * widthMm) / 1e6;
}

/** Sealant by inner surface, mL/m²: fitted to published doses from 23 to 60 mm, our suggestion of form. */
const DOSE_ML_PER_M2: Band = band(200, 280, 310);
/** A side wall not made for it drinks a quarter to a half more; from memory. */
const POROUS: Band = band(1.25, 1.375, 1.5);

export interface SealantDose {
  firstMl: Band;
  /** A top-up is about half of the first fill. */
  topUpMl: Band;
  working: Working;
}

/**
 * Sealant for a size no bottle lists.
 * @param porous the tyre is not marked tubeless
 * @throws RangeError when a size is not positive
 * @example sealantDose(28, 622, false).firstMl.mid //=> 50
 */
export function sealantDose(widthMm: number, beadSeatMm: number, porous: boolean): SealantDose {
  const surfaceM2 = innerSurfaceM2(widthMm, beadSeatMm);
  const plain = scaled(DOSE_ML_PER_M2, surfaceM2);
  const firstMl = porous ? band(plain.lo * POROUS.lo, plain.mid * POROUS.mid, plain.hi * POROUS.hi) : plain;
  return {
    firstMl,
    topUpMl: scaled(firstMl, 0.5),
    working: {
      result: firstMl,
      unit: 'mL',
      formula: porous
        ? 'dose per area · π²·(D + W)·W · share a porous wall drinks'
        : 'dose per area · π²·(D + W)·W',
      inputs: [
        given('dose per area', DOSE_ML_PER_M2, 'mL/m²'),
        given('width W', widthMm, 'mm'),
        given('bead seat D', beadSeatMm, 'mm'),
      ],
      source: 'fitted to published doses; our suggestion for other sizes',
      known: 'proposal',
    },
  };
}

/**
 * Depth of sealant standing on the tread band, mm.
 * @param bandMm width it spreads over, mm, > 0
 * @throws RangeError when a value is not positive
 * @example sealantFilmMm(50, 25, 622, 10) //=> 2.37
 */
export function sealantFilmMm(
  sealantMl: number,
  widthMm: number,
  beadSeatMm: number,
  bandMm: number,
): number {
  positive({ sealantMl, widthMm, beadSeatMm, bandMm });
  // The film lies on the inside of the tread: bead seat plus about twice the section, less the casing.
  const treadMm = beadSeatMm + 2 * widthMm;
  return (sealantMl * 1000) / (Math.PI * treadMm * bandMm);
}
