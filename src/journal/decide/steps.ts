import { type PlannedStep, stepsFor } from '../../planning/stepOrder.ts';
import { isBonded } from '../../planning/unsetBonds.ts';
import { type JointKind, jointKindRow } from '../../standards/jointKinds.ts';
import type { CommandOf } from '../commands.ts';
import type { EntryBody, Id } from '../entries.ts';
import type { Rows } from '../fold.ts';
import type { StepRow } from '../rows.ts';
import { stepList } from '../stepList.ts';
import { wordForBonds } from './bonds.ts';
import {
  bikeOf,
  type Circumstances,
  freshId,
  jointOf,
  present,
  type Ruling,
  refuse,
  stepOf,
  words,
} from './ruling.ts';

/** Room between two ranks, so that many steps fit between before the halves grow too small. */
const GAP = 1024;

/** Joints whose faces are not simply put together: common practice, no source. */
const WAYS: Partial<Record<JointKind, 'press' | 'seat'>> = {
  bead: 'seat',
  'crown-race': 'press',
  headset: 'press',
};

function stepsOf(rows: Rows, bikeId: Id): StepRow[] {
  return stepList(rows.group('step', `step@${bikeId}`));
}

/** The rank behind a given step, or before all others. */
function rankAfter(steps: StepRow[], afterStepId: Id | null | undefined): number {
  if (steps.length === 0) return GAP;
  if (afterStepId === null) return (steps[0]?.rank ?? GAP) - GAP;
  const at = steps.findIndex((step) => step.stepId === afterStepId);
  const before = steps[at === -1 ? steps.length - 1 : at];
  const after = at === -1 ? undefined : steps[at + 1];
  return after && before ? (before.rank + after.rank) / 2 : (before?.rank ?? 0) + GAP;
}

/** The joints and parts of the bike as steps in a sensible order; what is in the list already stays. */
export function planSteps(rows: Rows, command: CommandOf<'plan-steps'>, now: Circumstances): Ruling {
  const { bikeId } = bikeOf(rows, command.bikeId);
  const parts = rows.group('part', `part@${bikeId}`);
  const names = new Map(parts.map((part) => [part.partId, part.name]));
  const joints = rows
    .group('joint', `joint@${bikeId}`)
    .filter((joint) => joint.state !== 'apart')
    .map((joint) => ({
      jointId: joint.jointId,
      name: joint.name,
      order: jointKindRow(joint.kind).buildOrder,
      way: WAYS[joint.kind] ?? ('fit' as const),
      partNames: joint.partIds.map((id) => names.get(id) ?? rows.get('part', id)?.name ?? ''),
      between: joint.between.map(
        (item) =>
          (item.partId && (names.get(item.partId) ?? rows.get('part', item.partId)?.name)) ||
          item.words ||
          item.kind.replace('-', ' '),
      ),
      locker: joint.between.some((item) => item.kind === 'threadlocker'),
      bonded: isBonded(joint),
      torqued: joint.fasteners.length > 0 || joint.targets.some((target) => target.torque),
    }));
  const existing = stepsOf(rows, bikeId);
  const have = new Set(existing.map((step) => `${step.kind}:${step.jointId ?? step.title}`));
  const planned = stepsFor(joints).filter(
    (step: PlannedStep) => !have.has(`${step.kind}:${step.jointId ?? step.title}`),
  );
  if (planned.length === 0) refuse('nothing-to-plan');
  const start = existing.at(-1)?.rank ?? 0;
  return planned.map(
    (step, index): EntryBody =>
      present({ type: 'step-added', stepId: now.newId(), bikeId, ...step, rank: start + GAP * (index + 1) }),
  );
}

export function addStep(rows: Rows, command: CommandOf<'add-step'>, now: Circumstances): Ruling {
  const { bikeId } = bikeOf(rows, command.bikeId);
  const { kind, detail, jointId, partId } = command;
  const stepId = freshId(rows, 'step', command.stepId, now);
  const title = words(command.title, 'name-missing');
  if (jointId !== undefined) jointOf(rows, jointId);
  if (kind === 'torque' && jointId === undefined) refuse('no-such-joint');
  const rank = rankAfter(stepsOf(rows, bikeId), command.afterStepId);
  return [present({ type: 'step-added', stepId, bikeId, kind, title, detail, jointId, partId, rank })];
}

