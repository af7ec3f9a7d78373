import * as about from '../checks/about.ts';
import { flag, instant, maybe, sentence, text } from '../checks/field.ts';
import type { EntryOf } from '../entries.ts';
import { standing } from '../order.ts';
import {
  anId,
  begins,
  changes,
  correctable,
  fixed,
  grows,
  itsReason,
  type Kind,
  perhapsId,
  remarkField,
} from './kind.ts';

const recheck = ({ recheckId }: { recheckId: string }) => recheckId;

/** How often, how far and how long a bike has been ridden, and each ride where it stands. */
export const rideLogged: Kind<'ride-logged'> = {
  fields: {
    ...{ rideId: anId, bikeId: anId },
    minutes: correctable(about.rideMinutes),
    km: correctable(about.rideKm),
    noticed: remarkField(maybe(text)),
    first: fixed(flag),
  },
  facts: [
    grows<EntryOf<'ride-logged'>, 'rides'>(
      'rides',
      ({ bikeId }) => bikeId,
      (row, entry) => {
        const { bikeId, km = 0, minutes = 0, happenedAtMs: atMs } = entry;
        return {
          group: `rides@${bikeId}`,
          bikeId,
          count: (row?.count ?? 0) + 1,
          km: (row?.km ?? 0) + km,
          minutes: (row?.minutes ?? 0) + minutes,
          firstAtMs: row?.firstAtMs ?? atMs,
          lastAtMs: atMs,
          log: [...(row?.log ?? []), { ...standing(entry), atMs, km }],
        };
      },
    ),
  ],
};

/** A task that falls due by time, by ride count or by distance, whichever comes first. */
export const recheckSet: Kind<'recheck-set'> = {
  fields: {
    ...{ recheckId: anId, bikeId: anId, jointId: perhapsId, partId: perhapsId },
    kind: fixed(about.instructionKind),
    title: remarkField(sentence),
    instruction: remarkField(sentence),
    dueDays: fixed(about.dueDays),
    dueRides: fixed(about.dueRides),
    dueKm: fixed(about.dueKm),
    dueAtMs: fixed(maybe(instant)),
    turn: fixed(about.turn),
  },
  facts: [
    begins<EntryOf<'recheck-set'>, 'recheck'>('recheck', recheck, (entry) => {
      const { kind, title, instruction, jointId, partId, dueDays, dueRides, dueKm, turn } = entry;
      return {
        group: `recheck@${entry.bikeId}`,
        recheckId: entry.recheckId,
        bikeId: entry.bikeId,
        setAtMs: entry.happenedAtMs,
        setOrder: standing(entry),
        ridesThen: 0,
        kmThen: 0,
        ...{ kind, title, instruction, jointId, partId, dueDays, dueRides, dueKm, turn },
        timeDueMs: entry.dueAtMs,
      };
    }),
    changes<EntryOf<'recheck-set'>, 'joint'>(
      'joint',
      ({ jointId }) => jointId,
      (row) => ({ ...row, recheckAsked: true }),
    ),
  ],
};

export const recheckChanged: Kind<'recheck-changed'> = {
  fields: {
    ...{ recheckId: anId, bikeId: anId, jointId: perhapsId },
    dueDays: fixed(about.dueDays),
    dueRides: fixed(about.dueRides),
    dueKm: fixed(about.dueKm),
    dueAtMs: fixed(maybe(instant)),
    why: itsReason,
  },
  facts: [
    changes<EntryOf<'recheck-changed'>, 'recheck'>('recheck', recheck, (row, entry) => ({
      ...row,
      dueDays: entry.dueDays,
      dueRides: entry.dueRides,
      dueKm: entry.dueKm,
      timeDueMs: entry.dueAtMs,
    })),
  ],
};

export const recheckDropped: Kind<'recheck-dropped'> = {
  fields: { recheckId: anId, bikeId: anId, jointId: perhapsId, why: itsReason },
  facts: [
    changes<EntryOf<'recheck-dropped'>, 'recheck'>('recheck', recheck, (row, { why }) => ({
      ...row,
      dropped: why,
    })),
  ],
};

export const recheckAnswered: Kind<'recheck-answered'> = {
  fields: {
    ...{ recheckId: anId, bikeId: anId, jointId: perhapsId, partId: perhapsId },
    outcome: correctable(about.answer),
    words: remarkField(maybe(text)),
    photoIds: remarkField(about.photoIds),
  },
  facts: [
    changes<EntryOf<'recheck-answered'>, 'recheck'>('recheck', recheck, (row, entry) => ({
      ...row,
      answeredAtMs: entry.happenedAtMs,
      found: entry.outcome,
    })),
  ],
};
