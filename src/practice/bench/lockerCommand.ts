import type { CommandOf, LockerOn } from '../../journal/commands.ts';
import type { JointRow, StepRow } from '../../journal/rows.ts';
import { lockerWait, nearDiscBrake } from '../../planning/lockerWait.ts';
import { type LockerGrade, lockerRow } from '../../standards/screws/lockers.ts';
import { gapOf } from '../joint/measuredFit.ts';
import type { LockerDraft } from './stepDraft.ts';

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

/** Threadlocker as it was chosen, with its wait; undefined while the choice is incomplete or cannot cure. */
export function lockerOn(draft: LockerDraft, joint: JointRow | undefined): LockerOn | undefined {
  const { grade, surface, primer, temperatureC } = draft;
  const gapMm = joint && gapOf(joint);
  const wait = lockerWaitOf(draft, joint !== undefined && nearDiscBrake(joint), gapMm);
  if (!wait?.ok || !grade || !surface) return undefined;
  const across = gapMm === undefined ? undefined : Math.max(0, Math.round(gapMm * 1000) / 1000);
  const gap =
    across === undefined ? {} : { gap: { value: across, unit: 'mm', typed: String(across) } as const };
  const temperature = { value: temperatureC, unit: 'Cel', typed: String(temperatureC) } as const;
  return { grade, surface, primer, temperature, ...gap, waitMs: wait.waitMs };
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
