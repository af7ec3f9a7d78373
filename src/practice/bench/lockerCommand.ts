import type { CommandOf, LockerOn } from '../../journal/commands.ts';
import type { JointRow, StepRow } from '../../journal/rows.ts';
import { type LockerHelp, lockerHelp, lockerWait, nearDiscBrake } from '../../planning/lockerWait.ts';
import { type LockerGrade, lockerRow } from '../../standards/screws/lockers.ts';
import { gapOf } from '../joint/measuredFit.ts';
import type { LockerDraft } from './stepDraft.ts';

const HOUR_MS = 3_600_000;

/** The wait for what has been chosen, once enough has been. */
export function lockerWaitOf(
  draft: LockerDraft,
  nearBrake: boolean,
  gapMm?: number,
): ReturnType<typeof lockerWait> | undefined {
  const { grade, surface, primer, temperatureC } = draft;
  return (
    grade && surface && lockerWait({ grade, surface, primer, temperatureC, nearDiscBrake: nearBrake, gapMm })
  );
}

/** What would shorten a cure that is too long to wait for; undefined where it is not. */
export function lockerHelpOf(
  draft: LockerDraft,
  nearBrake: boolean,
  gapMm?: number,
): LockerHelp[] | undefined {
  const { grade, surface, primer, temperatureC } = draft;
  return grade && surface
    ? lockerHelp({ grade, surface, primer, temperatureC, nearDiscBrake: nearBrake, gapMm })
    : undefined;
}

/** The wait the person set, as far as it is asked for and has its reason; false while the reason is missing. */
function ownWaitOf(draft: LockerDraft, nearBrake: boolean, gapMm?: number): LockerOn['own'] | false {
  const { ownWaitH, ownWhy = '' } = draft;
  if (ownWaitH === undefined || !lockerHelpOf(draft, nearBrake, gapMm)) return undefined;
  return ownWhy.trim() === '' ? false : { waitMs: ownWaitH * HOUR_MS, why: ownWhy.trim() };
}

/** Threadlocker as it was chosen, with its wait; undefined while the choice is incomplete or cannot cure. */
export function lockerOn(draft: LockerDraft, joint: JointRow | undefined): LockerOn | undefined {
  const { grade, surface, primer, temperatureC } = draft;
  const gapMm = joint && gapOf(joint);
  const nearBrake = joint !== undefined && nearDiscBrake(joint);
  const wait = lockerWaitOf(draft, nearBrake, gapMm);
  const own = ownWaitOf(draft, nearBrake, gapMm);
  if (!wait?.ok || !grade || !surface || own === false) return undefined;
  const across = gapMm === undefined ? undefined : Math.max(0, Math.round(gapMm * 1000) / 1000);
  const gap =
    across === undefined ? {} : { gap: { value: across, unit: 'mm', typed: String(across) } as const };
  const temperature = { value: temperatureC, unit: 'Cel', typed: String(temperatureC) } as const;
  return { grade, surface, primer, temperature, ...gap, waitMs: wait.waitMs, ...(own ? { own } : {}) };
}

/** The command for what was chosen; undefined while the choice is incomplete or cannot cure. */
export function lockerCommand(
  draft: LockerDraft,
  joint: JointRow | undefined,
  step: StepRow,
): CommandOf<'apply-locker'> | undefined {
  const locker = lockerOn(draft, joint);
  if (!locker) return undefined;
  const { stepId } = step;
  return { type: 'apply-locker', ...(joint ? { jointId: joint.jointId } : {}), stepId, ...locker };
}

/** What the undo bar says. @example lockerSaid('medium') //=> 'Medium strength applied, timer started' */
export function lockerSaid(grade: LockerGrade): string {
  return `${lockerRow(grade).label} applied, timer started`;
}
