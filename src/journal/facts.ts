import type { Entry, Id, Place } from './entries.ts';
import type { RowKind } from './rows.ts';

/** Ids of what the demo brings begin with this, so that it can be told from what is the person's own. */
export const DEMO = 'demo-';

export const isDemo = (id: Id): boolean => id.startsWith(DEMO);

/** The bike a place names, if it names one. */
export function bikeOf(place: Place): Id | undefined {
  return place.on === 'bike' ? place.bikeId : undefined;
}

/** The bikes an entry stands in the history of. */
export function bikesOf(entry: Entry): Id[] {
  if (entry.type === 'part-added') return [bikeOf(entry.place)].filter((id) => id !== undefined);
  if (entry.type === 'part-moved') {
    return [...new Set([bikeOf(entry.from), bikeOf(entry.to)])].filter((id) => id !== undefined);
  }
  return 'bikeId' in entry && entry.bikeId !== undefined ? [entry.bikeId] : [];
}

type KeyField =
  | 'partId'
  | 'jointId'
  | 'stepId'
  | 'waitId'
  | 'recheckId'
  | 'toolId'
  | 'defectId'
  | 'bikeId'
  | 'findingId';

/** Which rows an entry type is a fact of: the row's kind, and the field that names it. */
const FACT_OF: Partial<Record<Entry['type'], [RowKind, KeyField][]>> = {
  'bike-started': [['bike', 'bikeId']],
  'bike-described': [['bike', 'bikeId']],
  'bike-put-away': [['bike', 'bikeId']],
  'bike-taken-out': [['bike', 'bikeId']],
  'part-added': [['part', 'partId']],
  'part-described': [['part', 'partId']],
  'part-moved': [['part', 'partId']],
  'part-changed': [['part', 'partId']],
  'joint-made': [['joint', 'jointId']],
  'joint-described': [['joint', 'jointId']],
  'joint-taken-apart': [['joint', 'jointId']],
  'step-added': [['step', 'stepId']],
  'step-described': [['step', 'stepId']],
  'step-moved': [['step', 'stepId']],
  'step-dropped': [['step', 'stepId']],
  'step-skipped': [['step', 'stepId']],
  'step-reopened': [['step', 'stepId']],
  'step-opened': [['bike', 'bikeId']],
  'step-done': [['step', 'stepId']],
  'torque-applied': [
    ['joint', 'jointId'],
    ['step', 'stepId'],
  ],
  'hand-tightened': [['joint', 'jointId']],
  'locker-applied': [
    ['joint', 'jointId'],
    ['step', 'stepId'],
    ['wait', 'waitId'],
  ],
  'wait-started': [['wait', 'waitId']],
  'wait-ended': [['wait', 'waitId']],
  'wait-changed': [['wait', 'waitId']],
  'clock-moved': [['wait', 'waitId']],
  'seal-marked': [
    ['seal', 'jointId'],
    ['step', 'stepId'],
  ],
  'tool-added': [['tool', 'toolId']],
  'tool-described': [['tool', 'toolId']],
  'tool-put-away': [['tool', 'toolId']],
  'tool-found-out': [['tool', 'toolId']],
  'defect-found': [['defect', 'defectId']],
  'defect-closed': [['defect', 'defectId']],
  'ride-check-confirmed': [['ridecheck', 'bikeId']],
  'bike-released': [
    ['bike', 'bikeId'],
    ['release', 'bikeId'],
    ['ridecheck', 'bikeId'],
  ],
  'release-withdrawn': [['bike', 'bikeId']],
  'ride-logged': [['rides', 'bikeId']],
  'recheck-set': [
    ['recheck', 'recheckId'],
    ['joint', 'jointId'],
  ],
  'recheck-changed': [['recheck', 'recheckId']],
  'recheck-dropped': [['recheck', 'recheckId']],
  'torque-found': [
    ['joint', 'jointId'],
    ['recheck', 'recheckId'],
  ],
  'recheck-answered': [['recheck', 'recheckId']],
};

/** Keys of the rows that are reduced from this entry. */
export function factKeys(entry: Entry): string[] {
  if (entry.type === 'settings-changed') return ['settings/app'];
  if (entry.type === 'finding-accepted' || entry.type === 'finding-noted') {
    return [`finding/${entry.bikeId}:${entry.findingId}`];
  }
  const named = entry as Partial<Record<KeyField, Id>>;
  return (FACT_OF[entry.type] ?? []).flatMap(([kind, field]) => {
    const id = named[field];
    return id === undefined ? [] : [`${kind}/${id}`];
  });
}

// Thirteen digits hold every millisecond until the year 2286; inverted, the newest sorts first.
const LAST_MS = 9_999_999_999_999;

/** The sorting part of a history place: newest first. */
function newestFirst(ms: number): string {
  return String(LAST_MS - Math.max(0, Math.round(ms))).padStart(13, '0');
}

/**
 * Every place under which an entry is found again: the histories of its bikes, parts and joint, newest
 * first, and the rows it is a fact of.
 * @param jointPartIds parts of the joint the entry speaks of, so that a part's history shows its joints
 */
export function placesOf(entry: Entry, jointPartIds: Id[], original?: Entry): string[] {
  const told = original ?? entry;
  const when = newestFirst(entry.happenedAtMs);
  const named = told as { partId?: Id; jointId?: Id; partIds?: Id[]; toolId?: Id; tool?: { toolId: Id } };
  const parts = new Set([...jointPartIds, ...(named.partIds ?? []), ...(named.partId ? [named.partId] : [])]);
  const tool = named.toolId ?? named.tool?.toolId;
  return [
    ...bikesOf(told).map((id) => `b:${id}:${when}`),
    ...[...parts].map((id) => `p:${id}:${when}`),
    ...(named.jointId ? [`j:${named.jointId}:${when}`] : []),
    ...(tool ? [`t:${tool}:${when}`] : []),
    ...factKeys(told),
  ];
}
