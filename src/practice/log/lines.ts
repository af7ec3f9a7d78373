import { emptyDefect, readDefect } from '../../drafts/defectDraft.ts';
import { rideTyped } from '../../drafts/rideDraft.ts';
import type { Command, CommandOf } from '../../journal/commands.ts';
import type { Id, Settings } from '../../journal/entries.ts';
import { parseTyped } from '../../mechanics/quantity.ts';
import { boltCount } from '../../mechanics/screws/boltCount.ts';
import { torqueNm, unitsOf } from '../../mechanics/units.ts';
import { nearDiscBrake } from '../../planning/lockerWait.ts';
import { mostNm, rulingTarget } from '../../planning/rulingTarget.ts';
import { neverDeferred } from '../../standards/checks/releaseRules.ts';
import { type JointKind, jointKindRow } from '../../standards/jointKinds.ts';
import { threadDiameterMm } from '../../standards/screws/threadDiameter.ts';
import { quantityWords } from '../../words/phrases.ts';
import { lockerOn, lockerWaitOf } from '../bench/lockerCommand.ts';
import { appliedDoubt } from '../joint/appliedDoubt.ts';
import { amountTyped } from './amountTyped.ts';
import type { LineDraft, LineKind, LineWrong } from './lineDraft.ts';
import {
  type AtHand,
  FROM_A_LINE,
  type JointMeant,
  jointMeant,
  partByName,
  partMeant,
  sameWords,
  toolMeant,
} from './named.ts';
import { partNamed } from './partNamed.ts';

export type LineRead =
  | { ok: true; commands: Command[]; undo: string }
  | {
      ok: false;
      wrong: LineWrong;
      /** Asked once; a second tap logs it as it is. */
      doubt?: true;
    };

/** What a line is read with. */
export interface LineWith {
  bikeId: Id;
  hand: AtHand;
  settings: Settings;
  newId(): Id;
  /** The doubt was seen and answered, or the figure above a limit confirmed. */
  sure?: boolean;
  /** Names of the other bikes, for a part that comes off one of them. */
  bikeNames?: ReadonlyMap<Id, string>;
}

const ROOM_C = 20;
const bad = (wrong: LineWrong): LineRead => ({ ok: false, wrong });
const WHERE: LineWrong = { where: 'Say which joint.' };

/** The first step of the plan that this line does, so that it is ticked off with it. */
const stepFor = ({ steps }: AtHand, jointId: Id, kind: 'torque' | 'lock') =>
  steps.find((step) => step.jointId === jointId && step.kind === kind && step.state === 'open')?.stepId;

const where = ({ where: words, whereId: id }: LineDraft) => ({ words, id });

function torque(draft: LineDraft, { bikeId, hand, settings, newId, sure }: LineWith): LineRead {
  const meant = jointMeant(where(draft), bikeId, hand, newId);
  const unit = draft.torqueUnit ?? settings.torqueUnit;
  const read = parseTyped(draft.figure, unitsOf.torque, unit);
  if (!meant || !read.ok)
    return bad({ ...(meant ? {} : WHERE), ...(read.ok ? {} : { figure: 'Enter the torque you applied.' }) });
  const { jointId, name, fasteners, joint } = meant;
  const ruling = rulingTarget(joint?.targets ?? []);
  const doubt = appliedDoubt(torqueNm(read.quantity.value, read.quantity.unit), {
    diameterMm: threadDiameterMm(fasteners),
    mostNm: ruling.ok ? mostNm(ruling.target) : undefined,
  });
  if (doubt && !sure) {
    const figure =
      doubt.about === 'target'
        ? 'Above target. Tap again to log it.'
        : 'Unusual for this thread. Check number and unit, then tap again.';
    return { ok: false, wrong: { figure }, doubt: true };
  }
  const tool = toolMeant({ words: draft.toolName, id: draft.toolId }, hand, newId);
  const stepId = stepFor(hand, jointId, 'torque');
  const applied: CommandOf<'apply-torque'> = {
    ...{ type: 'apply-torque', jointId, applied: read.quantity, entered: 'keypad', passes: 1 },
    bolts: Math.max(1, boltCount(fasteners)),
    ...(stepId ? { stepId } : {}),
    ...(tool ? { toolId: tool.toolId } : {}),
  };
  return {
    ok: true,
    commands: [...meant.commands, ...(tool?.commands ?? []), applied],
    undo: `${name}: ${quantityWords(read.quantity)}`,
  };
}

