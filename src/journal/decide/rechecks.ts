import { boltCount } from '../../mechanics/screws/boltCount.ts';
import { headsetCap } from '../../planning/jointToBuild.ts';
import { pullFigure } from '../../standards/checks/pullFigure.ts';
import { pullInstructions } from '../../standards/checks/pullInstructions.ts';
import {
  type InstructionKind,
  recheckInstructions,
  recheckRows,
  type ScheduleRow,
  spanOfTurn,
} from '../../standards/checks/recheckSchedule.ts';
import { headsetWords, jointWork } from '../../standards/jointWork.ts';
import type { CommandOf } from '../commands.ts';
import type { EntryBody, Id } from '../entries.ts';
import type { Rows } from '../fold.ts';
import { compareStanding } from '../order.ts';
import type { JointRow, RecheckRow } from '../rows.ts';
import { checkTitle } from '../titleToday.ts';
import { takenBack } from './checks.ts';
import { startedBy } from './joints.ts';
import {
  bikeOf,
  type Circumstances,
  dueAt,
  freshId,
  jointOf,
  present,
  type Ruling,
  refuse,
  words,
} from './ruling.ts';
import { snapshotOf, withLocker } from './torque.ts';

function recheckOf(rows: Rows, recheckId: Id): RecheckRow {
  const recheck = rows.get('recheck', recheckId) ?? refuse('no-such-recheck');
  if (recheck.answeredAtMs !== undefined || recheck.dropped !== undefined)
    refuse('already-answered', recheck.title);
  return recheck;
}

interface Span {
  rides?: number;
  km?: number;
  days?: number;
}

/** The owner's own span where one is set, else the table's; null where nothing more is due. */
function spanFor(rows: Rows, joint: JointRow, row: ScheduleRow, turn: number): Span | null {
  const own = rows.get('settings', 'app')?.settings.schedule?.[
    `${joint.kind}:${row.instruction}:${Math.min(turn, 2)}`
  ];
  if (own !== undefined) return own;
  const span = spanOfTurn(row, turn);
  return span && { rides: span.afterRides, km: span.km, days: span.days };
}

/** What a check of this joint asks for, by the figure there is today and the parts of its bike. */
export function instructionFor(
  rows: Rows,
  joint: JointRow,
  kind: InstructionKind,
): { title: string; words: string } {
  const asked = kind === 'retorque' ? pullInstructions[pullFigure(joint)] : recheckInstructions[kind];
  const title = checkTitle(joint.name, asked.title);
  if (kind === 'inspect') return { title, words: jointWork[joint.kind].again ?? asked.words };
  if (kind !== 'headset') return { title, words: asked.words };
  const cap = headsetCap(rows.group('part', `part@${joint.bikeId}`));
  return { title, words: `${asked.words} If there is play: ${headsetWords[cap]}` };
}

/** The re-check of a joint for one turn of its schedule, or nothing where the schedule has ended. */
function turnOf(
  rows: Rows,
  joint: JointRow,
  row: ScheduleRow,
  turn: number,
  now: Circumstances,
  atMs: number,
  given: Id | undefined,
): EntryBody[] {
  const span = spanFor(rows, joint, row, turn);
  if (!span) return [];
  const { title, words: instruction } = instructionFor(rows, joint, row.instruction);
  return [
    present({
      type: 'recheck-set',
      recheckId: freshId(rows, 'recheck', given, now),
      bikeId: joint.bikeId,
      jointId: joint.jointId,
      kind: row.instruction,
      title,
      instruction,
      dueRides: span.rides,
      dueKm: span.km,
      dueDays: span.days,
      dueAtMs: dueAt(atMs, span.days),
      turn,
    }),
  ];
}

/** Whether threadlocker sits in the joint, so that a pull would break what has cured. */
function cured(joint: JointRow): boolean {
  return joint.locked !== undefined;
}

/**
 * The limits of distance that this ride brings to their end: what it was ridden with until now is to be mended.
 * @param byMs what was found later than this ride was not ridden with
 */
