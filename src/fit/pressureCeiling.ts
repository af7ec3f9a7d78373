import { positive } from '../mechanics/range.ts';

/** What limits the pressure of one wheel. Figures as printed, bar; null where nothing is printed. */
export interface CeilingInputs {
  tyreMaxBar: number | null;
  rimMaxBar: number | null;
  straightWalls: boolean;
  /** Run with sealant, in a tyre that is not marked tubeless. */
  unmarkedTubeless: boolean;
}

export interface Ceiling {
  bar: number;
  by: 'tyre' | 'rim' | 'straight-walls' | 'unmarked-tubeless';
}

/** Road limit of straight walls: ISO 5775-1 as quoted on a tyre maker's page, 5 bar even if the tyre is marked higher. */
export const STRAIGHT_WALL_BAR = 5;
/** 40 psi as a workshop page gives it, rounded down: a ceiling never rounds up. */
export const UNMARKED_TUBELESS_BAR = 2.75;

/**
 * The lowest of all limits of a tyre on its rim.
 * @returns the ceiling and what sets it, or null when nothing limits it that anybody knows
 * @throws RangeError when a printed pressure is not positive and finite
 * Source: lowest maximum wins: a tyre maker's page on straight-wall rims; 40 psi: workshop page on conversions.
 * @example pressureCeiling({ tyreMaxBar: 4.5, rimMaxBar: 3.8, straightWalls: false, unmarkedTubeless: false }) //=> { bar: 3.8, by: 'rim' }
 */
export function pressureCeiling(inputs: CeilingInputs): Ceiling | null {
  const { tyreMaxBar, rimMaxBar, straightWalls, unmarkedTubeless } = inputs;
  const limits: Ceiling[] = [];
  if (tyreMaxBar !== null) limits.push({ bar: tyreMaxBar, by: 'tyre' });
  if (rimMaxBar !== null) limits.push({ bar: rimMaxBar, by: 'rim' });
  for (const { bar, by } of limits) positive({ [`${by}MaxBar`]: bar });
  if (straightWalls) limits.push({ bar: STRAIGHT_WALL_BAR, by: 'straight-walls' });
  if (unmarkedTubeless) limits.push({ bar: UNMARKED_TUBELESS_BAR, by: 'unmarked-tubeless' });
  return limits.reduce<Ceiling | null>((low, limit) => (low && low.bar <= limit.bar ? low : limit), null);
}