/**
 * How long threadlocker has to be left alone on what a line names.
 * @returns undefined while grade or joint is not chosen; a refusal where it cannot cure there
 */
export function lockerWaitOn(
  { grade, surface }: Pick<LineDraft, 'grade' | 'surface'>,
  meant: Pick<JointMeant, 'kind'> | undefined,
): ReturnType<typeof lockerWaitOf> {
  if (!grade) return undefined;
  const chosen = { grade, surface, primer: false, temperatureC: ROOM_C };
  return lockerWaitOf(chosen, meant !== undefined && nearDiscBrake(meant)) || undefined;
}

function locker(draft: LineDraft, { bikeId, hand, newId }: LineWith): LineRead {
  const meant = jointMeant(where(draft), bikeId, hand, newId);
  const { grade, surface } = draft;
  if (!meant || !grade)
    return bad({ ...(meant ? {} : WHERE), ...(grade ? {} : { grade: 'Choose the grade.' }) });
  const { jointId, name, joint } = meant;
  const chosen = { grade, surface, primer: false, temperatureC: ROOM_C };
  const known = joint && lockerOn(chosen, joint);
  const wait = joint ? known : lockerWaitOn(draft, meant);
  if (!wait || ('ok' in wait && !wait.ok)) {
    const gap = lockerWaitOn(draft, meant)?.ok;
    return bad({ surface: gap ? 'The gap of this joint is too wide.' : 'It does not cure on this surface.' });
  }
  const stepId = stepFor(hand, jointId, 'lock');
  const temperature = { value: ROOM_C, unit: 'Cel', typed: String(ROOM_C) } as const;
  const put = known ?? { grade, surface, primer: false, temperature, waitMs: wait.waitMs };
  const applied: Command = { type: 'apply-locker', jointId, ...put, ...(stepId ? { stepId } : {}) };
  return { ok: true, commands: [...meant.commands, applied], undo: `${name}: threadlocker` };
}

function tyre(draft: LineDraft, { bikeId, hand, settings, newId, sure }: LineWith): LineRead {
  const words = /\b(tyre|tire|tube|bead|rim|wheel)/i.test(draft.where) ? draft.where : `${draft.where} tyre`;
  const named = draft.whereId !== '' || draft.where.trim() !== '';
  const meant = named ? jointMeant({ words, id: draft.whereId }, bikeId, hand, newId) : undefined;
  if (!meant) return bad({ where: 'Say which tyre.' });
  if (meant.kind !== 'bead') return bad({ where: 'That is no tyre. Pick one, or type front or rear.' });
  const typed = draft.figure.trim() !== '';
  const { mark } = draft;
  const pressure = parseTyped(draft.figure, unitsOf.pressure, draft.pressureUnit ?? settings.pressureUnit);
  const amount = parseTyped(draft.figure, unitsOf.volume, draft.volumeUnit ?? 'mL');
  if (mark === 'sealant' && typed && !amount.ok)
    return bad({ figure: 'Enter the amount, or leave it empty.' });
  if ((mark === 'reading' || mark === 'pumped') && !pressure.ok)
    return bad({ figure: 'Enter the pressure.' });
  const marking: Command = {
    ...{ type: 'mark-seal', jointId: meant.jointId },
    mark:
      mark === 'sealant'
        ? { mark, ...(amount.ok ? { amount: amount.quantity } : {}) }
        : mark === 'burped'
          ? { mark }
          : { mark, reading: pressure.ok ? { pressure: pressure.quantity } : {} },
    ...(draft.lookAgainMs > 0 ? { lookAgainMs: draft.lookAgainMs } : {}),
    ...(sure ? { overLimit: true as const } : {}),
  };
  return { ok: true, commands: [...meant.commands, marking], undo: `${meant.name}: logged` };
}

