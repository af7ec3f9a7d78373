import { plausibleTorque } from '../../mechanics/screws/torquePlausible.ts';
import type { TorqueUnit, Typed } from '../../mechanics/units.ts';
import { torqueNm } from '../../mechanics/units.ts';
import { toolState } from '../../planning/toolState.ts';
import { threadNamed } from '../../standards/screws/threads.ts';
import type { CommandOf } from '../commands.ts';
import type { Id, ToolSnapshot } from '../entries.ts';
import type { Rows } from '../fold.ts';
import type { JointRow } from '../rows.ts';
import { type Circumstances, jointOf, positive, present, type Ruling, refuse, stepOf } from './ruling.ts';
import { LONGEST_WAIT_MS } from './waits.ts';

/** Two equal taps on one joint within this are one tap of a trembling knuckle. */
const DOUBLE_TAP_MS = 1500;

/** The bolts of a joint, all fasteners together. */
export function boltsOf(joint: JointRow): number {
  return joint.fasteners.reduce((sum, { count }) => sum + count, 0);
}

/** The thread of a joint, mm, where it is listed and all its screws share it. */
function threadOf(joint: JointRow | undefined): number | undefined {
  const sizes = new Set(joint?.fasteners.map(({ thread }) => threadNamed(thread)?.diameterMm));
  const [only] = sizes;
  return sizes.size === 1 ? only : undefined;
}

/**
 * Refuses what no hand means: not a number, nothing, or a figure the screws of the joint cannot have been given.
 * What may only be a slip of the unit is asked about on the screen and kept as it was.
 */
export function checkTorque(torque: Typed<TorqueUnit>, joint?: JointRow): void {
  const { value, unit } = torque;
  positive(value, Number.MAX_VALUE);
  const plausible = plausibleTorque(torqueNm(value, unit), threadOf(joint));
  if (!plausible.ok && plausible.reason === 'absurd') refuse('absurd-torque', `${torque.typed}`);
}

/** The tool as it stands today, to be kept inside the entry. */
export function snapshotOf(rows: Rows, toolId: Id | undefined, atMs: number): ToolSnapshot | undefined {
  if (toolId === undefined) return undefined;
  const tool = rows.get('tool', toolId) ?? refuse('no-such-tool');
  const { name, minNm, maxNm, lastCheckMs } = tool;
  return present({ toolId, name, minNm, maxNm, lastCheckMs, state: toolState(tool, atMs) });
}

export function applyTorque(rows: Rows, command: CommandOf<'apply-torque'>, now: Circumstances): Ruling {
  const joint = jointOf(rows, command.jointId);
  checkTorque(command.applied, joint);
  const { bolts, passes, stepId } = command;
  if (!Number.isInteger(bolts) || bolts < 1 || !Number.isInteger(passes) || passes < 1)
    refuse('bolts-missing');
  const all = boltsOf(joint);
  if (all > 0 && bolts < all) refuse('bolts-missing', `${bolts} of ${all}`);
  if (stepId !== undefined) {
    const step = stepOf(rows, stepId);
    if (step.kind !== 'torque' || step.jointId !== joint.jointId) refuse('not-a-torque-step', step.title);
    if (step.state === 'done') refuse('already-applied', joint.name);
  }
  const last = joint.applied;
  const same =
    last && last.applied.value === command.applied.value && last.applied.unit === command.applied.unit;
  if (same && command.happenedAtMs === undefined && now.nowMs - last.atMs < DOUBLE_TAP_MS) {
    refuse('double-tap', joint.name);
  }
  const { applied, entered, between, marked, note, photoIds } = command;
  const { jointId, bikeId, matters } = joint;
  const tool = snapshotOf(rows, command.toolId, command.happenedAtMs ?? now.nowMs);
  return [
    present({
      type: 'torque-applied',
      ...{
        jointId,
        bikeId,
        stepId,
        applied,
        entered,
        bolts,
        passes,
        tool,
        between,
        marked,
        note,
        photoIds,
        matters,
      },
    }),
  ];
}

export function handTighten(rows: Rows, command: CommandOf<'hand-tighten'>, now: Circumstances): Ruling {
  const joint = jointOf(rows, command.jointId);
  if (!Number.isInteger(command.bolts) || command.bolts < 1) refuse('bolts-missing');
  if (joint.state === 'hand-tight' && now.nowMs - joint.lastMs < DOUBLE_TAP_MS)
    refuse('double-tap', joint.name);
  const { jointId, bikeId, matters } = joint;
  const { stepId, bolts, note } = command;
  return [present({ type: 'hand-tightened', jointId, bikeId, stepId, bolts, note, matters })];
}

export function applyLocker(rows: Rows, command: CommandOf<'apply-locker'>, now: Circumstances): Ruling {
  const joint = jointOf(rows, command.jointId);
  const { stepId, grade, surface, primer, temperature, waitMs, note, photoIds } = command;
  if (temperature && !Number.isFinite(temperature.value)) refuse('not-a-number');
  positive(waitMs, LONGEST_WAIT_MS);
  if (stepId !== undefined) {
    const step = stepOf(rows, stepId);
    if (step.kind === 'lock' && step.state === 'done') refuse('already-done', step.title);
  }
  if (joint.locked && now.nowMs - joint.locked.atMs < DOUBLE_TAP_MS) refuse('double-tap', joint.name);
  const { jointId, bikeId, matters, name: title } = joint;
  // A locker put on during a torque step must not finish that step.
  const lockStepId = stepId !== undefined && stepOf(rows, stepId).kind === 'lock' ? stepId : undefined;
  return [
    present({
      type: 'locker-applied',
      ...{
        jointId,
        bikeId,
        stepId: lockStepId,
        waitId: now.newId(),
        title,
        grade,
        surface,
        primer,
        temperature,
        waitMs,
      },
      ...{ note, photoIds, matters },
    }),
  ];
}
