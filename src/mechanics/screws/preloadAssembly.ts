import { notNegative, positive } from '../range.ts';
import { pitchDiameterMm, rootDiameterMm, type ThreadSize } from './threadGeometry.ts';
import { FLANK, type FrictionJoint, torqueLongForm } from './torqueLongForm.ts';

/**
 * Highest preload a screw takes while the wrench still twists it:
 * F = A0·ν·Rp / √(1 + 3·[1.5·(d2/d0)·(P/(π·d2) + 1.155·µt)]²), d0 = (d2 + d3)/2.
 * @param yieldMPa yield strength, MPa, > 0
 * @param threadFriction ≥ 0; the drier the thread, the less is left for the preload
 * @param utilisation share of the yield strength used, 0 < ν ≤ 1, usually 0.9
 * @returns preload, N
 * @throws RangeError when an argument is out of range
 * Source: VDI 2230 assembly preload with torsion.
 * @example assemblyPreloadN({ diameterMm: 12, pitchMm: 1.75, form: 'iso' }, 640, 0.14, 0.9) //=> 41 980 (about)
 */
export function assemblyPreloadN(
  thread: ThreadSize,
  yieldMPa: number,
  threadFriction: number,
  utilisation = 0.9,
): number {
  positive({ yieldMPa, utilisation });
  notNegative({ threadFriction });
  if (utilisation > 1) throw new RangeError(`utilisation must not exceed 1: ${utilisation}`);
  const pitchDiameter = pitchDiameterMm(thread);
  const coreMm = (pitchDiameter + rootDiameterMm(thread)) / 2;
  const coreMm2 = (Math.PI / 4) * coreMm ** 2;
  const climb = thread.pitchMm / (Math.PI * pitchDiameter) + FLANK * threadFriction;
  const twist = 1.5 * (pitchDiameter / coreMm) * climb;
  return (coreMm2 * utilisation * yieldMPa) / Math.sqrt(1 + 3 * twist ** 2);
}

/**
 * The torque that raises that preload: the most a screw itself stands, never a target for the part it holds.
 * @returns N·m
 * @example assemblyTorqueNm({ thread: m6, threadFriction: 0.12, bearingFriction: 0.12, bearingDiameterMm: 8.3 }, 640) //=> 10.2 (about)
 */
export function assemblyTorqueNm(joint: FrictionJoint, yieldMPa: number, utilisation = 0.9): number {
  const preloadN = assemblyPreloadN(joint.thread, yieldMPa, joint.threadFriction, utilisation);
  return torqueLongForm(preloadN, joint).totalNm;
}
