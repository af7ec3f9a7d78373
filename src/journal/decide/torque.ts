import { lockerWait, nearDiscBrake } from '../../planning/lockerWait.ts';
import { toolState } from '../../planning/toolState.ts';
import type { CommandOf, LockerOn } from '../commands.ts';
import type { BetweenKind, EntryBody, Id, ToolSnapshot } from '../entries.ts';
import type { Rows } from '../fold.ts';
import type { JointRow } from '../rows.ts';
import { wordForBonds } from './bonds.ts';
import { refuseWithoutParts, startedBy } from './joints.ts';
import {
  type Circumstances,
  freshId,
  jointOf,
  present,
  type Ruling,
  refuse,
  stepOf,
  words,
} from './ruling.ts';

/** The tool as it stands today, to be kept inside the entry. */
export function snapshotOf(rows: Rows, toolId: Id | undefined, atMs: number): ToolSnapshot | undefined {
  if (toolId === undefined) return undefined;
  const tool = rows.get('tool', toolId) ?? refuse('no-such-tool');
  const { name, minNm, maxNm, lastCheckMs } = tool;
  return present({ toolId, name, minNm, maxNm, lastCheckMs, state: toolState(tool, atMs) });
}

export function applyTorque(rows: Rows, command: CommandOf<'apply-torque'>, now: Circumstances): Ruling {
  const joint = jointOf(rows, command.jointId);
  refuseWithoutParts(rows, joint);
  const { bolts, passes, stepId } = command;
  if (stepId !== undefined) {
    const step = stepOf(rows, stepId);
    if (step.kind !== 'torque' || step.jointId !== joint.jointId) refuse('not-a-torque-step', step.title);
    if (step.state === 'done') refuse('already-applied', joint.name);
  }
  const despite = wordForBonds(rows, joint, command, now);
  const { applied, entered, between, marked, note, photoIds } = command;
  const { jointId, bikeId, matters } = joint;
  const tool = snapshotOf(rows, command.toolId, command.happenedAtMs ?? now.nowMs);
  const torque: EntryBody = present({
    type: 'torque-applied',
    ...{ jointId, bikeId, stepId, applied, entered, bolts, passes, tool, between, marked },
    ...{ despite, note, photoIds, matters },
  });
  return [...withLocker(rows, joint, command, now), torque];
}

const when = ({ happenedAtMs }: { happenedAtMs?: number }) =>
  happenedAtMs === undefined ? {} : { happenedAtMs };

/**
 * Threadlocker that went on before a torque: named with it, or only known to lie on the threads.
 * @param command what was tightened, with what was put on its threads
 */
export function withLocker(
  rows: Rows,
  joint: JointRow,
  command: { between?: BetweenKind; locker?: LockerOn; happenedAtMs?: number },
  now: Circumstances,
): EntryBody[] {
  const { between, locker, happenedAtMs = now.nowMs } = command;
  const unsaid = between === 'threadlocker' && !wetStill(rows, joint, happenedAtMs);
  const fresh = locker ?? (unsaid ? unnamedLocker(joint) : undefined);
  return fresh ? freshLocker(rows, joint, { ...fresh, ...when(command) }, now) : [];
}

/**
 * Whether threadlocker went on since the joint was last tightened and is wet: this torque closes it up, and adds no
 * more. Once its cure is over, or once the joint was met moved, what goes on is fresh.
 */
function wetStill(rows: Rows, { locked, applied }: JointRow, atMs: number): boolean {
  if (!locked || locked.atMs <= (applied?.atMs ?? Number.NEGATIVE_INFINITY)) return false;
  const dueAtMs = rows.get('wait', locked.waitId)?.dueAtMs;
  return locked.brokenAtMs === undefined && dueAtMs !== undefined && dueAtMs > atMs;
}

