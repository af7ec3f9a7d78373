import type { Entry, Id } from '../../journal/entries.ts';

/** The things an entry speaks of. */
export interface EntryAbout {
  bikes: Id[];
  parts: Id[];
  joints: Id[];
}

interface Named {
  bikeId?: Id;
  partId?: Id;
  jointId?: Id;
  partIds?: Id[];
  place?: { bikeId?: Id };
  from?: { bikeId?: Id };
  to?: { bikeId?: Id };
  between?: { partId?: Id }[] | string;
  targets?: { partId?: Id }[];
}

const once = (ids: (Id | undefined)[]): Id[] => [...new Set(ids.filter((id) => id !== undefined))];

/** The bikes, parts and joints named in an entry, each once. */
export function entryAbout(entry: Entry): EntryAbout {
  const { bikeId, partId, jointId, partIds = [], place, from, to, between, targets = [] } = entry as Named;
  const laid = Array.isArray(between) ? between : [];
  return {
    bikes: once([bikeId, place?.bikeId, from?.bikeId, to?.bikeId]),
    parts: once([partId, ...partIds, ...laid.map((one) => one.partId), ...targets.map((one) => one.partId)]),
    joints: once([jointId]),
  };
}
