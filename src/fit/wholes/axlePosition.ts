import type { Band } from '../../mechanics/band.ts';
import { type ChainDrive, closestAxleMm } from '../../mechanics/drive/chainDrive.ts';
import {
  axleFromPitches,
  chainPitches,
  longestPitches,
  shortestPitches,
} from '../../mechanics/drive/chainLength.ts';
import { type AxleMoves, axleMoves } from '../../mechanics/drive/chainMoves.ts';
import { axleSettingMm, chainSlack, SETTING_LIFT_MM } from '../../mechanics/drive/chainSlack.ts';
import { axleWornMm, wearToReach } from '../../mechanics/drive/chainWear.ts';
import { CHAIN_PITCH_MM, TEETH } from '../../mechanics/drive/pitchDiameter.ts';
import { type FilingAdvice, filingAdvice, LEAST_READING_MM } from './filingAdvice.ts';

/** Where the axle's centre may stand, told as its distance from the spindle's centre, mm. */
export interface AxleSlot {
  frontMm: number;
  rearMm: number;
}

export type ChainKind = 'even' | 'half-link';

/** One chain length and the place in the slot it puts the axle. */
export interface AxleStop {
  pitches: number;
  /** an odd count only closes with a half-link */
  kind: ChainKind;
  /** axle with the new chain just taut, mm */
  tautMm: number;
  /** where to set it, with some slack left, mm; may reach past the front end */
  settingMm: Band;
  /** the front end leaves room for the least slack */
  slackFits: boolean;
  /** room from the taut place to each end of the slot, filing included, mm; negative outside */
  toFrontMm: number;
  toRearMm: number;
  /** this place lies in the metal that is still to be filed */
  needsFiling: boolean;
  /** taut place of the chain worn as asked, mm */
  wornMm: Band;
  /** does wear as asked push the taut place out at the rear */
  outgrows: 'no' | 'perhaps' | 'yes';
  /** wear at which the slot's rear end is reached, percent */
  wearToRearPercent: Band;
}

/** A chain length that just misses the slot. */
export interface NearChainLength {
  pitches: number;
  kind: ChainKind;
  tautMm: number;
  /** how much longer the slot would have to be on that side, mm */
  missingMm: number;
}

export interface AxlePositions {
  ok: true;
  /** ends as they are, and the front as it will be after filing; equal when nothing is filed */
  frontMm: number;
  rearMm: number;
  filedFrontMm: number;
  /** from front to rear */
  stops: AxleStop[];
  /** nearest lengths beyond the ends; the one in front tells what more filing would win */
  beyondFront: NearChainLength | null;
  beyondRear: NearChainLength | null;
  /** what to file off the front, beyond what is filed in thought already, to let the nearest length in with its slack */
  filing: FilingAdvice | null;
  /** what a tooth, a half-link or a pair of links does to the first stop; null when the slot holds none */
  moves: AxleMoves | null;
}

export type AxleRefusal =
  | 'teeth-out-of-range'
  | 'slot-ends-swapped'
  | 'slot-too-near'
  | 'slot-too-far'
  | 'wear-out-of-range'
  | 'filing-out-of-range'
  | 'not-a-number';

export interface AxleQuestion {
  /** take odd lengths too; off unless asked for */
  halfLink?: boolean;
  /** growth of the chain to look ahead to, percent, 0 to 3; 0.75 unless asked */
  wearPercent?: number;
  /** metal to be filed off the front end, mm, 0 to 30; cannot be undone */
  fileFrontMm?: number;
  /** what the ends of the slot may be read wrong, mm, 0 to 5 */
  readingMm?: number;
}

const MOST_WEAR_PERCENT = 3;
const MOST_FILING_MM = 30;
/** Twice what any single-seat bicycle has. */
const FARTHEST_SLOT_MM = 1000;

/** The first complaint about what was typed, or null. */
function refusalOf(slot: AxleSlot, drive: ChainDrive, wear: number, filing: number): AxleRefusal | null {
  const typed = [slot.frontMm, slot.rearMm, drive.ringTeeth, drive.sprocketTeeth, wear, filing];
  if (!typed.every(Number.isFinite)) return 'not-a-number';
  const teethFit = (n: number) => Number.isInteger(n) && n >= TEETH.fewest && n <= TEETH.most;
  if (![drive.ringTeeth, drive.sprocketTeeth].every(teethFit)) return 'teeth-out-of-range';
  if (wear < 0 || wear > MOST_WEAR_PERCENT) return 'wear-out-of-range';
  if (filing < 0 || filing > MOST_FILING_MM) return 'filing-out-of-range';
  if (slot.rearMm < slot.frontMm) return 'slot-ends-swapped';
  // Ring and sprocket would all but touch: a slip of the finger, and no room for slack to reckon with.
  if (slot.frontMm - filing < closestAxleMm(drive) + CHAIN_PITCH_MM) return 'slot-too-near';
  if (slot.rearMm > FARTHEST_SLOT_MM) return 'slot-too-far';
  return null;
}