export function describeStep(rows: Rows, command: CommandOf<'describe-step'>): Ruling {
  const { stepId, bikeId } = stepOf(rows, command.stepId);
  const { detail, kind } = command;
  const title = command.title === undefined ? undefined : words(command.title, 'name-missing');
  return [present({ type: 'step-described', stepId, bikeId, title, detail, kind })];
}

export function moveStep(rows: Rows, command: CommandOf<'move-step'>): Ruling {
  const { stepId, bikeId } = stepOf(rows, command.stepId);
  if (command.afterStepId === stepId) refuse('nothing-changes');
  const others = stepsOf(rows, bikeId).filter((step) => step.stepId !== stepId);
  return [{ type: 'step-moved', stepId, bikeId, rank: rankAfter(others, command.afterStepId) }];
}

export function splitStep(rows: Rows, command: CommandOf<'split-step'>, now: Circumstances): Ruling {
  const step = stepOf(rows, command.stepId);
  const titles = command.titles.map((title) => title.trim()).filter((title) => title !== '');
  if (titles.length < 2) refuse('split-into-one');
  if (step.state !== 'open') refuse('already-done', step.title);
  const { bikeId, kind, detail, jointId, partId } = step;
  const all = stepsOf(rows, bikeId);
  const next = all[all.findIndex((other) => other.stepId === step.stepId) + 1];
  const room = (next ? next.rank - step.rank : GAP) / titles.length;
  const added = titles.map((title, index) =>
    present({
      type: 'step-added' as const,
      ...{ stepId: now.newId(), bikeId, kind, title, detail, jointId, partId },
      rank: step.rank + room * index,
    }),
  );
  const splitInto = added.map(({ stepId }) => stepId);
  return [{ type: 'step-dropped', stepId: step.stepId, bikeId, why: 'split', splitInto }, ...added];
}

export function dropStep(rows: Rows, command: CommandOf<'drop-step'>): Ruling {
  const { stepId, bikeId } = stepOf(rows, command.stepId);
  return [{ type: 'step-dropped', stepId, bikeId, why: words(command.why, 'reason-missing') }];
}

export function skipStep(rows: Rows, command: CommandOf<'skip-step'>): Ruling {
  const step = stepOf(rows, command.stepId);
  if (step.state === 'done') refuse('already-done', step.title);
  if (step.state === 'skipped') refuse('already-skipped', step.title);
  const { stepId, bikeId, jointId } = step;
  return [
    present({ type: 'step-skipped', stepId, bikeId, why: words(command.why, 'reason-missing'), jointId }),
  ];
}

export function reopenStep(rows: Rows, command: CommandOf<'reopen-step'>): Ruling {
  const step = stepOf(rows, command.stepId);
  if (step.state === 'open') refuse('nothing-changes');
  const { stepId, bikeId } = step;
  return [{ type: 'step-reopened', stepId, bikeId, why: words(command.why, 'reason-missing') }];
}

export function openStep(rows: Rows, command: CommandOf<'open-step'>): Ruling {
  const { stepId, bikeId } = stepOf(rows, command.stepId);
  if (bikeOf(rows, bikeId).openStepId === stepId) refuse('nothing-changes');
  return [{ type: 'step-opened', stepId, bikeId }];
}

/** Done without a torque: a fit, a press, a measure, a cut, an adjustment, a check. */
export function finishStep(rows: Rows, command: CommandOf<'finish-step'>, now: Circumstances): Ruling {
  const step = stepOf(rows, command.stepId);
  if (step.state === 'done') refuse('already-done', step.title);
  if (step.kind === 'torque') refuse('not-a-torque-step', step.title);
  // Threadlocker that is only ticked would have no cure.
  if (step.kind === 'lock') refuse('cure-not-started', step.title);
  const { stepId, bikeId, jointId, partId } = step;
  const { measured, note, photoIds } = command;
  const joint = jointId === undefined ? undefined : jointOf(rows, jointId);
  const despite = joint && step.kind === 'press' ? wordForBonds(rows, joint, command, now) : undefined;
  const matters = joint?.matters ? true : undefined;
  return [
    present({
      type: 'step-done',
      stepId,
      bikeId,
      jointId,
      partId,
      measured,
      despite,
      note,
      photoIds,
      matters,
    }),
  ];
}
