import { brakeItems, fittedHere, type WrittenBike } from '../fit/fittedHere.ts';
import { rearDrive } from '../fit/mattersHere.ts';
import { pileOf } from '../fit/pileOf.ts';
import { bondBroken } from '../planning/bondBroken.ts';
import { stepTitle } from '../planning/stepOrder.ts';
import { isBonded } from '../planning/unsetBonds.ts';
import { notFitted } from '../standards/checks/notFitted.ts';
import { gateOf, neverUntouched } from '../standards/checks/releaseGate.ts';
import { type RideCheckGroup, rideCheck } from '../standards/checks/rideCheck.ts';
import { wantsTorque } from '../standards/jointKinds.ts';

import type { Id, OpenItem } from './entries.ts';
import type { OpenInPile } from './fitAtHand.ts';
import type { Rows } from './fold.ts';
import { openChanges } from './openChanges.ts';
import type { DefectRow, JointRow, RideCheckRow, StepRow } from './rows.ts';
import { TAKEN_APART } from './takenApart.ts';

/** A joint that a re-check found moved or turned, and that was not tightened since. */
function leftAsFound({ state, found, applied }: JointRow): boolean {
  if (state !== 'torqued' || !found || found.outcome === 'held') return false;
  return (applied?.atMs ?? Number.NEGATIVE_INFINITY) < found.atMs;
}

function openOfBead(rows: Rows, { jointId }: JointRow): { words: string; blocks: boolean } | undefined {
  const seal = rows.get('seal', jointId);
  if (!seal) return undefined;
  const { verdict, marks } = seal;
  if (verdict === 'will-not-seat') return { words: 'bead will not seat', blocks: true };
  const seating = marks.findLast(({ mark }) => mark === 'seated');
  // It may hold air for a while and be off its seat all the same.
  if (seating?.mark === 'seated' && seating.beadLine === 'uneven')
    return { words: 'bead line uneven when last seated', blocks: true };
  return verdict === 'holds' ? undefined : { words: 'seal not yet judged to hold', blocks: false };
}

function openOfJoint(rows: Rows, joint: JointRow, nowMs: number, workedOn: boolean): OpenItem[] {
  const { jointId, name, matters, state } = joint;
  const items: OpenItem[] = [];
  const add = (what: OpenItem['what'], words: string, blocks: boolean) =>
    items.push({ what, words, jointId, blocks });
  if (state === 'apart') {
    add('joint-open', `${name}: taken apart, ${joint.apartWhy}`, false);
    return items;
  }
  if (state === 'hand-tight') add('hand-tight', `${name}: hand-tight only`, matters);
  else if (state === 'open' && wantsTorque(joint)) add('joint-open', `${name}: no torque logged`, matters);
  else if (state === 'open' && neverUntouched.includes(joint.kind) && !workedOn) {
    add('joint-open', `${name}: no work logged`, matters);
  } else if (leftAsFound(joint)) {
    const met = joint.found?.outcome === 'turned' ? 'turned' : 'moved';
    add('joint-open', `${name}: found ${met} at a re-check, not tightened since`, matters);
  }
  if (wantsTorque(joint) && !joint.targets.some(({ source, torque }) => torque && source !== 'none')) {
    add('no-torque-source', `${name}: torque target without a source`, false);
  }
  const wait = joint.locked && rows.get('wait', joint.locked.waitId);
  const cutShort = wait?.endedAtMs !== undefined;
  const broken = bondBroken(joint, wait || undefined);
  if (broken) {
    const how = broken === 'moved' ? 'moved at a re-check' : 'tightened again after its cure';
    add('uncured', `${name}: ${how}, threadlocker not re-applied since`, matters);
  } else if (joint.locked && wait?.dueAtMs !== undefined && wait.dueAtMs > nowMs) {
    // A bond in a bore holds what is screwed into it, whatever the joint itself is.
    if (isBonded(joint)) add('uncured', `${name}: retaining compound not cured`, true);
    else add('uncured', `${name}: threadlocker not cured`, matters);
  } else if (cutShort && wait.outcome === 'cut-short') {
    add('uncured', `${name}: cure ended early`, matters || isBonded(joint));
  } else if (isBonded(joint) && !joint.locked) {
    add('uncured', `${name}: no retaining compound applied`, true);
  }
  if (joint.moved >= 2) add('moved-twice', `${name}: moved at ${joint.moved} re-checks`, false);
  if (joint.kind === 'bead') {
    const bead = openOfBead(rows, joint);
    if (bead) add('unsealed', `${name}: ${bead.words}`, bead.blocks);
  }
  return items;
}

