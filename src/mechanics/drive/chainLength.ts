import { inRange } from '../range.ts';
import { type ChainDrive, chainPath, closestAxleMm, FARTHEST_AXLE_MM } from './chainDrive.ts';
import { CHAIN_PITCH_MM } from './pitchDiameter.ts';

/**
 * Length of the taut chain, counted in pitches of half an inch, usually a fraction.
 * The wrapped part is counted in teeth: links lie as chords on the sprocket, so taking arcs instead would put
 * the axle half a millimetre off.
 * @param drive 6 to 120 teeth each
 * @param axleMm spindle centre to axle centre, mm, from `closestAxleMm` to 2000
 * @returns pitches; riders who say "link" for an inch count half as many
 * @throws RangeError when an argument is out of range
 * Source: derived here; a rigid-link simulation in the tests stays within 0.005 mm.
 * @example chainPitches({ ringTeeth: 36, sprocketTeeth: 15 }, 380) //=> 85.716…
 */
export function chainPitches(drive: ChainDrive, axleMm: number): number {
  const { spanMm, ringWrapTeeth, sprocketWrapTeeth } = chainPath(drive, axleMm);
  return (2 * spanMm) / (drive.pitchMm ?? CHAIN_PITCH_MM) + ringWrapTeeth + sprocketWrapTeeth;
}

/**
 * Shortest chain that closes round both wheels, in pitches; a fraction.
 * @example shortestPitches({ ringTeeth: 36, sprocketTeeth: 15 }) //=> 43.17…
 */
export const shortestPitches = (drive: ChainDrive): number => chainPitches(drive, closestAxleMm(drive));

/**
 * Longest chain of use: the axle would stand at the farthest position taken.
 * @example longestPitches({ ringTeeth: 36, sprocketTeeth: 15 }) //=> 340.53…
 */
export const longestPitches = (drive: ChainDrive): number => chainPitches(drive, FARTHEST_AXLE_MM);

/** Growth of the chain per millimetre of axle travel, pitches/mm. */
function growth(drive: ChainDrive, axleMm: number): number {
  const pitchMm = drive.pitchMm ?? CHAIN_PITCH_MM;
  const { spanMm, slopeRad } = chainPath(drive, axleMm);
  const unwrap = ((drive.ringTeeth - drive.sprocketTeeth) / Math.PI) * Math.sin(slopeRad);
  return (2 * axleMm) / (pitchMm * spanMm) - unwrap / spanMm;
}

/**
 * Axle position at which a chain of a given length is just taut.
 * @param drive 6 to 120 teeth each
 * @param pitches chain length, from `shortestPitches` to `longestPitches`; fractions allowed
 * @returns spindle centre to axle centre, mm
 * @throws RangeError when the chain is too short to close, too long, or not finite
 * Source: `chainPitches` inverted.
 * @example axleFromPitches({ ringTeeth: 36, sprocketTeeth: 15 }, 86) //=> 381.813…
 */
export function axleFromPitches(drive: ChainDrive, pitches: number): number {
  const nearMm = closestAxleMm(drive);
  inRange('pitches', pitches, chainPitches(drive, nearMm), longestPitches(drive));
  // Length rises with distance and bends upward, so steps taken from the far side never overshoot.
  let axleMm = FARTHEST_AXLE_MM;
  for (let round = 0; round < 60; round++) {
    const stepMm = (chainPitches(drive, axleMm) - pitches) / growth(drive, axleMm);
    axleMm = Math.max(nearMm, Math.min(FARTHEST_AXLE_MM, axleMm - stepMm));
    if (Math.abs(stepMm) < 1e-10) break;
  }
  return axleMm;
}
