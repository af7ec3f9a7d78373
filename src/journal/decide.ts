import { checkEntry } from './checkEntry.ts';
import type { Command, CommandType, Refused } from './commands.ts';
import * as bikes from './decide/bikes.ts';
import * as checks from './decide/checks.ts';
import * as corrections from './decide/corrections.ts';
import * as joints from './decide/joints.ts';
import * as parts from './decide/parts.ts';
import * as rechecks from './decide/rechecks.ts';
import {
  type Circumstances,
  checkTime,
  headed,
  RefusedCommand,
  type Ruling,
  refuse,
} from './decide/ruling.ts';
import * as steps from './decide/steps.ts';
import * as tools from './decide/tools.ts';
import * as torque from './decide/torque.ts';
import * as waits from './decide/waits.ts';
import * as wheels from './decide/wheels.ts';
import { ENTRY_VERSION, type Entry, type Id } from './entries.ts';
import type { Rows } from './fold.ts';
import { firstTap } from './secondTap.ts';

type Decider<T extends CommandType> = (
  rows: Rows,
  command: Extract<Command, { type: T }>,
  now: Circumstances,
) => Ruling;

const deciders: { [T in CommandType]: Decider<T> } = {
  'start-bike': bikes.startBike,
  'describe-bike': bikes.describeBike,
  'put-bike-away': bikes.putBikeAway,
  'take-bike-out': bikes.takeBikeOut,
  'withdraw-release': bikes.withdrawRelease,
  'add-note': bikes.addNote,
  'accept-finding': bikes.acceptFinding,
  'note-finding': bikes.noteFinding,
  'add-part': parts.addPart,
  'describe-part': parts.describePart,
  'move-part': parts.movePart,
  'change-part': parts.changePart,
  'make-joint': joints.makeJoint,
  'describe-joint': joints.describeJoint,
  'take-joint-apart': joints.takeJointApart,
  'plan-steps': steps.planSteps,
  'add-step': steps.addStep,
  'describe-step': steps.describeStep,
  'move-step': steps.moveStep,
  'split-step': steps.splitStep,
  'drop-step': steps.dropStep,
  'skip-step': steps.skipStep,
  'reopen-step': steps.reopenStep,
  'open-step': steps.openStep,
  'finish-step': steps.finishStep,
  'apply-torque': torque.applyTorque,
  'hand-tighten': torque.handTighten,
  'apply-locker': torque.applyLocker,
  'start-wait': waits.startWait,
  'end-wait': waits.endWait,
  'change-wait': waits.changeWait,
  'shift-waits': waits.shiftWaits,
  'mark-seal': waits.markSeal,
  'make-wheel': wheels.makeWheel,
  'describe-wheel': wheels.describeWheel,
  'read-wheel': wheels.readWheel,
  'take-wheel-apart': wheels.takeWheelApart,
  'move-wheel': wheels.moveWheel,
  'add-tool': tools.addTool,
  'describe-tool': tools.describeTool,
  'put-tool-away': tools.putToolAway,
  'find-tool-out': tools.findToolOut,
  'find-defect': checks.findDefect,
  'close-defect': checks.closeDefect,
  'confirm-ride-check': checks.confirmRideCheck,
  'release-bike': checks.releaseBike,
  'log-ride': rechecks.logRide,
  'set-recheck': rechecks.setRecheck,
  'change-recheck': rechecks.changeRecheck,
  'drop-recheck': rechecks.dropRecheck,
  'find-torque': rechecks.findTorque,
  'answer-recheck': rechecks.answerRecheck,
  undo: corrections.undo,
  correct: corrections.correct,
  'change-settings': (_rows, { change }) => [{ type: 'settings-changed', change }],
};

/** Whether an entry was taken back, so that the same may be asked again at once. */
const struckOut = (rows: Rows, entryId: Id): boolean =>
  rows.get('fix', entryId)?.fixes.some(({ becomes, struckOut: undone }) => becomes === null && !undone) ===
  true;

/**
 * What a command amounts to. Pure and synchronous: the same rows, command and circumstances give the same
 * entries, so that it can run inside one transaction and be run again when a row was not fetched yet.
 * @param rows the store as the transaction sees it
 * @param command what was asked
 * @param now clock, zone and new ids
 * @param asked the sum of what was asked, of the whole list where this is the first of one: what was asked just now
 *   already is refused, unless a more particular refusal holds
 * @returns entries to append, in order, or a named refusal; nothing is changed here
 */
export function decide(
  rows: Rows,
  command: Command,
  now: Circumstances,
  asked: string | undefined = undefined,
): Entry[] | Refused {
  try {
    checkTime(command.happenedAtMs, now);
    const decider = Object.hasOwn(deciders, command.type) ? deciders[command.type] : refuse('malformed');
    const bodies = (decider as Decider<CommandType>)(rows, command, now);
    for (const body of bodies) checkEntry(rows, body);
    const first = asked === undefined ? undefined : firstTap(rows.recent(), asked, now.nowMs);
    if (first && !struckOut(rows, first.id)) refuse('double-tap');
    const [head, ...others] = headed(rows, bodies, command, now, ENTRY_VERSION);
    if (!head) return [];
    return [asked === undefined ? head : { ...head, asked }, ...others];
  } catch (thrown) {
    if (thrown instanceof RefusedCommand) return thrown.refused;
    throw thrown;
  }
}
