import { jointToBuild } from '../../planning/jointToBuild.ts';
import { orderedJoints } from '../../planning/orderedJoints.ts';
import { breachWords, newBreach, placeInOrder } from '../../planning/placeInOrder.ts';
import { stepsFor } from '../../planning/stepOrder.ts';
import { inWorkOrder, type JointsById } from '../../planning/workPairs.ts';
import type { CommandOf } from '../commands.ts';
import { stepsByChange } from '../cutSteps.ts';
import type { EntryBody, Id, StepKind } from '../entries.ts';
import type { Rows } from '../fold.ts';
import { freeName } from '../freeName.ts';
import type { StepRow } from '../rows.ts';
import { stepList } from '../stepList.ts';
import { wordForBonds } from './bonds.ts';
import {
  bikeOf,
  type Circumstances,
  freshId,
  jointOf,
  partOf,
  present,
  type Ruling,
  refuse,
  stepOf,
  words,
} from './ruling.ts';

/** Room between two ranks, so that many steps fit between before the halves grow too small. */
const GAP = 1024;

function stepsOf(rows: Rows, bikeId: Id): StepRow[] {
  return stepList(rows.group('step', `step@${bikeId}`));
}

/** The place behind a given step, before all others, or at the end. */
function indexAfter(steps: readonly StepRow[], afterStepId: Id | null | undefined): number {
  if (afterStepId === null) return 0;
  const at = steps.findIndex((step) => step.stepId === afterStepId);
  return at === -1 ? steps.length : at + 1;
}

/** The rank of what is put at a place of a list. */
function rankAt(steps: readonly { rank: number }[], index: number): number {
  const [before, after] = [steps[index - 1], steps[index]];
  if (before && after) return (before.rank + after.rank) / 2;
  return after ? after.rank - GAP : (before?.rank ?? 0) + GAP;
}

/** The joints of a bike as the order of work sees them. */
function jointsInOrder(rows: Rows, bikeId: Id): JointsById {
  return orderedJoints(rows.group('joint', `joint@${bikeId}`), rows.group('part', `part@${bikeId}`));
}

const together: readonly StepKind[] = ['fit', 'press', 'seat'];

/**
 * What a step does, so that it is not planned twice: a joint is put together once, whichever way. Earlier versions knew no
 * kinds of work.
 */
const taskOf = ({
  kind,
  jointId,
  work,
  title,
}: Pick<StepRow, 'kind' | 'jointId' | 'work' | 'title'>): string =>
  `${jointId && together.includes(kind) ? 'together' : kind}:${jointId ?? title}:${work ?? ''}`;

const titlesOf = (steps: readonly StepRow[], but?: Id): string[] =>
  steps.flatMap(({ stepId, title }) => (stepId === but ? [] : title));

/** The joints and parts of the bike as steps in a sensible order; what is in the list already stays. */
export function planSteps(rows: Rows, command: CommandOf<'plan-steps'>, now: Circumstances): Ruling {
  const { bikeId } = bikeOf(rows, command.bikeId);
  const joints = rows.group('joint', `joint@${bikeId}`).filter(({ state }) => state !== 'apart');
  const named = joints.flatMap(({ partIds, between }) => [
    ...partIds,
    ...between.flatMap(({ partId }) => partId ?? []),
  ]);
  const onBike = rows.group('part', `part@${bikeId}`);
  // A part that has left the bike still gives its name to a joint that was not taken apart.
  const away = named.filter((id) => !onBike.some(({ partId }) => partId === id));
  const parts = [...onBike, ...[...new Set(away)].flatMap((id) => rows.get('part', id) ?? [])];
  const existing = stepsOf(rows, bikeId);
  const have = new Set(existing.map(taskOf));
  const toBuild = joints.map((joint) => jointToBuild(joint, joints, parts));
  const ordered = orderedJoints(joints, parts);
  const planned = inWorkOrder(stepsFor(toBuild), ordered).filter((step) => !have.has(taskOf(step)));
  if (planned.length === 0) refuse('nothing-to-plan');
  const taken = titlesOf(existing);
  const list: Pick<StepRow, 'kind' | 'jointId' | 'partId' | 'work' | 'title' | 'rank' | 'state'>[] = [
    ...existing,
  ];
  return planned.map((step): EntryBody => {
    const title = freeName(step.title, taken);
    taken.push(title);
    const index = placeInOrder(list, step, list.length, ordered);
    const rank = rankAt(list, index);
    list.splice(index, 0, { ...step, title, rank, state: 'open' });
    return present({ type: 'step-added', stepId: now.newId(), bikeId, ...step, title, rank });
  });
}

