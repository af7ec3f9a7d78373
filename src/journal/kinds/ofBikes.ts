import { exactly, maybe, name, text } from '../checks/field.ts';
import type { EntryOf, EntryType } from '../entries.ts';
import {
  anId,
  begins,
  changes,
  correctable,
  fixed,
  itsName,
  itsReason,
  type Kind,
  perhapsId,
} from './kind.ts';

type Of<T extends EntryType> = EntryOf<T>;
const bike = ({ bikeId }: { bikeId: string }) => bikeId;

export const bikeStarted: Kind<'bike-started'> = {
  fields: { bikeId: anId, name: itsName, about: correctable(maybe(text)), demo: fixed(maybe(exactly(true))) },
  facts: [
    begins<Of<'bike-started'>, 'bike'>('bike', bike, (entry) => ({
      group: 'bike',
      bikeId: entry.bikeId,
      name: entry.name,
      about: entry.about ?? '',
      demo: entry.demo === true,
      startedAtMs: entry.happenedAtMs,
      steps: 0,
      stepsDone: 0,
      stepsSkipped: 0,
      handTight: 0,
      grave: [],
    })),
  ],
};

export const bikeDescribed: Kind<'bike-described'> = {
  fields: {
    bikeId: anId,
    name: correctable(maybe(name)),
    about: correctable(maybe(text)),
    photoId: perhapsId,
  },
  facts: [
    changes<Of<'bike-described'>, 'bike'>('bike', bike, (row, entry) => ({
      ...row,
      name: entry.name ?? row.name,
      about: entry.about ?? row.about,
      photoId: entry.photoId ?? row.photoId,
    })),
  ],
};

export const bikePutAway: Kind<'bike-put-away'> = {
  fields: { bikeId: anId, why: itsReason },
  facts: [changes<Of<'bike-put-away'>, 'bike'>('bike', bike, (row, { why }) => ({ ...row, putAway: why }))],
};

export const bikeTakenOut: Kind<'bike-taken-out'> = {
  fields: { bikeId: anId },
  facts: [changes<Of<'bike-taken-out'>, 'bike'>('bike', bike, (row) => ({ ...row, putAway: undefined }))],
};
