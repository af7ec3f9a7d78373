import type { Stored, StoredEntry, StoredPlace, StoredRow } from './stored.ts';

/**
 * What must hold between a journal and its rows, counted in the plainest way and with nothing of the product's own
 * code: steps done, torques of a joint and the last figure of it, where a part is, what rides add up to.
 * @returns one sentence for each thing that does not hold
 */
export function plainFaults(stored: Stored): string[] {
  const entries = stored.lines.map(({ entry }) => entry);
  const counted = countedToday(entries);
  const rows = new Map(stored.rows.map((row) => [row.key, row]));
  return [
    ...onceEach(entries),
    ...photoFaults(entries, stored.photoIds),
    ...splitFaults(entries),
    ...stepFaults(counted, rows),
    ...jointFaults(counted, rows),
    ...partFaults(counted, rows),
    ...rideFaults(counted, rows),
    ...waitFaults(counted, rows),
  ];
}

/** Where an entry stands: by when it happened, then by its id. */
function earlier(a: StoredEntry, b: StoredEntry): number {
  return momentOf(a) - momentOf(b) || (a.id < b.id ? -1 : 1);
}

const momentOf = ({ orderMs, happenedAtMs }: StoredEntry) => orderMs ?? happenedAtMs;

/** Whether a correction counts: it does unless one that counts strikes it out. */
function counts({ id }: StoredEntry, corrections: readonly StoredEntry[]): boolean {
  return !corrections.some(
    (other) => other.corrects === id && other.becomes === null && counts(other, corrections),
  );
}

/** Entries as they read today: struck-out ones left out, corrected ones with their new fields, in their order. */
export function countedToday(entries: readonly StoredEntry[]): StoredEntry[] {
  const corrections = entries.filter(({ type }) => type === 'entry-corrected');
  const counting = corrections.filter((one) => counts(one, corrections)).toSorted(earlier);
  const read = new Map(entries.map((entry) => [entry.id, entry]));
  const struck = new Set<string>();
  for (const { corrects = '', becomes } of counting) {
    const entry = read.get(corrects);
    if (!entry || entry.type === 'entry-corrected') continue;
    if (becomes) read.set(corrects, { ...entry, ...becomes } as StoredEntry);
    else struck.add(corrects);
  }
  return [...read.values()].filter(({ id }) => !struck.has(id)).toSorted(earlier);
}

const BEGINS: Record<string, keyof StoredEntry> = {
  'bike-started': 'bikeId',
  'part-added': 'partId',
  'joint-made': 'jointId',
  'step-added': 'stepId',
  'tool-added': 'toolId',
  'wheel-made': 'wheelId',
  'wait-started': 'waitId',
  'recheck-set': 'recheckId',
  'defect-found': 'defectId',
  'ride-logged': 'rideId',
  'note-added': 'noteId',
};

/** Nothing begins twice under one id. */
function onceEach(entries: readonly StoredEntry[]): string[] {
  const begun = new Map<string, number>();
  for (const entry of entries) {
    const field = BEGINS[entry.type];
    if (field === undefined) continue;
    const key = `${entry.type} ${String(entry[field])}`;
    begun.set(key, (begun.get(key) ?? 0) + 1);
  }
  return [...begun].filter(([, times]) => times > 1).map(([key, times]) => `${key} stands ${times} times`);
}

/** Every photo an entry names is there, and every photo there is named. */
function photoFaults(entries: readonly StoredEntry[], photoIds: readonly string[]): string[] {
  const there = new Set(photoIds);
  const named = new Set(
    entries.flatMap((entry) => [...(entry.photoIds ?? []), ...(entry.photoId ? [entry.photoId] : [])]),
  );
  return [
    ...[...named].filter((id) => !there.has(id)).map((id) => `half-written: photo ${id} is named, not there`),
    ...photoIds
      .filter((id) => !named.has(id))
      .map((id) => `half-written: photo ${id} is there, named nowhere`),
  ];
}

