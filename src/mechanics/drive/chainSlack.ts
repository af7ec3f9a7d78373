import { type Band, band } from '../band.ts';
import { inRange } from '../range.ts';
import { type ChainDrive, chainPath, closestAxleMm } from './chainDrive.ts';
import { axleFromPitches, chainPitches } from './chainLength.ts';
import { CHAIN_PITCH_MM } from './pitchDiameter.ts';

/** What the hand feels in the middle of the loose run. */
export interface ChainSlack {
  /** chain left over, mm; negative when the chain is too short for this position */
  slackMm: number;
  /** how far the middle lifts off the straight line, mm; it sags as far, so it moves twice that; 0 when too short */
  liftMm: number;
}

/**
 * Slack of a chain with the axle drawn to a given place: all of it gathers in one run, lifted to a triangle.
 * @param drive 6 to 120 teeth each
 * @param pitches chain length, pitches
 * @param axleMm where the axle is, mm
 * @throws RangeError when an argument is out of range
 * Source: triangle geometry on the straight run; derived here.
 * @example chainSlack({ ringTeeth: 36, sprocketTeeth: 15 }, 86, 381.7).liftMm //=> 6.5…
 */
export function chainSlack(drive: ChainDrive, pitches: number, axleMm: number): ChainSlack {
  const slackMm =
    (inRange('pitches', pitches, 8, 2000) - chainPitches(drive, axleMm)) * (drive.pitchMm ?? CHAIN_PITCH_MM);
  const { spanMm } = chainPath(drive, axleMm);
  return { slackMm, liftMm: slackMm <= 0 ? 0 : Math.sqrt(slackMm * (2 * spanMm + slackMm)) / 2 };
}

/**
 * Axle position that leaves a wanted lift in the middle of the run.
 * @param liftMm off the straight line, mm, 0 to 60
 * @returns mm, never beyond the taut position
 * @throws RangeError when an argument is out of range or so much slack cannot be had
 * Source: `chainSlack` inverted by bisection.
 * @example axleForLiftMm({ ringTeeth: 36, sprocketTeeth: 15 }, 86, 6.35) //=> 381.706…
 */
export function axleForLiftMm(drive: ChainDrive, pitches: number, liftMm: number): number {
  inRange('liftMm', liftMm, 0, 60);
  const tautMm = axleFromPitches(drive, pitches);
  let nearMm = closestAxleMm(drive);
  if (liftMm === 0) return tautMm;
  inRange('liftMm', liftMm, 0, chainSlack(drive, pitches, nearMm).liftMm);
  let farMm = tautMm;
  // 60 halvings of at most 2 m end far below the last digit of a double.
  for (let round = 0; round < 60; round++) {
    const middleMm = (nearMm + farMm) / 2;
    if (chainSlack(drive, pitches, middleMm).liftMm > liftMm) nearMm = middleMm;
    else farMm = middleMm;
  }
  return (nearMm + farMm) / 2;
}

/** Lift that a hand should feel at the tightest place of a turn: half an inch of movement in all, up to half an inch each way. */
export const SETTING_LIFT_MM: Band = band(6.35, 9.525, 12.7);

/**
 * Where to set the axle so that the chain has some slack and no more: a tenth to four tenths of a millimetre
 * short of taut, which is why tight spots of a ring that runs out of true matter more than the arithmetic.
 * @returns band of axle positions, mm; `hi` leaves the least slack
 * @throws RangeError when an argument is out of range
 * Source: about half an inch of slack, cycling forum advice; the lift at both ends of the band is our reading of it.
 * @example axleSettingMm({ ringTeeth: 36, sprocketTeeth: 15 }, 86).hi //=> 381.706…
 */
export function axleSettingMm(drive: ChainDrive, pitches: number): Band {
  const at = (liftMm: number) => axleForLiftMm(drive, pitches, liftMm);
  return band(at(SETTING_LIFT_MM.hi), at(SETTING_LIFT_MM.mid), at(SETTING_LIFT_MM.lo));
}
