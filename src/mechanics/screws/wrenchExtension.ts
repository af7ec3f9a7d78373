import { finite, notNegative, positive } from '../range.ts';

/** A torque wrench with something between its drive and the screw. */
export interface ExtendedWrench {
  /** Middle of the square drive to the middle of the hand, mm. */
  wrenchMm: number;
  /** Middle of the square drive to the middle of the screw, mm, ≥ 0. */
  extensionMm: number;
  /** Between extension and handle line: 0 straight out, 90 across, 180 folded back over the handle. */
  angleDeg: number;
}

/** Torque at the screw for each unit set: (L + E·cos θ)/L. */
function gain({ wrenchMm, extensionMm, angleDeg }: ExtendedWrench): number {
  positive({ wrenchMm });
  notNegative({ extensionMm });
  finite({ angleDeg });
  const factor = (wrenchMm + extensionMm * Math.cos((angleDeg * Math.PI) / 180)) / wrenchMm;
  // At or behind the hand the wrench turns the screw the other way, or not at all.
  if (factor <= 1e-9)
    throw new RangeError(`extension ${extensionMm} at ${angleDeg}° reaches back to the hand`);
  return factor;
}

/**
 * What to set on the wrench so that the screw gets the torque wanted, S = T·L/(L + E·cos θ).
 * Only holds with the hand on the grip's mark. A plain socket extension in line with the drive axis needs no correction.
 * @param wantedNm at the screw, N·m, > 0
 * @returns setting, N·m
 * @throws RangeError when an argument is out of range or the screw lies at or behind the hand
 * Source: aircraft and US Army maintenance manuals.
 * @example wrenchSettingNm(10, { wrenchMm: 100, extensionMm: 15, angleDeg: 45 }) //=> 9.041…
 */
export function wrenchSettingNm(wantedNm: number, wrench: ExtendedWrench): number {
  positive({ wantedNm });
  return wantedNm / gain(wrench);
}

/**
 * What the screw gets at a setting, T = S·(L + E·cos θ)/L.
 * @param settingNm as set or read, N·m, > 0
 * @example torqueAtScrewNm(60, { wrenchMm: 12, extensionMm: 2, angleDeg: 0 }) //=> 70
 */
export function torqueAtScrewNm(settingNm: number, wrench: ExtendedWrench): number {
  positive({ settingNm });
  return settingNm * gain(wrench);
}
