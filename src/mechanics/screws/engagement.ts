import { notNegative, positive } from '../range.ts';
import { minorDiameterMm, pitchDiameterMm, stressAreaMm2, type ThreadSize } from './threadGeometry.ts';

/** Strength of the two threads, MPa tensile. */
export interface ThreadStrengths {
  screwMPa: number;
  femaleMPa: number;
}

/** Shear area of each thread for one millimetre of engagement, mm²: the screw is cut at D1, the female thread at d. */
function shearAreasMm2(thread: ThreadSize): { screwMm2: number; femaleMm2: number } {
  return {
    screwMm2: Math.PI * minorDiameterMm(thread) * 0.75,
    femaleMm2: Math.PI * thread.diameterMm * 0.875,
  };
}

/**
 * How much weaker the female thread is per turn: J = (A_screw·R_screw)/(A_female·R_female); up to 1 the screw decides.
 * Source: FED-STD-H28/2B (structure of the comparison; areas of the basic profile, computed).
 * @example strippingFactor({ diameterMm: 5, pitchMm: 0.8, form: 'iso' }, { screwMPa: 800, femaleMPa: 250 }) //=> 2.26…
 */
export function strippingFactor(thread: ThreadSize, { screwMPa, femaleMPa }: ThreadStrengths): number {
  positive({ screwMPa, femaleMPa });
  const { screwMm2, femaleMm2 } = shearAreasMm2(thread);
  return (screwMm2 * screwMPa) / (femaleMm2 * femaleMPa);
}

/**
 * Engagement at which the screw breaks before either thread strips: Le = 2·At/(0.5·π·d2), times J when the female
 * thread is the weaker.
 * @returns mm of full thread; end chamfers come on top
 * @throws RangeError when an argument is out of range
 * Source: FED-STD-H28/2B as worked on a thread-engagement page (0.1 in², 0.5 in, 10 threads per inch: 0.2927 in).
 * @example engagementForFullStrengthMm({ diameterMm: 5, pitchMm: 0.8, form: 'iso' }) //=> 4.03…
 */
export function engagementForFullStrengthMm(thread: ThreadSize, strengths?: ThreadStrengths): number {
  const equalMm = engagementForAreaMm(stressAreaMm2(thread), pitchDiameterMm(thread));
  return equalMm * (strengths ? Math.max(1, strippingFactor(thread, strengths)) : 1);
}

/** The same from a stress area and a pitch diameter already at hand. @example engagementForAreaMm(64.516, 11.05…) //=> 7.43… */
export function engagementForAreaMm(areaMm2: number, pitchDiameter: number): number {
  positive({ areaMm2, pitchDiameter });
  return (2 * areaMm2) / (0.5 * Math.PI * pitchDiameter);
}

/**
 * Tension that strips the female thread, N.
 * @param engagedMm full thread in engagement, mm, > 0
 * @param femaleMPa tensile strength of the female material; its shear strength is taken as 0.577 of that
 * Source: shear on the female thread cylinder, basic profile (computed); 0.577 is the von Mises ratio.
 * @example strippingLoadN({ diameterMm: 5, pitchMm: 0.8, form: 'iso' }, 8, 250) //=> 15 861 (about)
 */
export function strippingLoadN(thread: ThreadSize, engagedMm: number, femaleMPa: number): number {
  positive({ engagedMm, femaleMPa });
  return shearAreasMm2(thread).femaleMm2 * engagedMm * 0.577 * femaleMPa;
}

export type EngagementVerdict = 'enough' | 'short' | 'too-short';

/**
 * Engagement against the rule of the shop for the female material.
 * @param engagedMm mm, ≥ 0
 * @param diameterMm nominal diameter, mm, > 0
 * @param ruleDiameters multiple of the diameter asked for by the material's row
 * @returns `short` down to two thirds of the rule, `too-short` below
 * @throws RangeError when an argument is out of range
 * @example engagementVerdict(8, 5, 2) //=> 'short'
 */
export function engagementVerdict(
  engagedMm: number,
  diameterMm: number,
  ruleDiameters: number,
): EngagementVerdict {
  positive({ diameterMm, ruleDiameters });
  notNegative({ engagedMm });
  const share = engagedMm / (diameterMm * ruleDiameters);
  if (share >= 1) return 'enough';
  return share >= 2 / 3 ? 'short' : 'too-short';
}
