import { type Band, band } from '../band.ts';
import { inRange, wholeInRange } from '../range.ts';
import type { Known } from '../working.ts';
import type { ChainDrive } from './chainDrive.ts';
import { axleFromPitches, chainPitches } from './chainLength.ts';
import { CHAIN_PITCH_MM } from './pitchDiameter.ts';

/** A chain grown by more than this is not a chain any more; it only keeps slips of the finger out. */
const MOST_WEAR_PERCENT = 5;

/**
 * Wear from a ruler laid along the chain.
 * @param measuredMm rivet to the same edge of a later rivet, mm
 * @param pitches whole number of pitches between them, 1 to 200; a foot is 24
 * @param pitchMm new pitch, mm
 * @returns growth in percent of the new length; a little below 0 is a reading error
 * @throws RangeError when an argument is out of range
 * Source: definition.
 * @example chainWearPercent(306.324, 24) //=> 0.5
 */
export function chainWearPercent(measuredMm: number, pitches: number, pitchMm = CHAIN_PITCH_MM): number {
  const newMm = wholeInRange('pitches', pitches, 1, 200) * inRange('pitchMm', pitchMm, 5, 60);
  return 100 * (inRange('measuredMm', measuredMm, newMm * 0.9, newMm * 1.2) / newMm - 1);
}

/**
 * What a ruler shows when a chain has worn that much.
 * @param percent growth, 0 to 5
 * @returns mm
 * @throws RangeError when an argument is out of range
 * @example wornLengthMm(24, 1) //=> 307.848
 */
export function wornLengthMm(pitches: number, percent: number, pitchMm = CHAIN_PITCH_MM): number {
  const newMm = wholeInRange('pitches', pitches, 1, 200) * inRange('pitchMm', pitchMm, 5, 60);
  return newMm * (1 + inRange('percent', percent, 0, MOST_WEAR_PERCENT) / 100);
}

/**
 * Where a worn chain is taut; wear always moves the axle back. Two ideal cases bound it: the chain climbs the
 * teeth and everything grows alike, or it stays in the tooth bottoms and the runs take up the whole growth.
 * @param drive 6 to 120 teeth each
 * @param pitches chain length, pitches
 * @param percent growth, 0 to 5
 * @returns band of taut axle positions, mm
 * @throws RangeError when an argument is out of range
 * Source: derived here from `chainPitches`; the middle is only the mean of both cases.
 * @example axleWornMm({ ringTeeth: 36, sprocketTeeth: 15 }, 86, 0.5) //=> 383.72… to 384.56…
 */
export function axleWornMm(drive: ChainDrive, pitches: number, percent: number): Band {
  const grown = 1 + inRange('percent', percent, 0, MOST_WEAR_PERCENT) / 100;
  const climbedMm = axleFromPitches(drive, pitches) * grown;
  const seatedMm = axleFromPitches(drive, pitches * grown);
  const [lo, hi] = climbedMm < seatedMm ? [climbedMm, seatedMm] : [seatedMm, climbedMm];
  return band(lo, (lo + hi) / 2, hi);
}

/**
 * Wear at which the taut axle reaches a given place, such as the rear end of a slot.
 * @param rearMm spindle centre to axle centre, mm
 * @returns band of growth, percent; 0 to 0 when the new chain is already at or beyond that place
 * @throws RangeError when an argument is out of range
 * Source: `axleWornMm` solved for the wear, case by case.
 * @example wearToReach({ ringTeeth: 36, sprocketTeeth: 15 }, 86, 386) //=> 0.76… to 1.09… percent
 */
export function wearToReach(drive: ChainDrive, pitches: number, rearMm: number): Band {
  const seated = 100 * (chainPitches(drive, rearMm) / pitches - 1);
  const climbed = 100 * (rearMm / axleFromPitches(drive, pitches) - 1);
  const [lo, hi] = [seated, climbed].map((percent) => Math.max(0, percent)).sort((a, b) => a - b) as [
    number,
    number,
  ];
  return band(lo, (lo + hi) / 2, hi);
}

/**
 * Wear at which a chain is commonly replaced, by the number of sprockets at the back.
 * @param sprockets whole number, 1 to 14
 * @throws RangeError when the number is out of range
 * Source: from memory, common practice; a chain maker's own figure goes first.
 * @example chainWearLimit(1) //=> { percent: 1, known: 'memory' }
 */
export function chainWearLimit(sprockets: number): { percent: number; known: Known } {
  wholeInRange('sprockets', sprockets, 1, 14);
  // One wide sprocket puts up with more; narrow chains ruin many sprockets early.
  const percent = sprockets >= 10 ? 0.5 : sprockets >= 5 ? 0.75 : 1;
  return { percent, known: 'memory' };
}
