import type { Entry, Id, Place } from './entries.ts';
import type { Fact } from './kinds/kind.ts';
import { changes } from './kinds/kind.ts';
import { kinds } from './kinds/kinds.ts';
import { releaseStands } from './kinds/ofChecks.ts';
import type { RowKind } from './rows.ts';

/** The bike a place names, if it names one. */
export function bikeOfPlace(place: Place): Id | undefined {
  return place.on === 'bike' ? place.bikeId : undefined;
}

/** The bikes an entry stands in the history of. */
export function bikesOf(entry: Entry): Id[] {
  if (entry.type === 'part-added') return [bikeOfPlace(entry.place)].filter((id) => id !== undefined);
  if (entry.type === 'part-moved') {
    return [...new Set([bikeOfPlace(entry.from), bikeOfPlace(entry.to)])].filter((id) => id !== undefined);
  }
  return 'bikeId' in entry && entry.bikeId !== undefined ? [entry.bikeId] : [];
}

/** The bike whose release an entry revokes, if it revokes one: a part revokes where it leaves, not where it comes to. */
export function revokedBike(entry: Entry): Id | undefined {
  if (entry.type === 'joint-described') return entry.revokes ? entry.bikeId : undefined;
  if ((entry as { matters?: boolean }).matters !== true) return undefined;
  // A look that found everything as it was changes nothing.
  if (entry.type === 'torque-found' && entry.outcome === 'held') return undefined;
  return entry.type === 'part-moved' ? bikeOfPlace(entry.from) : bikesOf(entry)[0];
}

/** A look is a fact of its bike whatever it found: its correction may revoke, and be taken back. */
const coveredBike = (entry: Entry): Id | undefined =>
  entry.type === 'torque-found' ? entry.bikeId : revokedBike(entry);

const revoking: Fact<Entry> = changes<Entry, 'bike'>('bike', coveredBike, (row, entry) =>
  revokedBike(entry) !== undefined && releaseStands(row)
    ? {
        ...row,
        revoked: {
          releaseId: row.release?.releaseId ?? '',
          atMs: entry.happenedAtMs,
          entryId: entry.id,
          because: entry.type,
        },
      }
    : row,
);

/** All that an entry is a fact of; kinds that this version does not know are facts of nothing. */
export function factsOf(entry: Entry): Fact<Entry>[] {
  const known = Object.hasOwn(kinds, entry.type) ? (kinds[entry.type].facts as unknown as Fact<Entry>[]) : [];
  return coveredBike(entry) === undefined ? known : [...known, revoking];
}

/** The key of the row that a fact of an entry is about, where it names one. */
export function keyOf(fact: Fact<Entry>, entry: Entry): string | undefined {
  const id = fact.of(entry);
  return id === undefined ? undefined : `${fact.kind}/${id}`;
}

/** Keys of the rows that are reduced from this entry. */
export function factKeys(entry: Entry): string[] {
  const keys = factsOf(entry).map((fact) => keyOf(fact, entry));
  return [...new Set(keys.filter((key) => key !== undefined))];
}

/** The row that begins with this entry. */
export function begunKey(entry: Entry): string | undefined {
  const fact = factsOf(entry).find(({ begins }) => begins);
  return fact && keyOf(fact, entry);
}

export function splitKey(key: string): [kind: RowKind, id: Id] {
  const slash = key.indexOf('/');
  return [key.slice(0, slash) as RowKind, key.slice(slash + 1)];
}

// Thirteen digits hold every millisecond until the year 2286; inverted, the newest sorts first.
const LAST_MS = 9_999_999_999_999;

/** The sorting part of a history place: newest first. */
export function newestFirst(ms: number): string {
  return String(LAST_MS - Math.min(LAST_MS, Math.max(0, Math.round(ms)))).padStart(13, '0');
}

/** The parts an entry names, by themselves or as what a joint is made of. */
function partsNamed(entry: Entry): Id[] {
  const { partId, partIds, between } = entry as {
    partId?: Id;
    partIds?: Id[];
    between?: { partId?: Id }[] | string;
  };
  const shims = Array.isArray(between) ? between.flatMap((one) => one.partId ?? []) : [];
  return [...new Set([...(partId === undefined ? [] : [partId]), ...(partIds ?? []), ...shims])];
}

/**
 * Every place under which an entry is found again: the histories of its bikes, parts, joint and tool, newest first,
 * and the rows it is a fact of. A correction is found where the entry is that it corrects.
 * @param root the entry that is corrected in the end, where this one is a correction
 */
export function placesOf(entry: Entry, root: Entry | undefined = undefined): string[] {
  const about = root ?? entry;
  const when = newestFirst(entry.orderMs ?? entry.happenedAtMs);
  const { jointId, toolId, tool } = about as { jointId?: Id; toolId?: Id; tool?: { toolId: Id } };
  const toolNamed = toolId ?? tool?.toolId;
  const places = [
    ...bikesOf(about).map((id) => `b:${id}:${when}`),
    ...partsNamed(about).map((id) => `p:${id}:${when}`),
    ...(jointId ? [`j:${jointId}:${when}`] : []),
    ...(toolNamed ? [`t:${toolNamed}:${when}`] : []),
    ...factKeys(about),
    ...(root ? [`fix/${root.id}`, ...factKeys(entry)] : []),
  ];
  return [...new Set(places)];
}