/** A step that was split has all its pieces. */
function splitFaults(entries: readonly StoredEntry[]): string[] {
  const added = new Set(entries.flatMap(({ type, stepId }) => (type === 'step-added' ? [stepId] : [])));
  return entries.flatMap(({ splitInto = [], stepId }) =>
    splitInto
      .filter((piece) => !added.has(piece))
      .map((piece) => `half-written: step ${stepId} was split, piece ${piece} is missing`),
  );
}

/** The last of some events; nothing where two that say different things share the instant. */
function lastOf<T>(events: readonly { atMs: number; says: T }[]): { says: T } | undefined {
  const last = events.at(-1);
  if (!last) return undefined;
  const same = events.filter(({ atMs }) => atMs === last.atMs);
  const all = new Set(same.map(({ says }) => JSON.stringify(says)));
  return all.size === 1 ? last : undefined;
}

function by(entries: readonly StoredEntry[], field: keyof StoredEntry): Map<string, StoredEntry[]> {
  const groups = new Map<string, StoredEntry[]>();
  for (const entry of entries) {
    const id = entry[field];
    if (typeof id !== 'string') continue;
    const group = groups.get(id);
    if (group) group.push(entry);
    else groups.set(id, [entry]);
  }
  return groups;
}

const STEP_SAYS: Record<string, string> = {
  'step-added': 'open',
  'step-done': 'done',
  'torque-applied': 'done',
  'locker-applied': 'done',
  'step-skipped': 'skipped',
  'step-reopened': 'open',
  'step-dropped': 'dropped',
};

function stepSays({ type, mark }: StoredEntry, kind: unknown): string | undefined {
  if (type === 'seal-marked') return mark?.mark === 'seated' && kind === 'seat' ? 'done' : undefined;
  return STEP_SAYS[type];
}

function stepFaults(counted: readonly StoredEntry[], rows: Map<string, StoredRow>): string[] {
  const faults: string[] = [];
  const perBike = new Map<string, (string | undefined)[]>();
  for (const [stepId, about] of by(counted, 'stepId')) {
    const added = about.find(({ type }) => type === 'step-added');
    if (!added?.bikeId) continue;
    const row = rows.get(`step/${stepId}`);
    const events = about.flatMap((entry) => {
      const says = stepSays(entry, row?.['kind']);
      return says === undefined ? [] : [{ atMs: momentOf(entry), says }];
    });
    const state = lastOf(events)?.says;
    perBike.set(added.bikeId, [...(perBike.get(added.bikeId) ?? []), state]);
    if (!row) faults.push(`step ${stepId} has no row`);
    else if (state !== undefined && row['state'] !== state)
      faults.push(`step ${stepId} is ${state} by the journal, ${String(row['state'])} by its row`);
  }
  for (const [bikeId, about] of by(counted, 'bikeId')) {
    if (!about.some(({ type }) => type === 'bike-started')) continue;
    const states = perBike.get(bikeId) ?? [];
    if (states.includes(undefined)) continue;
    const of = (state: string) => states.filter((one) => one === state).length;
    const want = {
      steps: states.length - of('dropped'),
      stepsDone: of('done'),
      stepsSkipped: of('skipped'),
    };
    for (const [field, count] of Object.entries(want)) {
      const found = rows.get(`bike/${bikeId}`)?.[field];
      if (found !== count)
        faults.push(`bike ${bikeId}: ${field} is ${count} by the journal, ${found} by its row`);
    }
  }
  return faults;
}

const JOINT_SAYS: Record<string, string> = {
  'joint-made': 'open',
  'hand-tightened': 'hand-tight',
  'torque-applied': 'torqued',
  'joint-taken-apart': 'apart',
};