function cut(draft: LineDraft, { bikeId, hand, settings, newId }: LineWith): LineRead {
  const meant = partMeant(where(draft), bikeId, hand, newId);
  const read = amountTyped(draft.figure, draft.lengthUnit ?? settings.lengthUnit);
  const spot = draft.spot.trim();
  if (!meant || spot === '' || !read.ok)
    return bad({
      ...(meant ? {} : { where: 'Say which part.' }),
      ...(spot === '' ? { spot: 'Say where on the part.' } : {}),
      ...(read.ok ? {} : { figure: read.why }),
    });
  const changing: Command = {
    ...{ type: 'change-part', partId: meant.partId, cut: draft.cut, where: spot },
    ...read.size,
  };
  return { ok: true, commands: [...meant.commands, changing], undo: `${meant.name}: change logged` };
}

function part(draft: LineDraft, { bikeId, newId, bikeNames }: LineWith): LineRead {
  const { fromPartId, fromBikeId, origin } = draft;
  if (origin === 'off-a-bike' && fromPartId) {
    const to = bikeId ? ({ on: 'bike', bikeId } as const) : ({ on: 'shelf' } as const);
    return { ok: true, commands: [{ type: 'move-part', partId: fromPartId, to }], undo: 'Part moved' };
  }
  if (draft.where.trim() === '') return bad({ where: 'Say what it is.' });
  const off = origin === 'off-a-bike' ? bikeNames?.get(fromBikeId) : undefined;
  const originWords = off ? `off ${off}, ${FROM_A_LINE}` : FROM_A_LINE;
  const adding = partByName(draft.where, bikeId, newId(), { origin, originWords });
  return { ok: true, commands: [adding], undo: `${adding.name} added` };
}

/** What of the list that is never put off a problem at a joint falls under. Common practice, no source. */
const areaOf: Partial<Record<JointKind, string>> = {
  ...{ 'front-axle': 'wheel-retention', 'rear-axle': 'wheel-retention', 'thru-axle': 'wheel-retention' },
  ...{ spokes: 'spokes', bead: 'tyre-or-rim' },
};
const byJointArea: Partial<Record<string, string>> = {
  ...{ brakes: 'brake', steering: 'steering', drive: 'crank-or-pedal', saddle: 'seat' },
};

/**
 * Under which heading a problem is written down, from its words and where it is.
 * @param kind of the joint, where one is named
 * @param matters whether the joint can throw the rider
 * @example problemArea('Crack in the weld', undefined, false) //=> 'crack'
 */
export function problemArea(words: string, kind: JointKind | undefined, matters: boolean): string {
  if (/\bcrack/i.test(words)) return 'crack';
  const found = kind && matters ? (areaOf[kind] ?? byJointArea[jointKindRow(kind).area]) : undefined;
  return found !== undefined && neverDeferred.some(({ id }) => id === found) ? found : 'other';
}

/** The joint or part a problem or a note is about; nothing where the line names none. */
function about(draft: LineDraft, { bikeId, hand, newId }: LineWith) {
  if (draft.whereId === '' && draft.where.trim() === '') return { ids: {}, commands: [] };
  const tapped = hand.joints.some(({ jointId }) => jointId === draft.whereId);
  const isPart =
    hand.parts.some(({ partId, name }) => partId === draft.whereId || sameWords(name, draft.where)) ||
    // A tube or a dropout is a place on the frame, and no joint.
    (!hand.joints.some(({ name }) => sameWords(name, draft.where)) &&
      partNamed(draft.where).kind === 'frame');
  const part = !tapped && isPart ? partMeant(where(draft), bikeId, hand, newId) : undefined;
  if (part) return { ids: { partId: part.partId }, commands: part.commands };
  const joint = jointMeant(where(draft), bikeId, hand, newId);
  return joint
    ? { ids: { jointId: joint.jointId }, commands: joint.commands, joint }
    : { ids: {}, commands: [] };
}

