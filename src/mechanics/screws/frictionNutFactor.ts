import { positive } from '../range.ts';
import { pitchDiameterMm, type ThreadSize } from './threadGeometry.ts';
import { FLANK, type FrictionJoint, torqueLongForm } from './torqueLongForm.ts';

/**
 * The nut factor that belongs to a pair of frictions: K = [P/2π + 0.577·d2·µt + 0.5·Dkm·µb] / d.
 * @throws RangeError when an argument is out of range
 * @example nutFactorFromFriction({ thread: m5, threadFriction: 0.15, bearingFriction: 0.15, bearingDiameterMm: 7 }) //=> 0.208…
 */
export function nutFactorFromFriction(joint: FrictionJoint): number {
  return torqueLongForm(1000, joint).totalNm / joint.thread.diameterMm;
}

/**
 * The friction, taken equal in thread and under the head, that belongs to a nut factor.
 * @param nutFactor K; below the pitch part alone (about 0.025) there is no such friction
 * @returns friction coefficient, ≥ 0
 * @throws RangeError when K is smaller than a frictionless screw would have
 * @example frictionFromNutFactor(0.2, m5, 7) //=> 0.144 (about)
 */
export function frictionFromNutFactor(
  nutFactor: number,
  thread: ThreadSize,
  bearingDiameterMm: number,
): number {
  positive({ nutFactor, bearingDiameterMm });
  const frictionMm = nutFactor * thread.diameterMm - thread.pitchMm / (2 * Math.PI);
  if (frictionMm < 0) throw new RangeError(`nut factor ${nutFactor} is less than a frictionless screw has`);
  return frictionMm / ((FLANK * pitchDiameterMm(thread)) / 2 + bearingDiameterMm / 2);
}

/**
 * Rule of the thumb between the two for M5 to M10 coarse socket screws: K ≈ 0.025 + 1.19·µ, within 2 % for µ 0.08 to 0.20.
 * Source: our own fit to the long form.
 * @example estimatedNutFactor(0.15) //=> 0.2035
 */
export function estimatedNutFactor(friction: number): number {
  positive({ friction });
  return 0.025 + 1.19 * friction;
}
