import * as about from '../checks/about.ts';
import { flag, maybe, name, reason, sentence, short, text } from '../checks/field.ts';
import type { EntryOf, PartAbout, Place } from '../entries.ts';
import { checkChangeSize, checkLabel } from '../guards.ts';
import { described, pick } from './described.ts';
import {
  anId,
  begins,
  changes,
  correctable,
  type Field,
  fixed,
  itsNote,
  type Kind,
  noted,
  perhapsId,
  perhapsReason,
  remarkField,
} from './kind.ts';

/** The group under which parts in this place are read together. */
const groupOfPlace = (place: Place): string =>
  place.on === 'bike' ? `part@${place.bikeId}` : `part@${place.on}`;

const part = ({ partId }: { partId: string }) => partId;

const ABOUT = {
  label: correctable(short),
  name: correctable(name),
  kind: correctable(short),
  serial: correctable(maybe(short)),
  origin: correctable(about.origin),
  originWords: correctable(maybe(text)),
  condition: correctable(maybe(text)),
  unknown: correctable(maybe(text)),
  note: itsNote,
  photoIds: remarkField(about.photoIds),
  faces: correctable(about.faces),
  position: correctable(about.position),
  massG: correctable(about.massG),
  kmBefore: correctable(about.kmBefore),
} satisfies Record<keyof PartAbout, Field>;
const FIELDS = Object.keys(ABOUT) as (keyof PartAbout)[];

export const partAdded: Kind<'part-added'> = {
  fields: { partId: anId, place: fixed(about.place), ...ABOUT },
  facts: [
    begins<EntryOf<'part-added'>, 'part'>('part', part, (entry) => ({
      ...(pick(entry as PartAbout, FIELDS) as PartAbout),
      group: groupOfPlace(entry.place),
      partId: entry.partId,
      place: entry.place,
      addedAtMs: entry.happenedAtMs,
      changes: [],
      moves: [],
    })),
  ],
  guard: (rows, { partId, label }) => checkLabel(rows, partId, label),
};

/** What a description may leave out. */
const someOf = <F extends Record<string, Field>>(fields: F): F =>
  Object.fromEntries(
    Object.entries(fields).map(([key, { check, as }]) => [key, { check: maybe(check), as }]),
  ) as F;

export const partDescribed: Kind<'part-described'> = {
  fields: { partId: anId, bikeId: perhapsId, cleared: fixed(maybe(about.fieldNames)), ...someOf(ABOUT) },
  facts: [
    changes<EntryOf<'part-described'>, 'part'>('part', part, (row, entry) =>
      described<PartAbout, typeof row>(row, entry, FIELDS),
    ),
  ],
  guard: (rows, { partId, label }) => {
    if (label !== undefined) checkLabel(rows, partId, label);
  },
};

export const partMoved: Kind<'part-moved'> = {
  fields: {
    partId: anId,
    from: fixed(about.place),
    to: fixed(about.place),
    why: perhapsReason,
    condition: correctable(maybe(text)),
    matters: fixed(maybe(flag)),
  },
  facts: [
    changes<EntryOf<'part-moved'>, 'part'>('part', part, (row, entry) => {
      const { from, to, why, condition = row.condition } = entry;
      return {
        ...row,
        place: to,
        group: groupOfPlace(to),
        moves: [...row.moves, { from, to, ...noted(entry), ...(why === undefined ? {} : { why }) }],
        condition,
      };
    }),
  ],
};

export const partChanged: Kind<'part-changed'> = {
  fields: {
    partId: anId,
    bikeId: perhapsId,
    cut: correctable(about.cutKind),
    where: correctable(sentence),
    before: correctable(maybe(about.cutLength)),
    after: correctable(maybe(about.cutLength)),
    amount: correctable(maybe(about.cutLength)),
    left: correctable(maybe(about.cutLength)),
    leftWords: correctable(maybe(text)),
    how: correctable(maybe(sentence)),
    why: remarkField(maybe(reason)),
    rulesOut: correctable(maybe(text)),
    photoIds: remarkField(about.photoIds),
    inspection: remarkField(maybe(about.inspection)),
  },
  facts: [
    changes<EntryOf<'part-changed'>, 'part'>('part', part, (row, entry) => {
      const { cut, where, before, after, amount, left, leftWords, how, why, rulesOut, photoIds, inspection } =
        entry;
      const sizes = { before, after, amount, left, leftWords };
      const change = { cut, where, ...sizes, how, why, rulesOut, photoIds, inspection };
      return { ...row, changes: [...row.changes, { ...change, ...noted(entry), by: entry.by }] };
    }),
  ],
  guard: (_rows, entry) => checkChangeSize(entry),
};
