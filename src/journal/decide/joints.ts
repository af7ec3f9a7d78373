import { jointKindRow } from '../../standards/jointKinds.ts';
import type { CommandOf } from '../commands.ts';
import type { Between, EntryBody, Fastener, Id, JointAbout, Target } from '../entries.ts';
import { bikeOf as bikeOfPlace } from '../facts.ts';
import type { Rows } from '../fold.ts';
import type { JointRow } from '../rows.ts';
import {
  bikeOf,
  type Circumstances,
  clearing,
  jointOf,
  partOf,
  positive,
  present,
  type Ruling,
  refuse,
  words,
} from './ruling.ts';

/** Above this a count is a slip of the finger: even the spokes of a wheel are fewer. */
const MOST_FASTENERS = 72;
const ABSURD_TORQUE = 1000;
const LONGEST_MM = 2500;

function checkParts(rows: Rows, bikeId: Id, partIds: Id[], between: Between[]): void {
  if (new Set(partIds).size < 1) refuse('too-few-parts');
  const named = [...partIds, ...between.flatMap(({ partId }) => (partId ? [partId] : []))];
  for (const partId of named) {
    const part = partOf(rows, partId);
    if (bikeOfPlace(part.place) !== bikeId) refuse('part-not-on-this-bike', part.name);
  }
}

function checkFasteners(fasteners: Fastener[]): void {
  for (const { count } of fasteners) {
    if (!Number.isInteger(count) || count < 1 || count > MOST_FASTENERS)
      refuse('fastener-count', String(count));
  }
}

function checkTargets(targets: Target[]): void {
  for (const { source, torque, upTo } of targets) {
    if (source !== 'none' && !torque) refuse('not-a-number');
    if (torque) positive(torque.value, ABSURD_TORQUE);
    if (upTo) positive(upTo.value, ABSURD_TORQUE);
  }
}

/** Lengths measured at a joint: above nothing, and none longer than a bicycle; a bar may drop and sweep back. */
function checkLengths({ fasteners = [], clamp, bar, extension }: Partial<JointAbout>): void {
  const lengths = [
    ...fasteners.map(({ grip }) => grip),
    ...[clamp?.tubeArm, clamp?.boltArm, extension?.length],
  ];
  for (const length of lengths) if (length) positive(length.value, LONGEST_MM);
  for (const place of bar ? [bar.rise, bar.reach] : []) {
    if (!Number.isFinite(place.value)) refuse('not-a-number');
    if (Math.abs(place.value) > LONGEST_MM) refuse('absurd-value', place.typed);
  }
  if (extension && !Number.isFinite(extension.angleDeg)) refuse('not-a-number');
}

export function makeJoint(rows: Rows, command: CommandOf<'make-joint'>, now: Circumstances): Ruling {
  const { bikeId } = bikeOf(rows, command.bikeId);
  const { kind, partIds, between, fasteners, targets, note, jointId = now.newId() } = command;
  const { clamp, bar, extension } = command;
  checkParts(rows, bikeId, partIds, between);
  checkFasteners(fasteners);
  checkTargets(targets);
  checkLengths(command);
  const kindRow = jointKindRow(kind);
  const name = command.name.trim() === '' ? kindRow.label : command.name.trim();
  const matters = command.matters ?? kindRow.matters;
  const about = { name, kind, partIds, between, fasteners, targets, matters, note, clamp, bar, extension };
  return [present({ type: 'joint-made', jointId, bikeId, ...about })];
}

/** What a release stands on; a name, a note or a measured length changes none of it. */
const RELEASED = ['kind', 'partIds', 'between', 'fasteners', 'targets'] as const;

export function describeJoint(rows: Rows, command: CommandOf<'describe-joint'>): Ruling {
  const { type: _type, happenedAtMs: _at, jointId, ...about } = command;
  const joint = jointOf(rows, jointId);
  if (about.name !== undefined) words(about.name, 'name-missing');
  if (about.partIds || about.between) {
    checkParts(rows, joint.bikeId, about.partIds ?? joint.partIds, about.between ?? joint.between);
  }
  checkFasteners(about.fasteners ?? []);
  checkTargets(about.targets ?? []);
  checkLengths(about);
  const { bikeId, matters: wasMatters } = joint;
  // A release covers the joint as it was then; another target or another part is another joint.
  const anew = wasMatters && RELEASED.some((field) => about[field] !== undefined);
  const matters = about.matters ?? (anew ? true : undefined);
  return [
    present({
      ...{ type: 'joint-described' as const, jointId, bikeId, ...about, ...clearing(joint, about) },
      ...{ matters, wasMatters },
    }),
  ];
}

/** A joint comes apart, and with it end the waits and re-checks that were about it. */
export function apart(rows: Rows, joint: JointRow, why: string): EntryBody[] {
  const { jointId, bikeId, matters } = joint;
  const about = <R extends { jointId?: Id }>(row: R) => row.jointId === jointId;
  return [
    { type: 'joint-taken-apart', jointId, bikeId, why, matters },
    ...rows
      .group('wait', `wait@${bikeId}`)
      .filter(about)
      .map(
        ({ waitId }): EntryBody => ({
          type: 'wait-ended',
          waitId,
          bikeId,
          jointId,
          outcome: 'no-longer-needed',
        }),
      ),
    ...rows
      .group('recheck', `recheck@${bikeId}`)
      .filter(about)
      .map(
        ({ recheckId }): EntryBody => ({
          type: 'recheck-dropped',
          recheckId,
          bikeId,
          jointId,
          why: 'taken apart',
        }),
      ),
  ];
}

export function takeJointApart(rows: Rows, command: CommandOf<'take-joint-apart'>): Ruling {
  const joint = jointOf(rows, command.jointId);
  if (joint.state === 'apart') refuse('joint-apart', joint.name);
  return apart(rows, joint, words(command.why, 'reason-missing'));
}