export function handTighten(rows: Rows, command: CommandOf<'hand-tighten'>): Ruling {
  const joint = jointOf(rows, command.jointId);
  refuseWithoutParts(rows, joint);
  const { jointId, bikeId, matters } = joint;
  const { stepId, bolts, note } = command;
  return [present({ type: 'hand-tightened', jointId, bikeId, stepId, bolts, note, matters })];
}

/** Threadlocker of which only is known that it went on: as the slowest usual case, a medium grade in steel. */
function unnamedLocker(joint: JointRow): LockerOn {
  const usual = lockerWait({
    ...{ grade: 'medium', surface: 'steel', primer: false, temperatureC: USUAL_C },
    nearDiscBrake: nearDiscBrake(joint),
  });
  if (!usual.ok) throw new RangeError(`the usual threadlocker has no cure: ${usual.reason}`);
  return { grade: 'medium', surface: 'steel', primer: false, waitMs: usual.waitMs };
}

/** The warmth of a workshop, °C, where it was not said. Common practice, no source. */
const USUAL_C = 20;

/** Fresh threadlocker: it ends the cure that runs in the joint and begins one of its own. */
function freshLocker(
  rows: Rows,
  joint: JointRow,
  locker: LockerOn & { stepId?: Id; waitId?: Id; note?: string; photoIds?: Id[]; happenedAtMs?: number },
  now: Circumstances,
): EntryBody[] {
  const { jointId, bikeId, matters, name: title } = joint;
  const { stepId, grade, surface, primer, temperature, gap, waitMs, note, photoIds } = locker;
  const waitId = freshId(rows, 'wait', locker.waitId, now);
  return [
    ...curesEnded(rows, joint, startedBy(locker)),
    present({
      type: 'locker-applied',
      ...{ jointId, bikeId, stepId, waitId, title },
      ...{ grade, surface, primer, temperature, gap, waitMs, note, photoIds, matters },
    }),
    ...ownWait(locker, { waitId, bikeId, jointId }),
  ];
}

/** The wait a person sets in place of the one reckoned, with the reason. */
function ownWait({ own }: LockerOn, about: { waitId: Id; bikeId: Id; jointId?: Id }): EntryBody[] {
  if (!own) return [];
  const { waitMs, why } = own;
  return [present({ type: 'wait-changed', ...about, waitMs, why: words(why, 'reason-missing') })];
}

function curesEnded(rows: Rows, { jointId, bikeId }: JointRow, byMs: number): EntryBody[] {
  return rows
    .group('wait', `wait@${bikeId}`)
    .filter((wait) => wait.jointId === jointId && wait.waitKind === 'cure' && wait.startedAtMs <= byMs)
    .map(({ waitId }) => ({ type: 'wait-ended', waitId, bikeId, jointId, outcome: 'no-longer-needed' }));
}

export function applyLocker(rows: Rows, command: CommandOf<'apply-locker'>, now: Circumstances): Ruling {
  const step = command.stepId === undefined ? undefined : stepOf(rows, command.stepId);
  if (step?.kind === 'lock' && step.state === 'done') refuse('already-done', step.title);
  // Threadlocker put on during a torque step does not finish that step.
  const stepId = step?.kind === 'lock' ? step.stepId : undefined;
  const jointId = command.jointId ?? step?.jointId;
  if (jointId !== undefined) {
    const joint = jointOf(rows, jointId);
    refuseWithoutParts(rows, joint);
    return freshLocker(rows, joint, { ...command, stepId }, now);
  }
  if (step?.kind !== 'lock') return refuse('no-such-joint');
  const { bikeId, title } = step;
  const { grade, surface, primer, temperature, gap, waitMs, note, photoIds } = command;
  const waitId = freshId(rows, 'wait', command.waitId, now);
  return [
    present({
      type: 'locker-applied',
      ...{ bikeId, stepId: step.stepId, waitId, title, grade, surface, primer, temperature, gap, waitMs },
      // Without a joint it is not known what hangs on it, so it counts as what matters.
      ...{ note, photoIds, matters: true },
    }),
    ...ownWait(command, { waitId, bikeId }),
  ];
}
