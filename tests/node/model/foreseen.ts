import type { Command, CommandOf, CommandType } from '../../../src/journal/commands.ts';
import type { Entry, Id } from '../../../src/journal/entries.ts';
import { rideCheck } from '../../../src/standards/checks/rideCheck.ts';
import type { ModelAnswers } from './modelAnswers.ts';
import { beginningOf, counts, field, is, type Thing } from './reading.ts';

/** A command that was carried out, and when. */
export interface CarriedOut {
  asked: string;
  writtenAtMs: number;
  entryIds: Id[];
}

export interface Circumstances {
  model: ModelAnswers;
  /** The lines of the journal. */
  all: readonly Entry[];
  nowMs: number;
  carriedOut: readonly CarriedOut[];
}

/** [C1] Undo strikes out within ten seconds; a hand on its way when they end may still be heard. */
const UNDO_MS = 15_000;
/** [J11] Two equal commands within this are a double tap. */
const DOUBLE_TAP_MS = 1500;

export const askedAs = (command: Command | readonly Command[]): string => JSON.stringify(command);

/** [J11] Whether an equal command was carried out just before; `unsure` where it was struck out since. */
export function doubleTap(
  command: Command | readonly Command[],
  { all, nowMs, carriedOut }: Circumstances,
): 'yes' | 'no' | 'unsure' {
  const asked = askedAs(command);
  const equal = carriedOut.filter((one) => {
    const span = nowMs - one.writtenAtMs;
    return one.asked === asked && span >= 0 && span < DOUBLE_TAP_MS && one.entryIds.length > 0;
  });
  if (equal.length === 0) return 'no';
  const standing = equal.some(({ entryIds }) =>
    entryIds.every((id) => all.some((entry) => entry.id === id && counts(entry, all))),
  );
  return standing ? 'yes' : 'unsure';
}

/** Which bikes, parts and so on a command speaks of, and whether they are there. */
function unknownThings(command: Command, { model, all }: Circumstances): string[] {
  const speaks = command as unknown as Record<string, unknown>;
  const makes: Partial<Record<CommandType, string>> = {
    'start-bike': 'bikeId',
    'add-part': 'partId',
    'make-joint': 'jointId',
    'add-step': 'stepId',
    'set-recheck': 'recheckId',
    'find-defect': 'defectId',
    'start-wait': 'waitId',
    'apply-locker': 'waitId',
  };
  const things = ['bike', 'part', 'joint', 'step', 'wait', 'recheck', 'defect'] as const;
  const unknown = things.filter((thing) => {
    const id = speaks[`${thing}Id`];
    if (typeof id !== 'string' || makes[command.type] === `${thing}Id`) return false;
    return beginningOf(thing, id, model.read) === undefined;
  });
  const entryIds = [speaks['entryId'], ...((speaks['entryIds'] as Id[] | undefined) ?? [])];
  const strange = entryIds.some((id) => id !== undefined && !all.some((entry) => entry.id === id));
  return [...unknown.map((thing) => `no-such-${thing}`), ...(strange ? ['no-such-entry'] : [])];
}

type Judge<T extends CommandType> = (command: CommandOf<T>, at: Circumstances) => string | false | undefined;
type Judges = { [T in CommandType]?: Judge<T> };

const isApart = (jointId: Id, { model }: Circumstances) => model.joints.get(jointId)?.state === 'apart';

/** [T6] A joint that is apart while one of its parts is elsewhere takes no tool. */
function partElsewhere(jointId: Id, at: Circumstances): string | false {
  const joint = at.model.joints.get(jointId);
  if (joint?.state !== 'apart') return false;
  const away = joint.partIds.some((id) => {
    const place = at.model.parts.get(id)?.place;
    return place?.on !== 'bike' || place.bikeId !== joint.bikeId;
  });
  return away && 'T6 part-not-on-this-bike';
}

/** [J10] What is struck out cannot be corrected or struck out again. */
const struckOut = (entryId: Id, { all }: Circumstances): boolean =>
  all.some((entry) => entry.id === entryId && !counts(entry, all));

