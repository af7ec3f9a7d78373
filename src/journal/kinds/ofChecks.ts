import * as about from '../checks/about.ts';
import { id, instant, list, maybe, sentence, short, text } from '../checks/field.ts';
import type { EntryOf } from '../entries.ts';
import { checkLimit, checkRideItems } from '../guards.ts';
import { standing } from '../order.ts';
import type { BikeRow } from '../rows.ts';
import {
  anId,
  begins,
  changes,
  correctable,
  fixed,
  grows,
  itsReason,
  itsWords,
  type Kind,
  perhapsId,
  remarkField,
} from './kind.ts';

const bike = ({ bikeId }: { bikeId: string }) => bikeId;

/** Whether the last release still stands: neither withdrawn nor revoked, and not a statement against riding. */
export function releaseStands({ release, revoked }: Pick<BikeRow, 'release' | 'revoked'>): boolean {
  if (!release || release.withdrawn !== undefined || release.statement === 'not-to-ride') return false;
  return revoked?.releaseId !== release.releaseId;
}

/** What was found wrong, until an entry says how it was mended. */
export const defectFound: Kind<'defect-found'> = {
  fields: {
    ...{ defectId: anId, bikeId: anId, jointId: perhapsId, partId: perhapsId, words: itsWords },
    area: fixed(id),
    decision: correctable(about.decision),
    untilMs: correctable(maybe(instant)),
    untilKm: correctable(about.limitKm),
    restriction: correctable(maybe(text)),
  },
  facts: [
    begins<EntryOf<'defect-found'>, 'defect'>(
      'defect',
      ({ defectId }) => defectId,
      (entry) => {
        const { defectId, bikeId, jointId, words, area, decision, untilMs, untilKm, restriction } = entry;
        return {
          group: `defect@${bikeId}`,
          ...{ defectId, bikeId, jointId, words, area, decision, untilMs, untilKm, restriction },
          foundAtMs: entry.happenedAtMs,
          foundOrder: standing(entry),
        };
      },
    ),
  ],
  guard: (rows, entry) => checkLimit(rows, entry),
};

export const defectClosed: Kind<'defect-closed'> = {
  fields: { defectId: anId, bikeId: anId, how: itsWords },
  facts: [
    changes<EntryOf<'defect-closed'>, 'defect'>(
      'defect',
      ({ defectId }) => defectId,
      (row, { how }) => ({ ...row, closed: how, group: `defect-closed@${row.bikeId}` }),
    ),
  ],
};

/** The pre-ride check in hand: the newest confirmation of each group since the last release. */
export const rideCheckConfirmed: Kind<'ride-check-confirmed'> = {
  fields: { bikeId: anId, groupId: fixed(id), items: correctable(about.checkItems) },
  facts: [
    grows<EntryOf<'ride-check-confirmed'>, 'ridecheck'>('ridecheck', bike, (row, entry) => ({
      group: `ridecheck@${entry.bikeId}`,
      bikeId: entry.bikeId,
      groups: { ...row?.groups, [entry.groupId]: { atMs: entry.happenedAtMs, items: entry.items } },
    })),
  ],
  guard: (_rows, { groupId, items }) => checkRideItems(groupId, items),
};

export const bikeReleased: Kind<'bike-released'> = {
  fields: {
    ...{ bikeId: anId, releaseId: anId, statement: fixed(about.statement) },
    covers: fixed(sentence),
    by: fixed(short),
    open: fixed(list(about.openItem, 2000)),
    restrictions: fixed(maybe(text)),
  },
  facts: [
    changes<EntryOf<'bike-released'>, 'bike'>('bike', bike, (row, entry) => ({
      ...row,
      revoked: undefined,
      release: {
        releaseId: entry.releaseId,
        atMs: entry.happenedAtMs,
        statement: entry.statement,
        open: entry.open.length,
      },
    })),
    grows<EntryOf<'bike-released'>, 'release'>('release', bike, (row, entry) => {
      const { releaseId, statement, covers, by, open, restrictions, bikeId, happenedAtMs: atMs } = entry;
      const release = { releaseId, atMs, statement, covers, by, open, restrictions };
      return { group: `release@${bikeId}`, bikeId, releases: [...(row?.releases ?? []), release] };
    }),
    // A check clears the bike for the release it was made for; the next release wants its own.
    grows<EntryOf<'bike-released'>, 'ridecheck'>('ridecheck', bike, (_row, { bikeId }) => ({
      group: `ridecheck@${bikeId}`,
      bikeId,
      groups: {},
    })),
  ],
  stands: true,
};

export const releaseWithdrawn: Kind<'release-withdrawn'> = {
  fields: { bikeId: anId, why: itsReason },
  facts: [
    changes<EntryOf<'release-withdrawn'>, 'bike'>('bike', bike, (row, { why }) =>
      row.release ? { ...row, release: { ...row.release, withdrawn: why } } : row,
    ),
  ],
  stands: true,
};

/** What became of a finding of the fit check. */
const itsFinding = ({ bikeId, findingId }: { bikeId: string; findingId: string }) => `${bikeId}:${findingId}`;

export const findingAccepted: Kind<'finding-accepted'> = {
  fields: { bikeId: anId, findingId: fixed(short), words: remarkField(text) },
  facts: [
    grows<EntryOf<'finding-accepted'>, 'finding'>('finding', itsFinding, (_row, entry) => {
      const { bikeId, findingId, words } = entry;
      return { group: `finding@${bikeId}`, bikeId, findingId, words, outcome: 'accepted' };
    }),
  ],
};

export const findingNoted: Kind<'finding-noted'> = {
  fields: {
    ...{ bikeId: anId, findingId: fixed(short), words: remarkField(text) },
    outcome: fixed(about.findingOutcome),
  },
  facts: [
    grows<EntryOf<'finding-noted'>, 'finding'>('finding', itsFinding, (_row, entry) => {
      const { bikeId, findingId, words, outcome } = entry;
      return { group: `finding@${bikeId}`, bikeId, findingId, words, outcome };
    }),
  ],
};
