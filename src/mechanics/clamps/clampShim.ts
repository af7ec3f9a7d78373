import type { Band } from '../band.ts';
import { positive } from '../range.ts';
import { slipTorqueNm } from './clampSlip.ts';

/** One place where two faces could slide on each other: bar in shim, shim in clamp. */
export interface ClampInterface {
  name: string;
  diameterMm: number;
  friction: number;
  /** Tension that still reaches this face when a closed ring outside it took its share; otherwise the whole. */
  tensionN?: number;
}

/** A joint through shims slips where it is weakest. */
export interface ShimChain {
  slipNm: Band;
  weakest: ClampInterface;
}

/**
 * Slip torque of a clamp with shims: a chain of faces under one tension, and the weakest decides.
 * @param interfaces from the tube outwards, at least one
 * @param tensionN ΣF of the clamp, N, ≥ 0
 * @throws RangeError when the chain is empty or an argument out of range
 * Source: statics; a bonded face is left out of the chain and looked at by itself.
 * @example shimChain([{ name: 'bar in shim', diameterMm: 22.2, friction: 0.2 }, { name: 'shim in clamp', diameterMm: 25.4, friction: 0.2 }], 20000).weakest.name //=> 'bar in shim'
 */
export function shimChain(interfaces: readonly ClampInterface[], tensionN: number): ShimChain {
  const links = interfaces.map((face) => ({
    weakest: face,
    slipNm: slipTorqueNm(Math.min(face.tensionN ?? tensionN, tensionN), face.friction, face.diameterMm),
  }));
  const [first, ...rest] = links;
  if (!first) throw new RangeError('a chain needs at least one interface');
  return rest.reduce((weakest, link) => (link.slipNm.lo < weakest.slipNm.lo ? link : weakest), first);
}

/** A ring that is not slit, about to be squeezed onto a tube. */
export interface ClosedRing {
  /** Young's modulus, MPa: aluminium 70 000, steel 205 000. */
  modulusMPa: number;
  wallMm: number;
  /** Radius of the middle of the wall, mm. */
  radiusMm: number;
  /** Air between ring and tube before tightening, on the radius, mm, ≥ 0. */
  radialGapMm: number;
}

/**
 * Torque a bonded shim holds by its bond alone, τ·π·d²·L/2.
 * @param shearMPa de-rated shear strength of the cured bond, MPa, > 0 (not the data sheet's best)
 * @returns N·m
 * Source: definition of shear on a cylinder.
 * @example bondedShimNm(10, 22.2, 45) //=> 348.4
 */
export function bondedShimNm(shearMPa: number, diameterMm: number, lengthMm: number): number {
  positive({ shearMPa, diameterMm, lengthMm });
  return (shearMPa * Math.PI * diameterMm ** 2 * lengthMm) / 2000;
}