export function addStep(rows: Rows, command: CommandOf<'add-step'>, now: Circumstances): Ruling {
  const { bikeId } = bikeOf(rows, command.bikeId);
  const { kind, detail, jointId, partId, work } = command;
  const stepId = freshId(rows, 'step', command.stepId, now);
  const steps = stepsOf(rows, bikeId);
  const title = freeName(words(command.title, 'name-missing'), titlesOf(steps));
  if (jointId !== undefined) jointOf(rows, jointId);
  const about = { kind, title, detail, jointId, partId, work };
  const wanted = indexAfter(steps, command.afterStepId);
  const joints = jointsInOrder(rows, bikeId);
  const fitting = placeInOrder(steps, about, wanted, joints);
  const breach = command.afterStepId === undefined ? undefined : newBreach(steps, about, wanted, joints);
  // Where the list is the wrong way round already there is no better place.
  if (breach && !newBreach(steps, about, fitting, joints)) refuse('out-of-order', breachWords(breach));
  const index = command.afterStepId === undefined ? fitting : wanted;
  return [present({ type: 'step-added', stepId, bikeId, ...about, rank: rankAt(steps, index) })];
}

export function describeStep(rows: Rows, command: CommandOf<'describe-step'>): Ruling {
  const { stepId, bikeId } = stepOf(rows, command.stepId);
  const { detail, kind } = command;
  const others = titlesOf(stepsOf(rows, bikeId), stepId);
  const title =
    command.title === undefined ? undefined : freeName(words(command.title, 'name-missing'), others);
  return [present({ type: 'step-described', stepId, bikeId, title, detail, kind })];
}

export function moveStep(rows: Rows, command: CommandOf<'move-step'>): Ruling {
  const step = stepOf(rows, command.stepId);
  const { stepId, bikeId } = step;
  if (command.afterStepId === stepId) refuse('nothing-changes');
  const all = stepsOf(rows, bikeId);
  const from = all.findIndex((one) => one.stepId === stepId);
  const others = all.filter((one) => one.stepId !== stepId);
  const to = indexAfter(others, command.afterStepId);
  const breach = newBreach(others, step, to, jointsInOrder(rows, bikeId), from);
  if (breach) refuse('out-of-order', breachWords(breach));
  return [{ type: 'step-moved', stepId, bikeId, rank: rankAt(others, to) }];
}

export function splitStep(rows: Rows, command: CommandOf<'split-step'>, now: Circumstances): Ruling {
  const step = stepOf(rows, command.stepId);
  const titles = command.titles.map((title) => title.trim()).filter((title) => title !== '');
  if (titles.length < 2) refuse('split-into-one');
  if (step.state !== 'open') refuse('already-done', step.title);
  const { bikeId, kind, detail, jointId, partId, work } = step;
  const all = stepsOf(rows, bikeId);
  const next = all[all.findIndex((other) => other.stepId === step.stepId) + 1];
  const room = (next ? next.rank - step.rank : GAP) / titles.length;
  const taken = titlesOf(all, step.stepId);
  const added = titles.map((wanted, index) => {
    const title = freeName(wanted, taken);
    taken.push(title);
    return present({
      type: 'step-added' as const,
      ...{ stepId: now.newId(), bikeId, kind, title, detail, jointId, partId, work },
      rank: step.rank + room * index,
    });
  });
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
  if (step.kind === 'cut' && partId !== undefined) {
    const part = partOf(rows, partId);
    const steps = stepsOf(rows, bikeId);
    const done = { ...step, state: 'done', doneAtMs: command.happenedAtMs ?? now.nowMs } as const;
    const withIt = steps.map((one) => (one.stepId === stepId ? done : one));
    if (stepsByChange(part, withIt).size === stepsByChange(part, steps).size)
      refuse('change-not-logged', step.title);
  }
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
