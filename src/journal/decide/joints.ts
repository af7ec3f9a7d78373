import { stepTitle } from '../../planning/stepOrder.ts';
import { jointKinds } from '../../standards/jointKinds.ts';
import type { CommandOf } from '../commands.ts';
import type { Between, EntryBody, Id } from '../entries.ts';
import { bikeOfPlace } from '../facts.ts';
import type { Rows } from '../fold.ts';
import { freeName } from '../freeName.ts';
import type { JointRow } from '../rows.ts';
import { stepList } from '../stepList.ts';
import { TAKEN_APART } from '../takenApart.ts';
import {
  bikeOf,
  type Circumstances,
  clearing,
  freshId,
  jointOf,
  partOf,
  present,
  type Ruling,
  refuse,
  words,
} from './ruling.ts';

function checkParts(rows: Rows, bikeId: Id, partIds: Id[], between: Between[]): void {
  const named = [...partIds, ...between.flatMap(({ partId }) => (partId ? [partId] : []))];
  for (const partId of named) {
    const part = partOf(rows, partId);
    if (bikeOfPlace(part.place) !== bikeId) refuse('part-not-on-this-bike', part.name);
  }
}

/** The names of the joints of a bike that are together, but for one of them. */
function namesBeside(rows: Rows, bikeId: Id, but?: Id): string[] {
  const joints = rows.group('joint', `joint@${bikeId}`);
  return joints.flatMap(({ jointId, name, state }) => (jointId === but || state === 'apart' ? [] : name));
}

/** The steps of a joint go by its name: with another name they get another title, and keep what is done. */
function renamedSteps(rows: Rows, { jointId, bikeId, name }: JointRow, becomes: string): EntryBody[] {
  const steps = stepList(rows.group('step', `step@${bikeId}`));
  const taken = steps.map(({ title }) => title);
  return steps
    .filter((step) => step.jointId === jointId)
    .filter(({ title }) => title === name || title.startsWith(stepTitle(name, '')))
    .map(({ stepId, title }): EntryBody => {
      const renamed = freeName(`${becomes}${title.slice(name.length)}`, taken);
      taken.push(renamed);
      return { type: 'step-described', stepId, bikeId, title: renamed };
    });
}

export function makeJoint(rows: Rows, command: CommandOf<'make-joint'>, now: Circumstances): Ruling {
  const { bikeId } = bikeOf(rows, command.bikeId);
  const { kind, partIds, between, fasteners, targets, note } = command;
  const jointId = freshId(rows, 'joint', command.jointId, now);
  const { clamp, bar, extension, diameters } = command;
  checkParts(rows, bikeId, partIds, between);
  const row = jointKinds.find((one) => one.kind === kind) ?? refuse('malformed', String(kind));
  const name = freeName(command.name.trim() || row.label, namesBeside(rows, bikeId));
  const matters = command.matters ?? row.matters;
  const about = {
    name,
    kind,
    partIds,
    between,
    fasteners,
    targets,
    matters,
    note,
    clamp,
    bar,
    extension,
    diameters,
  };
  return [present({ type: 'joint-made', jointId, bikeId, ...about })];
}

/** What a release stands on; a name, a note or a measured length changes none of it. */
const RELEASED = ['kind', 'partIds', 'between', 'fasteners', 'targets', 'matters'] as const;

/** As a release sees it: which printed torque a screw is compared with is no part of the screw. */
const asReleased = (value: unknown): string =>
  JSON.stringify(value, (key, inner) => (key === 'variant' ? undefined : inner));

export function describeJoint(rows: Rows, command: CommandOf<'describe-joint'>): Ruling {
  const { type: _type, happenedAtMs: _at, jointId, ...about } = command;
  const joint = jointOf(rows, jointId);
  if (about.name !== undefined)
    about.name = freeName(words(about.name, 'name-missing'), namesBeside(rows, joint.bikeId, jointId));
  if (about.partIds || about.between) {
    checkParts(rows, joint.bikeId, about.partIds ?? joint.partIds, about.between ?? joint.between);
  }
  const { bikeId, matters: wasMatters } = joint;
  // A release covers the joint as it was then; another target or another part is another joint.
  const anew = RELEASED.some(
    (field) => about[field] !== undefined && asReleased(about[field]) !== asReleased(joint[field]),
  );
  const revokes = anew && (wasMatters || about.matters === true) ? (true as const) : undefined;
  return [
    present({
      ...{ type: 'joint-described' as const, jointId, bikeId, ...about, ...clearing(joint, about) },
      ...{ wasMatters, revokes },
    }),
    ...(about.name === undefined || about.name === joint.name ? [] : renamedSteps(rows, joint, about.name)),
  ];
}

/** Every part a joint needs on its bike: what it joins, and what goes between. */
export function partsOf({ partIds, between }: Pick<JointRow, 'partIds' | 'between'>): Id[] {
  return [...partIds, ...between.flatMap(({ partId }) => (partId ? [partId] : []))];
}

/** A joint that came apart can be put together again once all its parts are on its bike. */
export function refuseWithoutParts(rows: Rows, joint: JointRow): void {
  if (joint.state !== 'apart') return;
  for (const partId of partsOf(joint)) {
    const part = rows.get('part', partId);
    if (!part || bikeOfPlace(part.place) !== joint.bikeId)
      refuse('part-not-on-this-bike', part?.name ?? joint.name);
  }
}

/**
 * What a command may end: what began by the instant it tells of. One that is given now ends all that runs, also what a
 * clock that ran ahead has put into the future.
 */
export const startedBy = ({ happenedAtMs }: { happenedAtMs?: number }): number =>
  happenedAtMs ?? Number.POSITIVE_INFINITY;

/** The ends of the waits and re-checks about a joint that began by an instant. */
export function endedAbout(rows: Rows, { jointId, bikeId }: JointRow, atMs: number): EntryBody[] {
  const about = <R extends { jointId?: Id }>(row: R) => row.jointId === jointId;
  const waits = rows.group('wait', `wait@${bikeId}`).filter((row) => about(row) && row.startedAtMs <= atMs);
  const rechecks = rows
    .group('recheck', `recheck@${bikeId}`)
    .filter((row) => about(row) && row.setAtMs <= atMs);
  return [
    ...waits.map(
      ({ waitId }): EntryBody => ({
        ...{ type: 'wait-ended', waitId, bikeId, jointId },
        outcome: 'no-longer-needed',
      }),
    ),
    ...rechecks.map(
      ({ recheckId }): EntryBody => ({
        ...{ type: 'recheck-dropped', recheckId, bikeId, jointId },
        why: TAKEN_APART,
      }),
    ),
  ];
}

/** A joint comes apart, and with it end the waits and re-checks that were about it. */
export function apart(rows: Rows, joint: JointRow, why: string, atMs: number): EntryBody[] {
  const { jointId, bikeId, matters } = joint;
  return [{ type: 'joint-taken-apart', jointId, bikeId, why, matters }, ...endedAbout(rows, joint, atMs)];
}

export function takeJointApart(rows: Rows, command: CommandOf<'take-joint-apart'>): Ruling {
  const joint = jointOf(rows, command.jointId);
  if (joint.state === 'apart') refuse('joint-apart', joint.name);
  return apart(rows, joint, words(command.why, 'reason-missing'), startedBy(command));
}
