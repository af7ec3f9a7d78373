import * as about from '../checks/about.ts';
import { exactly, flag, list, maybe, name, reason, sentence } from '../checks/field.ts';
import { length, torque } from '../checks/quantities.ts';
import type { EntryOf, JointAbout } from '../entries.ts';
import { checkBolts, checkTorque } from '../guards.ts';
import type { JointRow } from '../rows.ts';
import { described, pick } from './described.ts';
import {
  anId,
  begins,
  changes,
  correctable,
  type Field,
  fixed,
  itsNote,
  itsReason,
  type Kind,
  noted,
  perhapsId,
  remarkField,
} from './kind.ts';
import { finishes } from './ofSteps.ts';

/** A joint: target, applied and found stay three values; none is ever copied from another. */
const itsJoint = ({ jointId }: { jointId?: string }) => jointId;

const ABOUT = {
  name: remarkField(name),
  kind: correctable(about.jointKind),
  partIds: fixed(list(about.partId, 40)),
  between: fixed(list(about.between, 40)),
  fasteners: correctable(list(about.fastener, 40)),
  targets: correctable(list(about.target, 40)),
  matters: correctable(flag),
  note: itsNote,
  clamp: correctable(maybe(about.clamp)),
  bar: correctable(maybe(about.bar)),
  extension: correctable(maybe(about.extension)),
  diameters: correctable(maybe(about.diameters)),
} satisfies Record<keyof JointAbout, Field>;
const FIELDS = Object.keys(ABOUT) as (keyof JointAbout)[];

export const jointMade: Kind<'joint-made'> = {
  fields: { jointId: anId, bikeId: anId, ...ABOUT },
  facts: [
    begins<EntryOf<'joint-made'>, 'joint'>('joint', itsJoint, (entry) => ({
      ...(pick(entry as JointAbout, FIELDS) as JointAbout),
      group: `joint@${entry.bikeId}`,
      jointId: entry.jointId,
      bikeId: entry.bikeId,
      madeAtMs: entry.happenedAtMs,
      state: 'open',
      appliedTimes: 0,
      moved: 0,
    })),
  ],
};

export const jointDescribed: Kind<'joint-described'> = {
  fields: {
    ...{ jointId: anId, bikeId: anId, wasMatters: fixed(flag), revokes: fixed(maybe(exactly(true))) },
    cleared: fixed(maybe(about.fieldNames)),
    name: remarkField(maybe(name)),
    kind: correctable(maybe(about.jointKind)),
    partIds: fixed(maybe(list(about.partId, 40))),
    between: fixed(maybe(list(about.between, 40))),
    fasteners: correctable(maybe(list(about.fastener, 40))),
    targets: correctable(maybe(list(about.target, 40))),
    matters: correctable(maybe(flag)),
    note: itsNote,
    clamp: correctable(maybe(about.clamp)),
    bar: correctable(maybe(about.bar)),
    extension: correctable(maybe(about.extension)),
    diameters: correctable(maybe(about.diameters)),
  },
  facts: [
    changes<EntryOf<'joint-described'>, 'joint'>('joint', itsJoint, (row, entry) =>
      described<JointAbout, JointRow>(row, entry, FIELDS),
    ),
  ],
};

export const jointTakenApart: Kind<'joint-taken-apart'> = {
  fields: { jointId: anId, bikeId: anId, why: itsReason, matters: fixed(flag) },
  facts: [
    changes<EntryOf<'joint-taken-apart'>, 'joint'>('joint', itsJoint, (row, { why }) => ({
      ...row,
      state: 'apart',
      apartWhy: why,
      applied: undefined,
      found: undefined,
      locked: undefined,
      lockedBefore: undefined,
      moved: 0,
      recheckAsked: undefined,
    })),
  ],
};

export const torqueApplied: Kind<'torque-applied'> = {
  fields: {
    ...{ jointId: anId, bikeId: anId, stepId: perhapsId },
    applied: correctable(torque),
    entered: fixed(about.entered),
    bolts: correctable(about.boltCount),
    passes: correctable(about.boltCount),
    tool: correctable(maybe(about.toolSnapshot)),
    between: correctable(maybe(about.betweenKind)),
    marked: correctable(maybe(flag)),
    despite: remarkField(maybe(reason)),
    note: itsNote,
    photoIds: remarkField(about.photoIds),
    matters: fixed(flag),
  },
  facts: [
    changes<EntryOf<'torque-applied'>, 'joint'>('joint', itsJoint, (row, entry) => ({
      ...row,
      state: 'torqued',
      apartWhy: undefined,
      appliedTimes: row.appliedTimes + 1,
      recheckAsked: undefined,
      applied: {
        ...noted(entry),
        applied: entry.applied,
        bolts: entry.bolts,
        passes: entry.passes,
        marked: entry.marked === true,
        ...(entry.by ? { by: entry.by } : {}),
        ...(entry.tool ? { tool: entry.tool } : {}),
        ...(entry.between ? { between: entry.between } : {}),
      },
    })),
    finishes<EntryOf<'torque-applied'>>(),
  ],
  guard: (rows, { jointId, applied, bolts }) => {
    checkTorque(rows.get('joint', jointId), applied);
    checkBolts(rows, jointId, bolts);
  },
};

