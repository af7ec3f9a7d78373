import * as about from '../checks/about.ts';
import { exactly, flag, maybe, short, text } from '../checks/field.ts';
import type { EntryOf } from '../entries.ts';
import { checkPressure } from '../guards.ts';
import type { WaitRow } from '../rows.ts';
import {
  anId,
  begins,
  changes,
  correctable,
  fixed,
  grows,
  itsName,
  itsNote,
  itsReason,
  type Kind,
  noted,
  perhapsId,
  remarkField,
} from './kind.ts';

const wait = ({ waitId }: { waitId: string }) => waitId;

/** A wait that runs falls due when its span is over, by the clock as it was moved. */
const running = (row: WaitRow): WaitRow => ({
  ...row,
  dueAtMs: row.startedAtMs + row.waitMs + row.clockMovedMs,
});

export const waitStarted: Kind<'wait-started'> = {
  fields: {
    ...{ waitId: anId, bikeId: anId, jointId: perhapsId, stepId: perhapsId },
    kind: fixed(about.waitKind),
    title: itsName,
    waitMs: correctable(about.waitMs),
  },
  facts: [
    begins<EntryOf<'wait-started'>, 'wait'>('wait', wait, (entry) => ({
      group: `wait@${entry.bikeId}`,
      dueAtMs: entry.happenedAtMs + entry.waitMs,
      waitId: entry.waitId,
      bikeId: entry.bikeId,
      jointId: entry.jointId,
      waitKind: entry.kind,
      title: entry.title,
      startedAtMs: entry.happenedAtMs,
      waitMs: entry.waitMs,
      clockMovedMs: 0,
    })),
  ],
};

export const waitEnded: Kind<'wait-ended'> = {
  fields: {
    ...{ waitId: anId, bikeId: anId, jointId: perhapsId },
    outcome: fixed(about.waitOutcome),
    words: remarkField(maybe(text)),
  },
  facts: [
    changes<EntryOf<'wait-ended'>, 'wait'>('wait', wait, (row, entry) => ({
      ...row,
      dueAtMs: undefined,
      group: `wait-over@${row.bikeId}`,
      endedAtMs: entry.happenedAtMs,
      outcome: entry.outcome,
    })),
  ],
};

export const waitChanged: Kind<'wait-changed'> = {
  fields: {
    ...{ waitId: anId, bikeId: anId, jointId: perhapsId },
    waitMs: correctable(about.waitMs),
    why: itsReason,
  },
  facts: [
    changes<EntryOf<'wait-changed'>, 'wait'>('wait', wait, (row, { waitMs }) =>
      row.endedAtMs === undefined ? running({ ...row, waitMs }) : row,
    ),
  ],
};

export const clockMoved: Kind<'clock-moved'> = {
  fields: {
    ...{ bikeId: anId, waitId: anId },
    byMs: fixed(about.clockMs),
    changeId: fixed(maybe(short)),
  },
  facts: [
    changes<EntryOf<'clock-moved'>, 'wait'>('wait', wait, (row, { byMs, changeId }) => {
      const answered = changeId === undefined ? row : changesWith(row, changeId);
      return row.endedAtMs === undefined
        ? running({ ...answered, clockMovedMs: row.clockMovedMs + byMs })
        : answered;
    }),
  ],
  stands: true,
};

const changesWith = (row: WaitRow, changeId: string): WaitRow => ({
  ...row,
  clockChanges: [...(row.clockChanges ?? []), changeId],
});

/** The seal of one wheel: marks and readings in the order they were made, kept so that a leak can be computed. */
export const sealMarked: Kind<'seal-marked'> = {
  fields: {
    ...{ jointId: anId, bikeId: anId, stepId: perhapsId },
    note: itsNote,
    photoIds: remarkField(about.photoIds),
    matters: fixed(flag),
    mark: correctable(about.sealMark),
    overLimit: correctable(maybe(exactly(true))),
  },
  guard: (rows, { jointId, mark, overLimit }, only) => {
    if (!only || only.includes('mark')) checkPressure(rows, jointId, mark, overLimit);
  },
  facts: [
    grows<EntryOf<'seal-marked'>, 'seal'>(
      'seal',
      ({ jointId }) => jointId,
      (row, entry) => {
        const { mark, note } = entry;
        const kept = { ...mark, ...noted(entry) };
        return {
          group: `seal@${entry.bikeId}`,
          jointId: entry.jointId,
          bikeId: entry.bikeId,
          ...row,
          marks: [...(row?.marks ?? []), note === undefined ? kept : { ...kept, note }],
          // A burp, fresh sealant or a new seating makes an older verdict worthless.
          verdict:
            mark.mark === 'verdict'
              ? mark.verdict
              : mark.mark === 'burped' || mark.mark === 'sealant' || mark.mark === 'seated'
                ? undefined
                : row?.verdict,
        };
      },
    ),
    changes<EntryOf<'seal-marked'>, 'step'>(
      'step',
      ({ stepId }) => stepId,
      (row, entry) =>
        entry.mark.mark === 'seated' && row.kind === 'seat'
          ? { ...row, state: 'done', why: undefined, doneAtMs: entry.happenedAtMs, doneBy: entry.id }
          : row,
    ),
  ],
};
