import { notNegative, positive } from '../range.ts';

/**
 * How much one part must be heated, or the other cooled, to slide together: ΔT = (δ + clearance) / (α·d).
 * @param interferenceMm diametral, mm, ≥ 0
 * @param clearanceMm play wanted while sliding, mm, ≥ 0
 * @param expansionPerK coefficient of linear expansion, 1/K, > 0
 * @param interfaceMm diameter where they meet, mm, > 0
 * @returns temperature difference, K
 * @throws RangeError when a value is out of range
 * Source: definition of linear expansion.
 * @example slideTogetherK(0.03, 0.03, 23e-6, 37) //=> 70.5…
 */
export function slideTogetherK(
  interferenceMm: number,
  clearanceMm: number,
  expansionPerK: number,
  interfaceMm: number,
): number {
  notNegative({ interferenceMm, clearanceMm });
  positive({ expansionPerK, interfaceMm });
  return (interferenceMm + clearanceMm) / (expansionPerK * interfaceMm);
}
