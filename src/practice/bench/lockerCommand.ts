import type { CommandOf } from '../../journal/commands.ts';
import type { JointRow, StepRow } from '../../journal/rows.ts';
import { lockerWait, nearDiscBrake } from '../../planning/lockerWait.ts';
import { lockerRow } from '../../standards/screws/lockers.ts';
import type { StepDraft } from './stepDraft.ts';

/** The wait for what has been chosen, once enough has been. */
export function lockerWaitOf(
  draft: StepDraft,
  nearBrake: boolean,
): ReturnType<typeof lockerWait> | undefined {
  const { grade, surface, primer, temperatureC } = draft;
  return grade && surface && lockerWait({ grade, surface, primer, temperatureC, nearDiscBrake: nearBrake });
}

/** The command for what was chosen; undefined while the choice is incomplete or cannot cure. */
export function lockerCommand(
  draft: StepDraft,
  joint: JointRow | undefined,
  step: StepRow,
): CommandOf<'apply-locker'> | undefined {
  const wait = lockerWaitOf(draft, joint !== undefined && nearDiscBrake(joint));
  if (!wait?.ok || !draft.grade || !draft.surface) return undefined;
  return {
    type: 'apply-locker',
    ...(joint ? { jointId: joint.jointId } : {}),
    stepId: step.stepId,
    grade: draft.grade,
    surface: draft.surface,
    primer: draft.primer,
    temperature: { value: draft.temperatureC, unit: 'Cel', typed: String(draft.temperatureC) },
    waitMs: wait.waitMs,
  };
}

/** What the undo bar says. @example lockerSaid('medium') //=> 'Medium strength on, the wait runs' */
export function lockerSaid(grade: NonNullable<StepDraft['grade']>): string {
  return `${lockerRow(grade).label} on, the wait runs`;
}
