import { inRange, wholeInRange } from '../range.ts';
import type { ChainDrive } from './chainDrive.ts';
import { CHAIN_PITCH_MM, TEETH } from './pitchDiameter.ts';

/** Sum and difference of the teeth in the two shapes the formula wants. */
function terms({ ringTeeth, sprocketTeeth }: ChainDrive): { half: number; bow: number } {
  wholeInRange('ringTeeth', ringTeeth, TEETH.fewest, TEETH.most);
  wholeInRange('sprocketTeeth', sprocketTeeth, TEETH.fewest, TEETH.most);
  return { half: (ringTeeth + sprocketTeeth) / 2, bow: ((ringTeeth - sprocketTeeth) / (2 * Math.PI)) ** 2 };
}

/**
 * Chain length by the approximation machine-design textbooks print. A witness beside `chainPitches`: on
 * bicycle drives the axle comes out within 0.1 mm of it. Nothing in this program is set by it.
 * @param axleMm spindle centre to axle centre, mm, above 0 to 10 000
 * @returns pitches
 * @throws RangeError when an argument is out of range
 * Source: machine-design textbook, chain drives chapter.
 * @example handbookPitches({ ringTeeth: 65, sprocketTeeth: 17, pitchMm: 12.7 }, 381) //=> 102.945…
 */
export function handbookPitches(drive: ChainDrive, axleMm: number): number {
  const { half, bow } = terms(drive);
  const pitchMm = inRange('pitchMm', drive.pitchMm ?? CHAIN_PITCH_MM, 5, 60);
  const inPitches = inRange('axleMm', axleMm, 1, 10_000) / pitchMm;
  return 2 * inPitches + half + bow / inPitches;
}

/**
 * Axle position by the textbook's inverse.
 * @param pitches chain length, pitches, up to 2000
 * @returns mm
 * @throws RangeError when an argument is out of range or the chain is too short for the formula
 * Source: machine-design textbook, chain drives chapter.
 * @example handbookAxleMm({ ringTeeth: 65, sprocketTeeth: 17 }, 104) //=> 387.9…
 */
export function handbookAxleMm(drive: ChainDrive, pitches: number): number {
  const { half, bow } = terms(drive);
  const pitchMm = inRange('pitchMm', drive.pitchMm ?? CHAIN_PITCH_MM, 5, 60);
  const free = inRange('pitches', pitches, half, 2000) - half;
  const under = inRange('length left for the runs', free ** 2 - 8 * bow, 0);
  return (pitchMm / 4) * (free + Math.sqrt(under));
}
