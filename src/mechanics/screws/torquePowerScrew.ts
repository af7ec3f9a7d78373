import { notNegative, positive } from '../range.ts';
import { FLANK } from './torqueLongForm.ts';

/** A screw seen as an inclined plane wound on a cylinder. */
export interface PowerScrew {
  diameterMm: number;
  /** Mean thread diameter, mm. */
  meanDiameterMm: number;
  pitchMm: number;
  threadFriction: number;
  collarFriction: number;
}

/**
 * Nut factor without the small-angle step of the long form:
 * K = (dm/2d)·(tan λ + f·sec α)/(1 − f·tan λ·sec α) + 0.625·fc, with α = 30° and a collar of 1.25·d.
 * @throws RangeError when an argument is out of range, or the friction so high that the nut cannot be turned at all
 * Source: Mechanical Engineering Design, power-screw equation for bolts (from memory).
 * @example powerScrewNutFactor({ diameterMm: 19.05, meanDiameterMm: 18.0162, pitchMm: 1.5875, threadFriction: 0.15, collarFriction: 0.15 }) //=> 0.189…
 */
export function powerScrewNutFactor(screw: PowerScrew): number {
  const { diameterMm, meanDiameterMm, pitchMm, threadFriction, collarFriction } = screw;
  positive({ diameterMm, meanDiameterMm, pitchMm });
  notNegative({ threadFriction, collarFriction });
  const slope = pitchMm / (Math.PI * meanDiameterMm);
  const flankFriction = threadFriction * FLANK;
  const grip = 1 - flankFriction * slope;
  if (grip <= 0) throw new RangeError(`friction ${threadFriction} locks a thread of slope ${slope}`);
  return (meanDiameterMm / (2 * diameterMm)) * ((slope + flankFriction) / grip) + 0.625 * collarFriction;
}

/** Tightening torque by the power-screw form, N·m. @param preloadN N, > 0 @example powerScrewTorqueNm(5000, screw) //=> K · d · F */
export function powerScrewTorqueNm(preloadN: number, screw: PowerScrew): number {
  positive({ preloadN });
  return (powerScrewNutFactor(screw) * screw.diameterMm * preloadN) / 1000;
}