function limitsReached(rows: Rows, bikeId: Id, km: number | undefined, byMs: number): string[] {
  if (km === undefined) return [];
  const log = rows.get('rides', bikeId)?.log ?? [];
  return rows
    .group('defect', `defect@${bikeId}`)
    .filter(({ untilKm, reachedAtMs, foundOrder }) => {
      if (untilKm === undefined || reachedAtMs !== undefined || foundOrder.ms > byMs) return false;
      const since = log.filter((ride) => compareStanding(ride, foundOrder) > 0);
      return since.reduce((sum, ride) => sum + ride.km, km) >= untilKm;
    })
    .map(({ words: text, untilKm }) => `${text}: the limit of ${untilKm} km is ridden`);
}

/**
 * A ride. The first one makes a re-check of every joint due, each in the way the joint can bear; a later
 * one does so for joints tightened anew since their last re-check was set.
 */
export function logRide(rows: Rows, command: CommandOf<'log-ride'>, now: Circumstances): Ruling {
  const bike = bikeOf(rows, command.bikeId);
  const { bikeId } = bike;
  const { minutes, km, noticed } = command;
  if (minutes === undefined && km === undefined) refuse('ride-empty');
  const atMs = command.happenedAtMs ?? now.nowMs;
  const rideId = freshRide(command, now);
  const first = (rows.get('rides', bikeId)?.count ?? 0) === 0;
  const ride: EntryBody = present({ type: 'ride-logged', rideId, bikeId, minutes, km, noticed, first });
  const open = new Set(rows.group('recheck', `recheck@${bikeId}`).map(({ jointId }) => jointId));
  const joints = rows
    .group('joint', `joint@${bikeId}`)
    .filter(({ state, jointId, recheckAsked }) => state !== 'apart' && !open.has(jointId) && !recheckAsked);
  // Set before the ride, so that "after one ride" is now.
  const set = joints.flatMap((joint) =>
    recheckRows(joint.kind, cured(joint)).flatMap((row) => {
      const given = command.recheckIds?.[`${joint.jointId}/${row.instruction}`];
      return turnOf(rows, joint, row, 0, now, atMs, given);
    }),
  );
  return [...set, ride, ...takenBack(bike, limitsReached(rows, bikeId, km, startedBy(command)))];
}

const freshRide = ({ rideId }: CommandOf<'log-ride'>, now: Circumstances): Id => rideId ?? now.newId();

export function setRecheck(rows: Rows, command: CommandOf<'set-recheck'>, now: Circumstances): Ruling {
  const { bikeId } = bikeOf(rows, command.bikeId);
  const { jointId, partId, kind, dueDays, dueRides, dueKm } = command;
  checkSpan(dueDays, dueRides, dueKm);
  return [
    present({
      type: 'recheck-set',
      recheckId: freshId(rows, 'recheck', command.recheckId, now),
      ...{ bikeId, jointId, partId, kind, dueDays, dueRides, dueKm },
      title: words(command.title, 'name-missing'),
      instruction: words(command.instruction, 'words-missing'),
      dueAtMs: dueAt(command.happenedAtMs ?? now.nowMs, dueDays),
      turn: 0,
    }),
  ];
}

/** A task falls due by something, and not at once: a span of nothing is only set by the logbook itself. */
function checkSpan(...spans: (number | undefined)[]): void {
  const given = spans.filter((span) => span !== undefined);
  if (given.length === 0) refuse('limit-missing');
  for (const span of given) {
    if (!Number.isFinite(span)) refuse('not-a-number');
    if (span <= 0) refuse('not-positive');
  }
}

export function changeRecheck(rows: Rows, command: CommandOf<'change-recheck'>): Ruling {
  const { recheckId, bikeId, jointId, setAtMs } = recheckOf(rows, command.recheckId);
  const { dueDays, dueRides, dueKm } = command;
  checkSpan(dueDays, dueRides, dueKm);
  const why = words(command.why, 'reason-missing');
  const dueAtMs = dueAt(setAtMs, dueDays);
  return [
    present({ type: 'recheck-changed', recheckId, bikeId, jointId, dueDays, dueRides, dueKm, dueAtMs, why }),
  ];
}

export function dropRecheck(rows: Rows, command: CommandOf<'drop-recheck'>): Ruling {
  const { recheckId, bikeId, jointId } = recheckOf(rows, command.recheckId);
  return [
    present({
      type: 'recheck-dropped',
      recheckId,
      bikeId,
      jointId,
      why: words(command.why, 'reason-missing'),
    }),
  ];
}

