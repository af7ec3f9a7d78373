import type { Entry, Id } from './entries.ts';
import { bikesOf, factKeys, placesOf } from './facts.ts';
import { keepCounts, reduceBike, releaseStands } from './reducers/bike.ts';
import { reduceDefect, reduceFinding, reduceRelease, reduceRideCheck } from './reducers/checks.ts';
import { reduceJoint } from './reducers/joint.ts';
import { reducePart } from './reducers/part.ts';
import { reachedBy, reduceRecheck } from './reducers/recheck.ts';
import { reduceRides } from './reducers/rides.ts';
import { reduceSeal } from './reducers/seal.ts';
import { reduceSettings } from './reducers/settings.ts';
import { reduceStep } from './reducers/step.ts';
import { reduceTool } from './reducers/tool.ts';
import { reduceWait } from './reducers/wait.ts';
import type { BikeRow, FixRow, JointRow, Row, RowKind, RowOf, StepRow } from './rows.ts';

/**
 * What a fold and a decision see of the store. Everything is there already: reading is synchronous, so a
 * command is read, decided, folded and written within one transaction. Asking for what was not fetched
 * is a programmer error and throws.
 */
export interface Rows {
  get<K extends RowKind>(kind: K, id: Id): RowOf[K] | undefined;
  /** Rows of one group, including those written in this transaction. */
  group<K extends RowKind>(kind: K, group: string): RowOf[K][];
  /** Every row of one kind, wherever it stands: only for what must be single in the whole logbook. */
  all<K extends RowKind>(kind: K): RowOf[K][];
  /** An entry of the journal by its id. */
  entry(id: Id): Entry | undefined;
  /** The raw entries that are facts of a row, corrections of them included, in the order written. */
  facts(key: string): Entry[];
  put(row: Row): void;
  drop(key: string): void;
  /** Takes an entry into the journal this transaction sees. */
  append(entry: Entry, places: string[]): void;
}

function reduce(key: string, row: Row | undefined, entry: Entry): Row | undefined {
  switch (key.slice(0, key.indexOf('/')) as RowKind) {
    case 'bike':
      return reduceBike(row as RowOf['bike'], entry);
    case 'part':
      return reducePart(row as RowOf['part'], entry);
    case 'joint':
      return reduceJoint(row as RowOf['joint'], entry);
    case 'step':
      return reduceStep(row as RowOf['step'], entry);
    case 'wait':
      return reduceWait(row as RowOf['wait'], entry);
    case 'recheck':
      return reduceRecheck(row as RowOf['recheck'], entry);
    case 'seal':
      return reduceSeal(row as RowOf['seal'], entry);
    case 'tool':
      return reduceTool(row as RowOf['tool'], entry);
    case 'defect':
      return reduceDefect(row as RowOf['defect'], entry);
    case 'rides':
      return reduceRides(row as RowOf['rides'], entry);
    case 'ridecheck':
      return reduceRideCheck(row as RowOf['ridecheck'], entry);
    case 'release':
      return reduceRelease(row as RowOf['release'], entry);
    case 'settings':
      return reduceSettings(row as RowOf['settings'], entry);
    case 'finding':
      return reduceFinding(row as RowOf['finding'], entry);
    default:
      return row;
  }
}

function rowAt(rows: Rows, key: string): Row | undefined {
  const slash = key.indexOf('/');
  return rows.get(key.slice(0, slash) as RowKind, key.slice(slash + 1));
}

/** Whether an entry belongs before something its row already holds, so that the row must be reduced anew. */
export function isLate(row: Row | undefined, entry: Entry): boolean {
  return row !== undefined && entry.happenedAtMs < row.lastMs;
}

/**
 * The facts of a row as they count today: struck-out ones left out, corrected ones as they read now, in
 * the order they happened.
 */
export function effective(facts: Entry[]): Entry[] {
  const counted = new Map<Id, Entry>();
  const originals = new Map<Id, Entry>();
  for (const fact of facts) {
    if (fact.type !== 'entry-corrected') {
      counted.set(fact.id, fact);
      originals.set(fact.id, fact);
      continue;
    }
    const original = originals.get(fact.corrects);
    if (!original) continue;
    if (fact.becomes === null) counted.delete(fact.corrects);
    else counted.set(fact.corrects, { ...original, ...fact.becomes } as Entry);
  }
  const order = [...originals.keys()];
  return [...counted.values()].sort(
    (a, b) => a.happenedAtMs - b.happenedAtMs || order.indexOf(a.id) - order.indexOf(b.id),
  );
}

/** A row from nothing but its facts. */
export function reduceAnew(key: string, facts: Entry[]): Row | undefined {
  let row: Row | undefined;
  for (const fact of effective(facts)) {
    const next = reduce(key, row, fact);
    if (next) row = { ...next, lastMs: Math.max(fact.happenedAtMs, row?.lastMs ?? 0) };
  }
  return row;
}

function countRides(rows: Rows, row: RowOf['recheck'], entry: Entry): RowOf['recheck'] {
  const rides = rows.get('rides', row.bikeId);
  return rides ? reachedBy(row, rides, entry.happenedAtMs) : row;
}

