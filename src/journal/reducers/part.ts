import type { Entry, PartAbout, Place } from '../entries.ts';
import type { PartRow } from '../rows.ts';
import { described, pick } from './described.ts';

/** The group under which parts in this place are read together. */
function groupOfPlace(place: Place): string {
  return place.on === 'bike' ? `part@${place.bikeId}` : `part@${place.on}`;
}

const ABOUT: (keyof PartAbout)[] = [
  'label',
  'name',
  'kind',
  'serial',
  'origin',
  'originWords',
  'condition',
  'unknown',
  'note',
  'photoIds',
  'faces',
  'position',
  'massG',
  'kmBefore',
];

/** A part with its place and its one-way changes, wherever it has been. */
export function reducePart(row: PartRow | undefined, entry: Entry): PartRow | undefined {
  if (entry.type === 'part-added') {
    return {
      ...(pick(entry as PartAbout, ABOUT) as PartAbout),
      key: `part/${entry.partId}`,
      is: 'part',
      group: groupOfPlace(entry.place),
      partId: entry.partId,
      place: entry.place,
      addedAtMs: entry.happenedAtMs,
      lastMs: entry.happenedAtMs,
      changes: [],
      moves: [],
    };
  }
  if (!row) return undefined;
  switch (entry.type) {
    case 'part-described':
      return described<PartAbout, PartRow>(row, entry, ABOUT);
    case 'part-moved': {
      const { from, to, why, happenedAtMs: atMs, id: entryId } = entry;
      const next = { ...row, place: to, group: groupOfPlace(to) };
      next.moves = [...row.moves, { from, to, atMs, entryId, ...(why === undefined ? {} : { why }) }];
      if (entry.condition !== undefined) next.condition = entry.condition;
      return next;
    }
    case 'part-changed': {
      const { cut, where, before, after, left, leftWords, how, why, rulesOut, photoIds, inspection } = entry;
      const change = { cut, where, before, after, left, leftWords, how, why, rulesOut, photoIds, inspection };
      return {
        ...row,
        changes: [...row.changes, { ...change, entryId: entry.id, atMs: entry.happenedAtMs, by: entry.by }],
      };
    }
  }
  return row;
}