/** Under which heading a problem falls, and whether it must not be ridden with, whatever the form says. */
function judged(words: string, meant: JointMeant | undefined) {
  const matters = meant ? (meant.joint?.matters ?? jointKindRow(meant.kind).matters) : false;
  const area = problemArea(words, meant?.kind, matters);
  return { area, grave: matters || area !== 'other' };
}

/** Whether a problem must not be ridden with, whatever the form says. */
export const mustStay = (draft: LineDraft, withWhat: LineWith): boolean =>
  judged(draft.words, about(draft, withWhat).joint).grave;

function problem(draft: LineDraft, withWhat: LineWith): LineRead {
  const { bikeId, settings } = withWhat;
  if (draft.words.trim() === '') return bad({ words: 'Say what is wrong.' });
  const { ids, commands, joint } = about(draft, withWhat);
  const { area, grave } = judged(draft.words, joint);
  const decision = grave ? 'do-not-ride' : draft.decision;
  const asked = { ...emptyDefect, words: draft.words.trim(), area, further: draft.figure };
  const read = readDefect(asked, bikeId, decision, settings.distanceUnit);
  if (!read || (decision === 'ride-limited' && !(read.untilKm && read.untilKm > 0)))
    return bad({ figure: 'Enter how far it may be ridden.' });
  const found: CommandOf<'find-defect'> = { ...read, ...ids };
  const undo = decision === 'do-not-ride' ? 'Problem logged: do not ride' : 'Problem logged';
  return { ok: true, commands: [...commands, found], undo };
}

function ride(draft: LineDraft, { bikeId, settings }: LineWith): LineRead {
  const { minutes, figure: distance, distanceUnit, words: noticed } = draft;
  const read = rideTyped({ minutes, distance, unit: distanceUnit, noticed }, settings.distanceUnit);
  if (!read.ok) {
    const { minutes: time, distance: far } = read.wrong;
    return bad({ ...(time ? { minutes: time } : {}), ...(far ? { figure: far } : {}) });
  }
  return { ok: true, commands: [{ type: 'log-ride', bikeId, ...read.ride }], undo: 'Ride logged' };
}

function note(draft: LineDraft, withWhat: LineWith): LineRead {
  if (draft.words.trim() === '') return bad({ words: 'Write a word or two.' });
  const { ids, commands } = about(draft, withWhat);
  const noted: Command = { type: 'add-note', bikeId: withWhat.bikeId, ...ids, words: draft.words.trim() };
  return { ok: true, commands: [...commands, noted], undo: 'Note logged' };
}

const read: Readonly<Record<LineKind, (draft: LineDraft, withWhat: LineWith) => LineRead>> = {
  ...{ torque, locker, tyre, cut, part, problem, ride, note },
};

/**
 * A line as commands, which the logbook carries out whole or not at all: what it names and the logbook has not is made
 * first, the bike before all.
 * @param withWhat.bikeId of the bike that was chosen; empty where a new one is named
 * @returns the commands and the words of the undo bar, or what is missing by field
 */
export function lineTyped(kind: LineKind, draft: LineDraft, withWhat: LineWith): LineRead {
  const { newId } = withWhat;
  const name = draft.bikeName.trim();
  const shelved = kind === 'part' && draft.bikeId === '' && name === '';
  const bikeId = withWhat.bikeId || (name === '' ? '' : newId());
  const made = read[kind](draft, { ...withWhat, bikeId });
  if (bikeId === '' && !shelved) {
    const wrong: LineWrong = { bikeName: 'Choose the bike, or name a new one.' };
    return { ok: false, wrong: made.ok ? wrong : { ...made.wrong, ...wrong } };
  }
  if (!made.ok || withWhat.bikeId || bikeId === '') return made;
  return { ...made, commands: [{ type: 'start-bike', bikeId, name }, ...made.commands] };
}
