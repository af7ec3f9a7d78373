import { type Band, band, scaled } from '../band.ts';
import { positive } from '../range.ts';

/** Gap, surface and temperature leave this share of the data-sheet shear strength; from memory. */
export const BOND_SHARE: Band = band(0.3, 0.4, 0.5);

/** Area of a cylindrical bond, mm². @example bondAreaMm2(12.7, 11.1) //=> 442.9 */
export function bondAreaMm2(diameterMm: number, lengthMm: number): number {
  positive({ diameterMm, lengthMm });
  return Math.PI * diameterMm * lengthMm;
}

/**
 * What a bonded slip fit holds when pushed, N.
 * @param shearMpa shear strength of the compound on pin and collar (ISO 10123), MPa, > 0
 * @returns band after the usual losses
 * @throws RangeError when a value is not positive
 * @example bondedForceN(25, 37, 8).mid //=> 9299
 */
export function bondedForceN(shearMpa: number, diameterMm: number, lengthMm: number): Band {
  positive({ shearMpa });
  return scaled(BOND_SHARE, shearMpa * bondAreaMm2(diameterMm, lengthMm));
}

/** What a bonded slip fit holds when turned, N·m. @example bondedTorqueNm(25, 37, 8).mid //=> 172 */
export function bondedTorqueNm(shearMpa: number, diameterMm: number, lengthMm: number): Band {
  return scaled(bondedForceN(shearMpa, diameterMm, lengthMm), diameterMm / 2000);
}