/**
 * The re-check behind one that was answered.
 * @param turn the turn of the schedule it is for; the first again where the joint was met moved
 */
function nextTurn(
  rows: Rows,
  recheck: RecheckRow,
  turn: number,
  now: Circumstances,
  atMs: number,
  given: Id | undefined,
): EntryBody[] {
  if (recheck.jointId === undefined) {
    if (recheck.dueDays === undefined && recheck.dueKm === undefined) return [];
    const { bikeId, partId, kind, title, instruction, dueDays, dueKm } = recheck;
    const again = { bikeId, partId, kind, title, instruction, dueDays, dueKm, turn };
    return [
      present({
        type: 'recheck-set',
        recheckId: freshId(rows, 'recheck', given, now),
        ...again,
        dueAtMs: dueAt(atMs, dueDays),
      }),
    ];
  }
  const joint = jointOf(rows, recheck.jointId);
  if (joint.state === 'apart') return [];
  const row = recheckRows(joint.kind, cured(joint)).find(({ instruction }) =>
    sameTask(instruction, recheck.kind),
  );
  return row ? turnOf(rows, joint, row, turn, now, atMs, given) : [];
}

/** A joint may have got threadlocker since its re-check was set; the task stays the same, its way changes. */
function sameTask(a: InstructionKind, b: InstructionKind): boolean {
  const asTorque = (kind: InstructionKind) => (kind === 'look-at-mark' ? 'retorque' : kind);
  return asTorque(a) === asTorque(b);
}

/** What a later check met, beside what was applied; neither is copied from the other. */
export function findTorque(rows: Rows, command: CommandOf<'find-torque'>, now: Circumstances): Ruling {
  const joint = jointOf(rows, command.jointId);
  const { jointId, bikeId } = joint;
  if (joint.state === 'apart') refuse('joint-apart', joint.name);
  const { recheckId, outcome, way, movedAt, turnedDeg, note, photoIds, broughtTo } = command;
  const recheck = recheckId === undefined ? undefined : recheckOf(rows, recheckId);
  if (cured(joint) && way === 'tightening' && outcome === 'held')
    refuse('turning-breaks-the-bond', joint.name);
  const atMs = command.happenedAtMs ?? now.nowMs;
  const tool = snapshotOf(rows, command.toolId, atMs);
  const matters = joint.matters && outcome !== 'held';
  const entries: EntryBody[] = [
    present({
      type: 'torque-found',
      ...{ jointId, bikeId, recheckId, outcome, way, movedAt, turnedDeg, tool, note, photoIds, matters },
    }),
  ];
  if (broughtTo) {
    const bolts = Math.max(1, boltCount(joint.fasteners));
    const { between = command.locker ? ('threadlocker' as const) : undefined } = command;
    // What moved has no bond left: threadlocker on its threads is a new application.
    const broken = joint.locked && { ...joint.locked, ...(outcome === 'held' ? {} : { brokenAtMs: atMs }) };
    entries.push(
      ...withLocker(rows, broken ? { ...joint, locked: broken } : joint, { ...command, between }, now),
      present({
        type: 'torque-applied',
        ...{
          jointId,
          bikeId,
          applied: broughtTo,
          entered: 'keypad' as const,
          bolts,
          passes: 1,
          tool,
          between,
        },
        matters: joint.matters,
      }),
    );
  }
  // What moved asks to be met again as soon as a joint just made.
  const turn = recheck && outcome === 'held' ? recheck.turn + 1 : 0;
  if (recheck) entries.push(...nextTurn(rows, recheck, turn, now, atMs, command.nextRecheckId));
  return entries;
}

export function answerRecheck(rows: Rows, command: CommandOf<'answer-recheck'>, now: Circumstances): Ruling {
  const recheck = recheckOf(rows, command.recheckId);
  const { recheckId, bikeId, jointId, partId } = recheck;
  const { outcome, photoIds } = command;
  if (outcome === 'finding') words(command.words, 'words-missing');
  const answered: EntryBody = present({
    type: 'recheck-answered',
    ...{ recheckId, bikeId, jointId, partId, outcome, words: command.words, photoIds },
  });
  const atMs = command.happenedAtMs ?? now.nowMs;
  return [answered, ...nextTurn(rows, recheck, recheck.turn + 1, now, atMs, command.nextRecheckId)];
}