/** A step not done: it stops the bike where the table says so, and is named everywhere else. */
function openOfStep(rows: Rows, { state, title, kind, why, jointId, partId }: StepRow): OpenItem[] {
  if (state !== 'open' && state !== 'skipped') return [];
  const joint = jointId === undefined ? undefined : rows.get('joint', jointId);
  // What is apart, or not tightened, is told by itself.
  const byItsJoint =
    joint?.state === 'apart' ||
    (joint !== undefined && kind === 'torque' && joint.state !== 'torqued' && wantsTorque(joint));
  const part = partId === undefined ? undefined : rows.get('part', partId);
  const gate = gateOf({ jointKind: joint?.kind, partKind: part?.kind }, kind);
  const proven = gate?.provenByTorque && joint?.state === 'torqued';
  const blocks = !byItsJoint && joint?.matters !== false && !proven && gate?.[state] === 'stops';
  // Steps of earlier versions bear the name of their joint alone: what is to be done tells them apart.
  const called = joint && title.startsWith(stepTitle(joint.name, '')) ? title : `${title}, ${kind}`;
  const words = state === 'open' ? `Step not done: ${called}` : `Step skipped: ${called}: ${why}`;
  return [
    {
      what: state === 'open' ? 'step-open' : 'step-skipped',
      words: blocks ? `${words}. ${gate.why}` : words,
      ...(blocks && jointId ? { jointId } : {}),
      blocks,
    },
  ];
}

/**
 * What has still to set, seal or settle, and glue whose time was cut short. Of a bond that is about no joint it is not known
 * what hangs on it, so it counts as what matters.
 */
function openWaits(rows: Rows, bikeId: Id, joints: readonly JointRow[], nowMs: number): OpenItem[] {
  const matters = (jointId: Id | undefined) =>
    jointId === undefined || joints.some((one) => one.jointId === jointId && one.matters);
  const running = rows
    .group('wait', `wait@${bikeId}`)
    // What a joint has in it is told with the joint, and what a tyre holds with its seal.
    .filter(({ waitKind, jointId }) => waitKind !== 'seal' && (waitKind !== 'cure' || jointId === undefined))
    .filter(({ dueAtMs = 0 }) => dueAtMs > nowMs)
    .map(
      ({ title, waitKind, jointId }): OpenItem => ({
        what: 'uncured',
        words: `Timer running: ${title}`,
        ...(jointId ? { jointId } : {}),
        blocks: waitKind !== 'other' && matters(jointId),
      }),
    );
  const glued = [
    ...rows.group('wait', `wait@${bikeId}`),
    ...rows.group('wait', `wait-over@${bikeId}`),
  ].filter(({ waitKind }) => waitKind === 'adhesive');
  const together = joints.filter(({ state }) => state !== 'apart');
  const cut = together.flatMap(({ jointId, name, matters: grave }): OpenItem[] => {
    const [last] = glued
      .filter((wait) => wait.jointId === jointId)
      .toSorted((a, b) => b.startedAtMs - a.startedAtMs);
    return last?.outcome === 'cut-short'
      ? [
          {
            what: 'uncured',
            words: `${name}: its adhesive timer was ended early`,
            jointId,
            blocks: grave,
          },
        ]
      : [];
  });
  return [...running, ...cut];
}

/** Brakes still to be bedded in: that takes a ride, so it stops the full release and not the first short one. */
function notBeddedIn(rows: Rows, bikeId: Id, joints: readonly JointRow[]): OpenItem[] {
  const over = rows.group('recheck', `recheck-over@${bikeId}`).filter(({ kind }) => kind === 'brake-bed-in');
  return joints
    .filter(({ kind, state, matters }) => kind === 'rotor' && state !== 'apart' && matters)
    .filter(({ jointId, madeAtMs }) => {
      const answers = over.filter((one) => one.jointId === jointId && one.setAtMs >= madeAtMs);
      const givenUp = (why: string | undefined) => why !== undefined && why !== TAKEN_APART;
      return !answers.some(({ found, dropped }) => found === 'as-it-should' || givenUp(dropped));
    })
    .map(({ jointId, name }) => ({
      ...{ what: 'step-open', jointId, blocks: false, blocksFull: true },
      words: `Brake not bedded in: ${name}`,
    }));
}

/** Whether a finding at this item of the pre-ride check may be put off until after the ride; unknown ones may not. */
export function mayWait(groupId: string, itemId: string): boolean {
  const items = rideCheck.find(({ id }) => id === groupId)?.items;
  return items?.find(({ id }) => id === itemId)?.neverDefer === false;
}

export const NO_BRAKE = 'No brake at all on either wheel';

/**
 * Whether the check says of both wheels that they have no brake, and the drive is none either. A fixed wheel slows the
 * bike by the legs; a bike without anything is stopped by nothing.
 */
export function noBrakeAtAll(groups: RideCheckRow['groups'], bike: WrittenBike): boolean {
  const items = Object.values(groups).flatMap((group) => group.items);
  const drive = rearDrive(pileOf(bike.parts));
  const absent = (itemId: string) => items.some((item) => item.itemId === itemId && item.absent);
  return brakeItems.every(absent) && drive !== 'fixed' && drive !== 'back-pedal';
}