function releaseStops({ bikeId, statement }: CommandOf<'release-bike'>, { model, nowMs }: Circumstances) {
  if (statement === 'not-to-ride') return false;
  const loose = [...model.joints.values()].some(
    (joint) => joint.bikeId === bikeId && joint.matters && joint.state === 'hand-tight',
  );
  const defect = [...model.defects.values()].some(
    ({ bikeId: on, open, decision, dueAtMs }) =>
      on === bikeId && open && (decision === 'do-not-ride' || (dueAtMs !== undefined && dueAtMs <= nowMs)),
  );
  const confirmed = model.read.filter(is('ride-check-confirmed')).filter((check) => check.bikeId === bikeId);
  const unchecked = rideCheck.some(({ id }) => !confirmed.some(({ groupId }) => groupId === id));
  return (
    (loose && 'L1 hand-tight on a joint that matters') ||
    (defect && 'L1, L6 a defect that stops it') ||
    (unchecked && 'L1 a group of the pre-ride check never confirmed')
  );
}

/** By kind of command: the rule that refuses it as things stand, if one does. */
const judges: Judges = {
  'apply-torque': (command, at) => {
    const { jointId, stepId, bolts } = command;
    const joint = at.model.joints.get(jointId);
    const step = stepId === undefined ? undefined : at.model.steps.get(stepId);
    return (
      partElsewhere(jointId, at) ||
      (joint && bolts < joint.bolts && 'T4 bolts-missing') ||
      (step && !step.unsure && step.state === 'done' && 'T2 already-applied')
    );
  },
  'hand-tighten': ({ jointId }, at) => partElsewhere(jointId, at),
  'apply-locker': ({ jointId }, at) => jointId !== undefined && partElsewhere(jointId, at),
  'mark-seal': ({ jointId }, at) => partElsewhere(jointId, at),
  'take-joint-apart': ({ jointId }, at) => isApart(jointId, at) && 'joint-apart',
  // What was met moved may be told however it was met.
  'find-torque': ({ jointId, way, outcome }, at) =>
    way === 'tightening' &&
    outcome === 'held' &&
    at.model.joints.get(jointId)?.locked !== undefined &&
    'R3 turning-breaks-the-bond',
  'move-part': ({ partId, to }, at) => {
    const place = at.model.parts.get(partId)?.place;
    return place?.on === 'bike' && to.on === 'bike' && place.bikeId === to.bikeId && 'P1 same-place';
  },
  'make-joint': ({ bikeId, partIds }, { model }) =>
    partIds.some((id) => {
      const place = model.parts.get(id)?.place;
      return place?.on !== 'bike' || place.bikeId !== bikeId;
    }) && 'part-not-on-this-bike',
  'finish-step': ({ stepId }, { model }) => {
    const step = model.steps.get(stepId);
    return step && !step.unsure && step.state === 'done' && 'already-done';
  },
  'skip-step': ({ stepId }, { model }) => {
    const step = model.steps.get(stepId);
    return step && !step.unsure && (step.state === 'skipped' || step.state === 'done') && 'already';
  },
  'end-wait': ({ waitId }, { model }) => model.waits.get(waitId)?.running === false && 'already-ended',
  'change-wait': ({ waitId }, { model }) => model.waits.get(waitId)?.running === false && 'already-ended',
  'answer-recheck': ({ recheckId }, { model }) =>
    model.rechecks.get(recheckId)?.open === false && 'already-answered',
  'close-defect': ({ defectId }, { model }) =>
    model.defects.get(defectId)?.open === false && 'already-closed',
  'find-defect': ({ decision, jointId, untilKm, untilMs, restriction }, { model }) => {
    if (decision !== 'ride-limited') return false;
    const matters = jointId !== undefined && model.joints.get(jointId)?.matters;
    const bare = untilKm === undefined && untilMs === undefined && restriction === undefined;
    return (matters && 'L4 must-not-be-deferred') || (bare && 'limit-missing');
  },
  'release-bike': releaseStops,
  'withdraw-release': ({ bikeId }, { model }) => {
    const bike = model.bikes.get(bikeId);
    return bike && (!bike.release || bike.release.withdrawn) && 'not-released';
  },
  'confirm-ride-check': ({ bikeId, groupId, items }, { model }) => {
    const group = rideCheck.find(({ id }) => id === groupId);
    if (!group) return 'unknown group';
    const once = new Set(items.map(({ itemId }) => itemId));
    const whole = group.items.every(({ id }) => once.has(id)) && once.size === items.length;
    const absent = (id: string) => items.some(({ itemId, absent: none }) => itemId === id && none);
    const racked = [...model.joints.values()].some(
      (joint) =>
        joint.bikeId === bikeId && joint.state !== 'apart' && ['rack', 'mudguard'].includes(joint.kind),
    );
    return (
      (!whole && 'check-incomplete') ||
      (absent('drop') && 'L8 must-be-done') ||
      (absent('rack-and-guards') && racked && 'L8 is-fitted')
    );
  },
  'log-ride': ({ km, minutes }) => km === undefined && minutes === undefined && 'ride-empty',
  'shift-waits': (command, { model }) => {
    const change = field(command as unknown as Entry, 'changeId');
    const running = [...model.waits.values()].filter((wait) => wait.running);
    if (typeof change !== 'string' || running.length === 0) return false;
    return running.every(({ clockChanges }) => clockChanges.includes(change)) && 'W2 already-answered';
  },
  undo: ({ entryIds }, at) => {
    const known = at.all.filter(({ id }) => entryIds.includes(id));
    const late = known.some(({ writtenAtMs }) => at.nowMs - writtenAtMs > UNDO_MS);
    return (late && 'C1 undo-too-late') || (entryIds.some((id) => struckOut(id, at)) && 'C1 already-undone');
  },
  correct: ({ entryId, reason, becomes }, at) => {
    const entry = at.model.read.find(({ id }) => id === entryId);
    const same =
      entry !== undefined &&
      becomes !== null &&
      Object.entries(becomes).every(
        ([name, value]) => JSON.stringify(field(entry, name)) === JSON.stringify(value),
      );
    const about = Object.keys(becomes ?? {}).some((name) => name.endsWith('Id') || name === 'id');
    return (
      (reason.trim() === '' && 'C2 reason-missing') ||
      (struckOut(entryId, at) && 'J10 already-undone') ||
      (about && 'J10 cannot-be-corrected') ||
      (same && 'J10 nothing-changes')
    );
  },
};

