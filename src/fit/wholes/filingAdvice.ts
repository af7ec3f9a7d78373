import type { ChainDrive } from '../../mechanics/drive/chainDrive.ts';
import { axleFromPitches } from '../../mechanics/drive/chainLength.ts';
import { axleSettingMm } from '../../mechanics/drive/chainSlack.ts';
import { axleWornMm } from '../../mechanics/drive/chainWear.ts';

/** How far a length from spindle centre to axle centre may be read wrong along a frame, mm, at least. Own judgement. */
export const LEAST_READING_MM = 0.3;
/** How far two ends filed by hand may miss the mark, mm. Own judgement. */
const FILING_MARGIN_MM = 0.3;

/** What to file off the front of a slot so that a shorter chain goes in and can be given its slack. */
export interface FilingAdvice {
  pitches: number;
  /** In all, mm, in whole tenths: the four shares below, rounded up. */
  fileMm: number;
  /** What is missing for the chain just taut. */
  missingMm: number;
  /** More for the most slack it is to have. */
  slackMm: number;
  /** More because the front may have been read this much too near. */
  readingMm: number;
  /** More because the file may leave this much standing. */
  marginMm: number;
  /** Room left in front of the axle set with its least slack, mm: all going badly, and all going well. */
  leftMm: { least: number; most: number };
  /** Room left behind the axle with the chain worn as looked ahead to, mm, all going badly; below nothing it comes out. */
  rearMm: number;
}

const tenthsUp = (mm: number): number => Math.ceil(mm * 10 - 1e-9) / 10;

/**
 * How much to file off the front of a slot for a chain that is just too short. A cut is made once: it includes the slack
 * the chain needs, what the reading may be off, and a margin for the hand. A new chain is the shortest, so wear takes
 * nothing at the front; at the rear it does.
 * @param slot ends of the slot as they were read, mm from the spindle's centre
 * @param drive 6 to 120 teeth each
 * @param pitches of the chain that is to go in
 * @param readingMm what a reading may be off, mm, ≥ 0
 * @param wearPercent growth of the chain to look ahead to, 0 to 5
 * @throws RangeError when such a chain does not close round this drive
 * Source: chain geometry (`axleFromPitches`, `axleSettingMm`, `axleWornMm`); reading and margin are our own judgement.
 * @example filingAdvice({ frontMm: 383, rearMm: 396 }, { ringTeeth: 36, sprocketTeeth: 15 }, 86, 0.3, 0.75).fileMm //=> 2.3
 */
export function filingAdvice(
  slot: { frontMm: number; rearMm: number },
  drive: ChainDrive,
  pitches: number,
  readingMm: number,
  wearPercent: number,
): FilingAdvice {
  const tautMm = axleFromPitches(drive, pitches);
  const setting = axleSettingMm(drive, pitches);
  const missingMm = slot.frontMm - tautMm;
  const slackMm = tautMm - setting.lo;
  const marginMm = FILING_MARGIN_MM;
  const fileMm = tenthsUp(missingMm + slackMm + readingMm + marginMm);
  const roomMm = setting.hi - (slot.frontMm - fileMm);
  return {
    pitches,
    fileMm,
    ...{ missingMm, slackMm, readingMm, marginMm },
    leftMm: { least: roomMm - readingMm - marginMm, most: roomMm + readingMm + marginMm },
    rearMm: slot.rearMm - readingMm - axleWornMm(drive, pitches, wearPercent).hi,
  };
}
