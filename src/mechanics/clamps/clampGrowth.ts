import { positive } from '../range.ts';

/** What a larger clamp diameter changes at the same bolts, as fractions (0.144 is +14.4 %). */
export interface ClampGrowth {
  slipTorque: number;
  area: number;
  pressure: number;
  normalForce: 0;
}

/**
 * What changes when tube and clamp both get thicker at unchanged bolt force.
 * @param fromMm old diameter, > 0
 * @param toMm new diameter, > 0
 * @throws RangeError when a diameter is not positive
 * Source: geometry; slip torque and area go with d, pressure with 1/d, the force between the faces not at all.
 * @example clampGrowth(22.2, 25.4).slipTorque //=> 0.144…
 */
export function clampGrowth(fromMm: number, toMm: number): ClampGrowth {
  positive({ fromMm, toMm });
  const growth = toMm / fromMm - 1;
  return { slipTorque: growth, area: growth, pressure: fromMm / toMm - 1, normalForce: 0 };
}

/** Where a shim that fills a larger clamp gains, and where it does not. */
export interface ShimGrowth {
  atTube: 0;
  atClamp: number;
  joint: number;
  helps: 'nowhere-the-tube-still-slips-first' | 'everywhere-the-tube-is-bonded';
}

/**
 * The gain from shimming a thin tube up to a larger clamp, against a clamp of the tube's own size and equal friction.
 * A loose shim leaves the tube gripped at its old diameter, so the joint gains nothing; only when the shim is bonded
 * to the tube does the larger outer face decide.
 * @param tubeMm tube, mm, > 0
 * @param clampMm clamp, mm, ≥ tube
 * @param bonded the shim is bonded to the tube and cured
 * @throws RangeError when the clamp is smaller than the tube
 * @example shimGrowth(22.2, 25.4, false).joint //=> 0
 */
export function shimGrowth(tubeMm: number, clampMm: number, bonded: boolean): ShimGrowth {
  positive({ tubeMm, clampMm });
  if (clampMm < tubeMm) throw new RangeError(`clamp ${clampMm} is smaller than tube ${tubeMm}`);
  const atClamp = clampGrowth(tubeMm, clampMm).slipTorque;
  return {
    atTube: 0,
    atClamp,
    joint: bonded ? atClamp : 0,
    helps: bonded ? 'everywhere-the-tube-is-bonded' : 'nowhere-the-tube-still-slips-first',
  };
}