function write(rows: Rows, key: string, before: Row | undefined, after: Row | undefined): void {
  if (after) rows.put(after);
  else if (before) rows.drop(key);
}

/** Counts that a bike keeps of its steps and joints, so that a list of bikes reads one row each. */
function counted(row: Row | undefined): Pick<BikeRow, 'steps' | 'stepsDone' | 'stepsSkipped' | 'handTight'> {
  const none = { steps: 0, stepsDone: 0, stepsSkipped: 0, handTight: 0 };
  if (row?.is === 'step') {
    const { state } = row as StepRow;
    if (state === 'dropped') return none;
    return {
      ...none,
      steps: 1,
      stepsDone: state === 'done' ? 1 : 0,
      stepsSkipped: state === 'skipped' ? 1 : 0,
    };
  }
  if (row?.is === 'joint') return { ...none, handTight: (row as JointRow).state === 'hand-tight' ? 1 : 0 };
  return none;
}

const COUNTED = ['steps', 'stepsDone', 'stepsSkipped', 'handTight', 'openStepId', 'revoked'] as const;

function touchBike(
  rows: Rows,
  bikeId: Id,
  entry: Entry,
  changes: { before: Row | undefined; after: Row | undefined }[],
): void {
  const bike = rows.get('bike', bikeId);
  if (!bike) return;
  const next = { ...bike };
  for (const { before, after } of changes) {
    const was = counted(before);
    const now = counted(after);
    next.steps += now.steps - was.steps;
    next.stepsDone += now.stepsDone - was.stepsDone;
    next.stepsSkipped += now.stepsSkipped - was.stepsSkipped;
    next.handTight += now.handTight - was.handTight;
    if (after?.is === 'step' && after.state !== 'open' && next.openStepId === after.stepId) {
      next.openStepId = undefined;
    }
  }
  if ((entry as { matters?: boolean }).matters === true && releaseStands(bike)) {
    next.revoked = {
      releaseId: bike.release?.releaseId ?? '',
      atMs: entry.happenedAtMs,
      entryId: entry.id,
      because: entry.type,
    };
  }
  // Most entries change nothing here; a row that stays as it is need not be written.
  if (COUNTED.some((field) => next[field] !== bike[field])) rows.put(next);
}

function fixRow(rows: Rows, entry: Extract<Entry, { type: 'entry-corrected' }>): FixRow {
  const old = rows.get('fix', entry.corrects);
  const fix = {
    by: entry.id,
    atMs: entry.writtenAtMs,
    reason: entry.reason,
    undo: entry.undo,
    becomes: entry.becomes,
  };
  return {
    key: `fix/${entry.corrects}`,
    is: 'fix',
    entryId: entry.corrects,
    fixes: [...(old?.fixes ?? []), fix],
    lastMs: entry.happenedAtMs,
  };
}

/**
 * Adds one entry to the views. In the common case a row takes the entry on top of what it holds; an entry
 * that happened earlier, and a correction, reduce the row anew from its facts.
 * @param rows the store as this transaction sees it; changed in place
 * @param entry the newest entry of the journal
 * @returns the places under which the entry is found again
 */
export function fold(rows: Rows, entry: Entry): string[] {
  const original = entry.type === 'entry-corrected' ? rows.entry(entry.corrects) : undefined;
  const told = original ?? entry;
  const changes: { before: Row | undefined; after: Row | undefined }[] = [];
  for (const key of factKeys(told)) {
    const before = rowAt(rows, key);
    let after: Row | undefined;
    if (original || isLate(before, entry)) {
      after = reduceAnew(key, [...rows.facts(key), entry]);
      if (after?.is === 'bike' && before?.is === 'bike') after = keepCounts(after, before);
      if (after?.is === 'recheck') after = countRides(rows, after, entry);
    } else {
      const next = reduce(key, before, entry);
      after = next && { ...next, lastMs: entry.happenedAtMs };
    }
    write(rows, key, before, after);
    changes.push({ before, after });
  }
  if (entry.type === 'entry-corrected') rows.put(fixRow(rows, entry));
  for (const bikeId of bikesOf(told)) {
    touchBike(rows, bikeId, entry, changes);
    if (told.type === 'ride-logged') {
      const rides = rows.get('rides', bikeId);
      if (rides) {
        for (const recheck of rows.group('recheck', `recheck@${bikeId}`)) {
          rows.put(reachedBy(recheck, rides, entry.happenedAtMs));
        }
      }
    }
  }
  const jointId = (told as { jointId?: Id }).jointId;
  const joint = jointId === undefined ? undefined : rows.get('joint', jointId);
  return placesOf(entry, joint?.partIds ?? [], original);
}

/** Folds and appends entries in the order given; returns each with its places. */
export function foldAll(rows: Rows, entries: Entry[]): { entry: Entry; places: string[] }[] {
  return entries.map((entry) => {
    const places = fold(rows, entry);
    rows.append(entry, places);
    return { entry, places };
  });
}