/** [J12] The field with which a command names what it makes. */
const madeBy: Partial<Record<CommandType, [Thing, string]>> = {
  'start-bike': ['bike', 'bikeId'],
  'add-part': ['part', 'partId'],
  'make-joint': ['joint', 'jointId'],
  'add-step': ['step', 'stepId'],
  'start-wait': ['wait', 'waitId'],
  'apply-locker': ['wait', 'waitId'],
  'find-defect': ['defect', 'defectId'],
  'set-recheck': ['recheck', 'recheckId'],
};

function alreadyThere(command: Command, { model }: Circumstances): boolean {
  const [thing, name] = madeBy[command.type] ?? [];
  const id = name && (command as unknown as Record<string, unknown>)[name];
  return thing !== undefined && typeof id === 'string' && beginningOf(thing, id, model.read) !== undefined;
}

/**
 * The rules that refuse a command, as far as the model knows them. Where it is written down late, only those
 * that do not depend on how things stand now.
 */
export function foreseenRefusals(command: Command, at: Circumstances): string[] {
  const found = unknownThings(command, at);
  if (doubleTap(command, at) === 'yes') found.push('J11 double-tap');
  if (alreadyThere(command, at)) found.push('J12 already-there');
  const { happenedAtMs } = command;
  if (happenedAtMs !== undefined && happenedAtMs > at.nowMs + 60_000) found.push('C3 in-the-future');
  const judge = judges[command.type] as Judge<CommandType> | undefined;
  if (happenedAtMs === undefined && found.length === 0 && judge) {
    const rule = judge(command, at);
    if (rule) found.push(rule);
  }
  return found;
}

/** The commands that nothing but the rules above can stand in the way of. */
const plain: ReadonlySet<CommandType> = new Set([
  ...(['log-ride', 'start-wait', 'add-note', 'hand-tighten', 'end-wait', 'close-defect'] as const),
  ...(['skip-step', 'take-joint-apart', 'confirm-ride-check'] as const),
]);

/** Whether a command must be carried out: it is plain, happens now, and no rule refuses it. */
export function mustBeDone(command: Command, at: Circumstances): boolean {
  const first = command.type === 'hand-tighten' && isApart(command.jointId, at);
  return (
    plain.has(command.type) &&
    command.happenedAtMs === undefined &&
    !first &&
    doubleTap(command, at) === 'no' &&
    foreseenRefusals(command, at).length === 0
  );
}