function jointFaults(counted: readonly StoredEntry[], rows: Map<string, StoredRow>): string[] {
  const faults: string[] = [];
  for (const [jointId, about] of by(counted, 'jointId')) {
    if (!about.some(({ type }) => type === 'joint-made')) continue;
    const row = rows.get(`joint/${jointId}`);
    if (!row) {
      faults.push(`joint ${jointId} has no row`);
      continue;
    }
    const events = about.flatMap((entry) => {
      const says = JOINT_SAYS[entry.type];
      return says === undefined ? [] : [{ atMs: momentOf(entry), says }];
    });
    const state = lastOf(events)?.says;
    if (state !== undefined && row['state'] !== state)
      faults.push(`joint ${jointId} is ${state} by the journal, ${String(row['state'])} by its row`);
    const torques = about.filter(({ type }) => type === 'torque-applied');
    if (row['appliedTimes'] !== torques.length)
      faults.push(
        `joint ${jointId}: ${torques.length} torques in the journal, ${row['appliedTimes']} in its row`,
      );
    const figures = about.flatMap((entry) => {
      const { type, applied } = entry;
      const atMs = momentOf(entry);
      if (type === 'joint-taken-apart') return [{ atMs, says: 'none' }];
      return type === 'torque-applied' ? [{ atMs, says: `${applied?.value} ${applied?.unit}` }] : [];
    });
    const figure = lastOf(figures)?.says ?? (figures.length === 0 ? 'none' : undefined);
    const held = row['applied'] as { applied?: { value: number; unit: string } } | undefined;
    const shows = held?.applied ? `${held.applied.value} ${held.applied.unit}` : 'none';
    if (figure !== undefined && figure !== shows)
      faults.push(`joint ${jointId}: the last figure is ${figure} by the journal, ${shows} by its row`);
  }
  return faults;
}

const placeText = (place: StoredPlace | undefined) => `${place?.on} ${place?.bikeId ?? ''}`.trim();

function partFaults(counted: readonly StoredEntry[], rows: Map<string, StoredRow>): string[] {
  const faults: string[] = [];
  for (const [partId, about] of by(counted, 'partId')) {
    if (!about.some(({ type }) => type === 'part-added')) continue;
    const places = about.flatMap((entry) => {
      const { type, place, to } = entry;
      const atMs = momentOf(entry);
      if (type === 'part-added') return [{ atMs, says: placeText(place) }];
      return type === 'part-moved' ? [{ atMs, says: placeText(to) }] : [];
    });
    const where = lastOf(places)?.says;
    const shows = placeText(rows.get(`part/${partId}`)?.['place'] as StoredPlace | undefined);
    if (where !== undefined && where !== shows)
      faults.push(`part ${partId} is at ${where} by the journal, ${shows} by its row`);
  }
  return faults;
}

function rideFaults(counted: readonly StoredEntry[], rows: Map<string, StoredRow>): string[] {
  const faults: string[] = [];
  for (const [bikeId, about] of by(counted, 'bikeId')) {
    const rides = about.filter(({ type }) => type === 'ride-logged');
    if (rides.length === 0) continue;
    const row = rows.get(`rides/${bikeId}`);
    const km = rides.reduce((sum, ride) => sum + (ride.km ?? 0), 0);
    const near = Math.abs(Number(row?.['km']) - km) < 1e-6;
    if (row?.['count'] !== rides.length || !near)
      faults.push(
        `bike ${bikeId}: ${rides.length} rides and ${km} km by the journal, ${row?.['count']} and ${row?.['km']} by its row`,
      );
  }
  return faults;
}

function waitFaults(counted: readonly StoredEntry[], rows: Map<string, StoredRow>): string[] {
  const faults: string[] = [];
  for (const [waitId, about] of by(counted, 'waitId')) {
    if (!about.some(({ type }) => type === 'wait-started' || type === 'locker-applied')) continue;
    const over = about.some(({ type }) => type === 'wait-ended');
    const row = rows.get(`wait/${waitId}`);
    if (!row) faults.push(`wait ${waitId} has no row`);
    else if ((row['endedAtMs'] !== undefined) !== over)
      faults.push(`wait ${waitId} is ${over ? 'over' : 'running'} by the journal, not by its row`);
  }
  return faults;
}