/** What the check says is not there: named, with what to mind; asked again once the bike has one. */
function openAbsence(title: string, itemId: string, bike: WrittenBike): OpenItem {
  const { thing, without, caution } = notFitted[itemId] ?? { thing: itemId, without: 'stands' as const };
  if (fittedHere(itemId, bike)) {
    const words = `Pre-ride check not done: ${title}: ${thing}, fitted since the check`;
    return { what: 'check-open', words, blocks: true };
  }
  const words = `Not fitted: ${thing}${caution ? `. ${caution}` : ''}`;
  return { what: 'not-fitted', words, blocks: without === 'stands' };
}

function openChecks(rows: Rows, bikeId: Id, bike: WrittenBike): OpenItem[] {
  const groups = rows.get('ridecheck', bikeId)?.groups ?? {};
  const brakeless: OpenItem[] = noBrakeAtAll(groups, bike)
    ? [{ what: 'not-fitted', words: NO_BRAKE, blocks: true }]
    : [];
  return [...brakeless, ...rideCheck.flatMap((group): OpenItem[] => openGroup(groups, group, bike))];
}

function openGroup(groups: RideCheckRow['groups'], group: RideCheckGroup, bike: WrittenBike): OpenItem[] {
  const confirmed = groups[group.id];
  if (!confirmed)
    return [{ what: 'check-open', words: `Pre-ride check not done: ${group.title}`, blocks: true }];
  const answered = new Map(confirmed.items.map((one) => [one.itemId, one]));
  return group.items.flatMap(({ id, words }): OpenItem[] => {
    const answer = answered.get(id);
    if (!answer)
      return [
        { what: 'check-open', words: `Pre-ride check not done: ${group.title}: ${words}`, blocks: true },
      ];
    if (answer.ok) return [];
    if (answer.absent) return [openAbsence(group.title, id, bike)];
    const finding = `${group.title}: ${answer.words?.trim() || words}`;
    return [{ what: 'check-finding', words: finding, blocks: !mayWait(group.id, id) }];
  });
}

/** Whether the date or the distance is over until which the bike may be ridden with a defect. */
const limitOver = ({ dueAtMs }: DefectRow, nowMs: number): boolean =>
  dueAtMs !== undefined && dueAtMs <= nowMs;

/**
 * Everything that is open on a bike, word for word, and what of it keeps the bike where it is.
 * @param nowMs the instant for which it is asked, ms UTC
 * @param openInPile the fit check, from `fitAtHand`
 */
export function openItems(rows: Rows, bikeId: Id, nowMs: number, openInPile: OpenInPile): OpenItem[] {
  const joints = rows.group('joint', `joint@${bikeId}`);
  const parts = new Set(rows.group('part', `part@${bikeId}`).map(({ partId }) => partId));
  const steps = rows.group('step', `step@${bikeId}`);
  return [
    ...joints
      // A joint apart whose parts have left the bike is history, not an open item.
      .filter((joint) => joint.state !== 'apart' || joint.partIds.every((id) => parts.has(id)))
      .flatMap((joint) => {
        const workedOn = steps.some(({ jointId, state }) => jointId === joint.jointId && state === 'done');
        return openOfJoint(rows, joint, nowMs, workedOn);
      }),
    ...steps.flatMap((step) => openOfStep(rows, step)),
    ...openChanges(rows.group('part', `part@${bikeId}`), joints),
    ...openWaits(rows, bikeId, joints, nowMs),
    ...notBeddedIn(rows, bikeId, joints),
    ...rows
      .group('recheck', `recheck@${bikeId}`)
      .filter(({ kind }) => kind !== 'brake-bed-in')
      .filter(({ dueAtMs }) => dueAtMs !== undefined && dueAtMs <= nowMs)
      .map(
        ({ title, jointId }): OpenItem => ({
          what: 'recheck-overdue',
          words: `Re-check due: ${title}`,
          ...(jointId ? { jointId } : {}),
          blocks: false,
        }),
      ),
    ...rows.group('defect', `defect@${bikeId}`).map(
      (defect): OpenItem => ({
        what: 'defect',
        words: `${defect.words}${defect.restriction ? ` (${defect.restriction})` : ''}${limitOver(defect, nowMs) ? ', and its limit is over' : ''}`,
        blocks: defect.decision === 'do-not-ride' || limitOver(defect, nowMs),
      }),
    ),
    ...openInPile({
      parts: rows.group('part', `part@${bikeId}`),
      joints,
      findings: rows.group('finding', `finding@${bikeId}`),
    }).map((words): OpenItem => ({ what: 'fit-finding', words: `Fit: ${words}`, blocks: false })),
    ...openChecks(rows, bikeId, { parts: rows.group('part', `part@${bikeId}`), joints }),
  ];
}
