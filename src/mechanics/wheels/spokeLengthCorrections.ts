import { inRange } from '../range.ts';

/** A stretch of spoke of one thickness; plain spokes are one piece, butted ones three. */
export interface SpokePiece {
  lengthMm: number;
  diameterMm: number;
}

/** Stiffness of drawn stainless spoke wire, GPa; material sheets print 187.5 to 200. */
const SPOKE_GPA = 193;
/** Stiffness of aluminium rims, GPa, as wheel research takes it. */
const ALUMINIUM_GPA = 69;

/**
 * Pull per unit of stretch of a whole spoke, E·A: pieces in a row give way one after the other.
 * @param pieces at least one; each up to 400 mm long and 1 to 4 mm thick
 * @param spokeGPa stiffness of the wire, GPa, 50 to 250
 * @returns N
 * @throws RangeError when a figure is out of range
 * Source: springs in series, as in a dissertation on bicycle wheels that measured such spokes.
 * @example spokeStiffnessN([{ lengthMm: 205, diameterMm: 1.72 }, { lengthMm: 71, diameterMm: 1.99 }], 210) //=> 521 900 (about)
 */
export function spokeStiffnessN(pieces: readonly SpokePiece[], spokeGPa = SPOKE_GPA): number {
  inRange('number of pieces', pieces.length, 1);
  const pascals = inRange('spokeGPa', spokeGPa, 50, 250) * 1000;
  let lengthMm = 0;
  let giving = 0;
  for (const piece of pieces) {
    const pieceMm = inRange('lengthMm', piece.lengthMm, 0.1, 400);
    lengthMm += pieceMm;
    giving += pieceMm / (pascals * areaMm2(inRange('diameterMm', piece.diameterMm, 1, 4)));
  }
  return lengthMm / giving;
}

/** Cross-section of a round wire, mm². */
const areaMm2 = (diameterMm: number): number => (Math.PI * diameterMm ** 2) / 4;

/** Diameter of the plain spoke that would stretch as much, mm. @example evenDiameterMm(521_900, 210) //=> 1.779… */
export function evenDiameterMm(stiffnessN: number, spokeGPa = SPOKE_GPA): number {
  const mm2 = inRange('stiffnessN', stiffnessN, 1000, 5e6) / (inRange('spokeGPa', spokeGPa, 50, 250) * 1000);
  return Math.sqrt((4 * mm2) / Math.PI);
}

/**
 * How much longer a spoke becomes under tension.
 * @param tensionN 0 to 3000 N
 * @returns mm
 * @throws RangeError when a figure is out of range
 * Source: Hooke's law.
 * @example spokeStretchMm(1000, [{ lengthMm: 184, diameterMm: 2 }]) //=> 0.303…
 */
export function spokeStretchMm(
  tensionN: number,
  pieces: readonly SpokePiece[],
  spokeGPa = SPOKE_GPA,
): number {
  const lengthMm = pieces.reduce((sum, piece) => sum + piece.lengthMm, 0);
  return (inRange('tensionN', tensionN, 0, 3000) * lengthMm) / spokeStiffnessN(pieces, spokeGPa);
}

/** A rim as a ring that gets squeezed. */
export interface RimRing {
  /** radius of the rim's own centre line, mm, 50 to 400 */
  radiusMm: number;
  /** metal in one cut through the rim, mm², 20 to 1000 */
  areaMm2: number;
  rimGPa?: number;
}

/**
 * Compression all round a rim, from the pull of all spokes. Lean and lacing take a little off and are left out.
 * @param spokes 8 to 72
 * @param meanTensionN 0 to 3000 N
 * @returns N
 * @throws RangeError when a figure is out of range
 * Source: thin ring under even inward pull, N·T/(2π), as wheel research uses it.
 * @example rimCompressionN(36, 980.665) //=> 5619 (about)
 */
export function rimCompressionN(spokes: number, meanTensionN: number): number {
  return (inRange('spokes', spokes, 8, 72) * inRange('meanTensionN', meanTensionN, 0, 3000)) / (2 * Math.PI);
}

/**
 * How much the rim's radius shrinks under all spokes.
 * @returns mm
 * @throws RangeError when a figure is out of range
 * Source: thin ring, as in a dissertation on bicycle wheels.
 * @example rimShrinkMm(36, 1000, { radiusMm: 304, areaMm2: 104 }) //=> 0.2427…
 */
export function rimShrinkMm(spokes: number, meanTensionN: number, rim: RimRing): number {
  const stiffnessN =
    inRange('rimGPa', rim.rimGPa ?? ALUMINIUM_GPA, 20, 250) *
    1000 *
    inRange('areaMm2', rim.areaMm2, 20, 1000);
  return (rimCompressionN(spokes, meanTensionN) * inRange('radiusMm', rim.radiusMm, 50, 400)) / stiffnessN;
}

/**
 * How far a tensioned spoke has moved into its nipple, beyond plain geometry: the reason to round down.
 * @returns mm
 * @throws RangeError when a figure is out of range
 * @example intoNippleMm(36, 1000, [{ lengthMm: 290, diameterMm: 2 }], { radiusMm: 304, areaMm2: 104 }) //=> 0.721…
 */
export function intoNippleMm(
  spokes: number,
  tensionN: number,
  pieces: readonly SpokePiece[],
  rim: RimRing,
  spokeGPa = SPOKE_GPA,
): number {
  return spokeStretchMm(tensionN, pieces, spokeGPa) + rimShrinkMm(spokes, tensionN, rim);
}