const kindOf = (pitches: number): ChainKind => (pitches % 2 === 0 ? 'even' : 'half-link');

/**
 * Every chain length that puts the axle into a slot, ready to be drawn: place, kind of chain, room to both ends,
 * what wear will do, and what filing the front end wins or would win.
 * @param slot travel of the axle's centre, mm from the spindle's centre
 * @param ringTeeth 6 to 120
 * @param sprocketTeeth 6 to 120
 * @param question half-links, wear to look ahead to, filing
 * @returns the stops from front to rear, or a named reason why the figures cannot be meant
 * Source: `axleFromPitches` for each whole number of pitches; derived here.
 * @example axlePositions({ frontMm: 383, rearMm: 396 }, 36, 15, { halfLink: true }) //=> stops at 87 and 88 pitches
 */
export function axlePositions(
  slot: AxleSlot,
  ringTeeth: number,
  sprocketTeeth: number,
  question: AxleQuestion = {},
): AxlePositions | { ok: false; reason: AxleRefusal } {
  const { halfLink = false, wearPercent = 0.75, fileFrontMm = 0, readingMm = 0 } = question;
  const drive: ChainDrive = { ringTeeth, sprocketTeeth };
  const reason = refusalOf(slot, drive, wearPercent, fileFrontMm);
  if (reason) return { ok: false, reason };

  const filedFrontMm = slot.frontMm - fileFrontMm;
  const allowed = (pitches: number) => halfLink || pitches % 2 === 0;
  const within: number[] = [];
  const first = Math.ceil(chainPitches(drive, filedFrontMm));
  const last = Math.floor(chainPitches(drive, slot.rearMm));
  for (let pitches = first; pitches <= last; pitches++) if (allowed(pitches)) within.push(pitches);

  const stops = within.map((pitches) => stopAt(drive, pitches, slot, filedFrontMm, wearPercent));
  const stepBack = allowed(first - 1) ? 1 : 2;
  const stepOn = allowed(last + 1) ? 1 : 2;
  const miss = (pitches: number, missingFrom: (tautMm: number) => number): NearChainLength | null => {
    if (pitches < shortestPitches(drive) || pitches > longestPitches(drive)) return null;
    const tautMm = axleFromPitches(drive, pitches);
    return { pitches, kind: kindOf(pitches), tautMm, missingMm: missingFrom(tautMm) };
  };
  // So near the ring that no slack can be had there is nothing to advise.
  const slackAt = (pitches: number) =>
    chainSlack(drive, pitches, closestAxleMm(drive)).liftMm > SETTING_LIFT_MM.hi || null;
  const beyondFront = miss(first - stepBack, (tautMm) => filedFrontMm - tautMm);
  const filed = { frontMm: filedFrontMm, rearMm: slot.rearMm };
  const offMm = Math.max(LEAST_READING_MM, readingMm);
  return {
    ok: true,
    ...slot,
    filedFrontMm,
    stops,
    beyondFront,
    filing:
      beyondFront &&
      slackAt(beyondFront.pitches) &&
      filingAdvice(filed, drive, beyondFront.pitches, offMm, wearPercent),
    beyondRear: miss(last + stepOn, (tautMm) => tautMm - slot.rearMm),
    moves: within[0] === undefined ? null : axleMoves(drive, within[0]),
  };
}

function stopAt(
  drive: ChainDrive,
  pitches: number,
  slot: AxleSlot,
  filedFrontMm: number,
  wearPercent: number,
): AxleStop {
  const tautMm = axleFromPitches(drive, pitches);
  const settingMm = axleSettingMm(drive, pitches);
  const wornMm = axleWornMm(drive, pitches, wearPercent);
  return {
    pitches,
    kind: kindOf(pitches),
    tautMm,
    settingMm,
    slackFits: settingMm.hi >= filedFrontMm,
    toFrontMm: tautMm - filedFrontMm,
    toRearMm: slot.rearMm - tautMm,
    needsFiling: tautMm < slot.frontMm,
    wornMm,
    outgrows: wornMm.lo > slot.rearMm ? 'yes' : wornMm.hi > slot.rearMm ? 'perhaps' : 'no',
    wearToRearPercent: wearToReach(drive, pitches, slot.rearMm),
  };
}