export const handTightened: Kind<'hand-tightened'> = {
  fields: {
    ...{ jointId: anId, bikeId: anId, stepId: perhapsId },
    bolts: correctable(about.boltCount),
    note: itsNote,
    matters: fixed(flag),
  },
  facts: [
    changes<EntryOf<'hand-tightened'>, 'joint'>('joint', itsJoint, (row) => ({
      ...row,
      state: 'hand-tight',
      apartWhy: undefined,
    })),
  ],
};

export const torqueFound: Kind<'torque-found'> = {
  fields: {
    ...{ jointId: anId, bikeId: anId, recheckId: perhapsId },
    outcome: correctable(about.foundOutcome),
    way: correctable(about.foundWay),
    movedAt: correctable(maybe(torque)),
    turnedDeg: correctable(about.turnedDeg),
    tool: correctable(maybe(about.toolSnapshot)),
    note: itsNote,
    photoIds: remarkField(about.photoIds),
    matters: fixed(flag),
  },
  facts: [
    changes<EntryOf<'torque-found'>, 'joint'>('joint', itsJoint, (row, entry) => ({
      ...row,
      moved: entry.outcome === 'held' ? row.moved : row.moved + 1,
      ...(row.locked && entry.outcome !== 'held'
        ? { locked: { ...row.locked, brokenAtMs: entry.happenedAtMs } }
        : {}),
      found: {
        ...noted(entry),
        outcome: entry.outcome,
        way: entry.way,
        ...(entry.movedAt ? { movedAt: entry.movedAt } : {}),
        ...(entry.turnedDeg === undefined ? {} : { turnedDeg: entry.turnedDeg }),
      },
    })),
    changes<EntryOf<'torque-found'>, 'recheck'>(
      'recheck',
      ({ recheckId }) => recheckId,
      (row, entry) => ({ ...row, answeredAtMs: entry.happenedAtMs, found: entry.outcome }),
    ),
  ],
  // What was met may be more than the thread should have been given.
  guard: (_rows, { movedAt }) => {
    if (movedAt) checkTorque(undefined, movedAt);
  },
};

/** Threadlocker on the threads of a joint, the step it finishes and the cure it begins. */
export const lockerApplied: Kind<'locker-applied'> = {
  fields: {
    ...{ jointId: perhapsId, bikeId: anId, stepId: perhapsId, waitId: anId },
    title: remarkField(maybe(name)),
    grade: correctable(sentence),
    surface: correctable(sentence),
    primer: correctable(flag),
    temperature: correctable(maybe(about.celsius)),
    gap: correctable(maybe(length)),
    waitMs: correctable(about.waitMs),
    note: itsNote,
    photoIds: remarkField(about.photoIds),
    matters: fixed(flag),
  },
  facts: [
    changes<EntryOf<'locker-applied'>, 'joint'>('joint', itsJoint, (row, entry) => ({
      ...row,
      ...(row.locked ? { lockedBefore: [...(row.lockedBefore ?? []), row.locked] } : {}),
      locked: {
        ...noted(entry),
        grade: entry.grade,
        surface: entry.surface,
        primer: entry.primer,
        ...(entry.temperature ? { temperature: entry.temperature } : {}),
        ...(entry.gap ? { gap: entry.gap } : {}),
        waitId: entry.waitId,
        curedAtMs: entry.happenedAtMs + entry.waitMs,
      },
    })),
    finishes<EntryOf<'locker-applied'>>(),
    begins<EntryOf<'locker-applied'>, 'wait'>(
      'wait',
      ({ waitId }) => waitId,
      (entry) => ({
        group: `wait@${entry.bikeId}`,
        dueAtMs: entry.happenedAtMs + entry.waitMs,
        waitId: entry.waitId,
        bikeId: entry.bikeId,
        jointId: entry.jointId,
        waitKind: 'cure',
        title: entry.title ?? entry.grade,
        startedAtMs: entry.happenedAtMs,
        waitMs: entry.waitMs,
        clockMovedMs: 0,
      }),
    ),
  ],
};
