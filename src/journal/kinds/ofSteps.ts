import * as about from '../checks/about.ts';
import { flag, id, list, maybe, name, reason, text } from '../checks/field.ts';
import { anyQuantity } from '../checks/quantities.ts';
import type { Entry, EntryOf, StepAbout } from '../entries.ts';
import { checkStepKind } from '../guards.ts';
import { pick } from './described.ts';
import {
  anId,
  begins,
  changes,
  correctable,
  type Fact,
  fixed,
  itsName,
  itsNote,
  itsReason,
  type Kind,
  perhapsId,
  remarkField,
} from './kind.ts';

const step = ({ stepId }: { stepId?: string }) => stepId;
const FIELDS: (keyof StepAbout)[] = ['kind', 'title', 'detail', 'jointId', 'partId', 'work', 'rank'];

/** What is logged on a step and finishes it. */
export function finishes<E extends Entry & { stepId?: string }>(): Fact<E> {
  return changes<E, 'step'>('step', step, (row, entry) => ({
    ...row,
    state: 'done',
    why: undefined,
    doneAtMs: entry.happenedAtMs,
    doneBy: entry.id,
  }));
}

const rank = fixed(about.rank);

export const stepAdded: Kind<'step-added'> = {
  fields: {
    ...{ stepId: anId, bikeId: anId, kind: correctable(about.stepKind), title: itsName },
    detail: correctable(maybe(text)),
    ...{ jointId: perhapsId, partId: perhapsId, work: fixed(maybe(about.work)), rank },
  },
  facts: [
    begins<EntryOf<'step-added'>, 'step'>('step', step, (entry) => ({
      ...(pick(entry as StepAbout, FIELDS) as StepAbout),
      group: `step@${entry.bikeId}`,
      stepId: entry.stepId,
      addedAtMs: entry.happenedAtMs,
      bikeId: entry.bikeId,
      state: 'open',
    })),
  ],
  guard: (rows, entry, only) => {
    if (!only) checkStepKind(entry, undefined);
    else if (only.includes('kind')) checkStepKind(entry, rows.get('step', entry.stepId));
  },
};

export const stepDescribed: Kind<'step-described'> = {
  fields: {
    ...{ stepId: anId, bikeId: anId },
    kind: correctable(maybe(about.stepKind)),
    title: correctable(maybe(name)),
    detail: correctable(maybe(text)),
    ...{
      jointId: perhapsId,
      partId: perhapsId,
      work: fixed(maybe(about.work)),
      rank: fixed(maybe(about.rank)),
    },
  },
  facts: [
    changes<EntryOf<'step-described'>, 'step'>('step', step, (row, entry) => ({
      ...row,
      ...pick(entry as Partial<StepAbout>, FIELDS),
    })),
  ],
  guard: (rows, entry, only) => {
    if (!only || only.includes('kind')) checkStepKind(entry, rows.get('step', entry.stepId));
  },
};

export const stepMoved: Kind<'step-moved'> = {
  fields: { stepId: anId, bikeId: anId, rank },
  facts: [
    changes<EntryOf<'step-moved'>, 'step'>('step', step, (row, entry) => ({ ...row, rank: entry.rank })),
  ],
};

export const stepDropped: Kind<'step-dropped'> = {
  fields: { stepId: anId, bikeId: anId, why: itsReason, splitInto: fixed(maybe(list(id, 100))) },
  facts: [
    changes<EntryOf<'step-dropped'>, 'step'>('step', step, (row, { why }) => ({
      ...row,
      state: 'dropped',
      why,
    })),
  ],
  stands: true,
};

export const stepSkipped: Kind<'step-skipped'> = {
  fields: { stepId: anId, bikeId: anId, why: itsReason, jointId: perhapsId },
  facts: [
    changes<EntryOf<'step-skipped'>, 'step'>('step', step, (row, { why, happenedAtMs }) => ({
      ...row,
      state: 'skipped',
      why,
      doneAtMs: happenedAtMs,
    })),
  ],
};

export const stepReopened: Kind<'step-reopened'> = {
  fields: { stepId: anId, bikeId: anId, why: itsReason },
  facts: [
    changes<EntryOf<'step-reopened'>, 'step'>('step', step, (row, { why }) => ({
      ...row,
      state: 'open',
      why,
      doneAtMs: undefined,
      doneBy: undefined,
    })),
  ],
};

/** Which step is in hand; it is kept with the bike. */
export const stepOpened: Kind<'step-opened'> = {
  fields: { stepId: anId, bikeId: anId },
  facts: [
    changes<EntryOf<'step-opened'>, 'bike'>(
      'bike',
      ({ bikeId }) => bikeId,
      (row, { stepId }) => ({ ...row, openStepId: stepId }),
    ),
  ],
};

export const stepDone: Kind<'step-done'> = {
  fields: {
    ...{ stepId: anId, bikeId: anId, jointId: perhapsId, partId: perhapsId },
    measured: correctable(maybe(anyQuantity)),
    despite: remarkField(maybe(reason)),
    note: itsNote,
    photoIds: remarkField(about.photoIds),
    matters: fixed(maybe(flag)),
  },
  facts: [finishes<EntryOf<'step-done'>>()],
};
