import { notNegative, positive } from '../range.ts';
import { pitchDiameterMm, type ThreadSize } from './threadGeometry.ts';

/** What resists the wrench: the thread, and the face under the head. */
export interface FrictionJoint {
  thread: ThreadSize;
  threadFriction: number;
  bearingFriction: number;
  /** Mean diameter of the ring under the head, mm. */
  bearingDiameterMm: number;
}

/** Where a tightening torque goes. Only the pitch part stretches the screw. */
export interface TorqueParts {
  pitchNm: number;
  threadNm: number;
  bearingNm: number;
  totalNm: number;
}

/** 1 / cos 30°: a 60° thread presses on its flank, not along its axis. */
export const FLANK = 2 / Math.sqrt(3);

/**
 * Mean diameter of the ring a head bears on, mm.
 * @param headMm outer diameter of the bearing face
 * @param holeMm clearance hole, smaller than the head
 * @throws RangeError when the hole is not smaller than the head
 * @example meanBearingDiameterMm(8.5, 5.5) //=> 7
 */
export function meanBearingDiameterMm(headMm: number, holeMm: number): number {
  positive({ headMm, holeMm });
  if (holeMm >= headMm) throw new RangeError(`hole ${holeMm} is not smaller than head ${headMm}`);
  return (headMm + holeMm) / 2;
}

/** The three lengths, mm, by which a preload resists being raised. */
function arms({ thread, threadFriction, bearingFriction, bearingDiameterMm }: FrictionJoint) {
  positive({ bearingDiameterMm });
  notNegative({ threadFriction, bearingFriction });
  return {
    pitchMm: thread.pitchMm / (2 * Math.PI),
    threadMm: (threadFriction * FLANK * pitchDiameterMm(thread)) / 2,
    bearingMm: (bearingFriction * bearingDiameterMm) / 2,
  };
}

/**
 * Tightening torque from friction, T = F·[P/2π + µt·d2/(2·cos 30°) + µb·Dkm/2].
 * @param preloadN N, > 0
 * @throws RangeError when an argument is out of range
 * Source: VDI 2230 equation form.
 * @example torqueLongForm(5000, { thread: m5, threadFriction: 0.14, bearingFriction: 0.14, bearingDiameterMm: 7 }).totalNm //=> 4.897…
 */
export function torqueLongForm(preloadN: number, joint: FrictionJoint): TorqueParts {
  positive({ preloadN });
  const { pitchMm, threadMm, bearingMm } = arms(joint);
  const nm = (mm: number) => (preloadN * mm) / 1000;
  return {
    pitchNm: nm(pitchMm),
    threadNm: nm(threadMm),
    bearingNm: nm(bearingMm),
    totalNm: nm(pitchMm + threadMm + bearingMm),
  };
}

/**
 * Torque that starts a joint loosening while it still holds its preload. The pitch now helps, so it is less than the
 * tightening torque; negative means the thread would unwind by itself.
 * @example looseningTorqueNm(5000, { thread: m5, threadFriction: 0.14, bearingFriction: 0.14, bearingDiameterMm: 7 }) //=> 3.624…
 */
export function looseningTorqueNm(preloadN: number, joint: FrictionJoint): number {
  const { pitchNm, threadNm, bearingNm } = torqueLongForm(preloadN, joint);
  return threadNm + bearingNm - pitchNm;
}

/**
 * Loosening over tightening torque of a sound joint: what a re-check in the loosening direction should read.
 * @returns fraction, below 1
 * @example looseningRatio({ thread: m5, threadFriction: 0.14, bearingFriction: 0.14, bearingDiameterMm: 7 }) //=> 0.74
 */
export function looseningRatio(joint: FrictionJoint): number {
  return looseningTorqueNm(1000, joint) / torqueLongForm(1000, joint).totalNm;
}
