import type { Entry, Id } from '../../../src/journal/entries.ts';
import type { JointRow, PartRow, StepRow } from '../../../src/journal/rows.ts';
import type { Logbook } from '../../../src/logbook.ts';
import type { Dice } from './dice.ts';
import type { ModelAnswers } from './modelAnswers.ts';
import { field } from './reading.ts';

/** One point on which the logbook and the model differ. */
export interface Mismatch {
  what: string;
  expected: unknown;
  found: unknown;
}

const place = (at: PartRow['place']) => (at.on === 'bike' ? at.bikeId : at.on);

/** Collects what differs. */
function differences() {
  const list: Mismatch[] = [];
  return {
    list,
    same(what: string, expected: unknown, found: unknown) {
      if (JSON.stringify(expected) !== JSON.stringify(found)) list.push({ what, expected, found });
    },
    within(what: string, { least, most }: { least: number; most: number }, found = 0) {
      if (found < least || found > most) list.push({ what, expected: `${least} to ${most}`, found });
    },
  };
}
type Differences = ReturnType<typeof differences>;

const sorted = (ids: Iterable<Id>): Id[] => [...ids].sort();
const onBike = <A extends { bikeId: Id }>(answers: Map<Id, A>, bikeId: Id): [Id, A][] =>
  [...answers].filter(([, answer]) => answer.bikeId === bikeId);

function compareJoint(same: Differences['same'], model: ModelAnswers, row: JointRow) {
  const answer = model.joints.get(row.jointId);
  const at = `joint ${row.jointId}`;
  same(`${at} is known`, answer !== undefined, true);
  if (!answer) return;
  same(`${at} state`, answer.state, row.state);
  same(`${at} name`, answer.name, row.name);
  same(`${at} parts`, answer.partIds, row.partIds);
  same(`${at} matters`, answer.matters, row.matters);
  same(`${at} applied by`, answer.applied?.entryId, row.applied?.entryId);
  same(`${at} applied`, answer.applied?.value, row.applied?.applied.value);
  same(`${at} times applied`, answer.appliedTimes, row.appliedTimes);
  same(`${at} found`, answer.found, row.found && { entryId: row.found.entryId, outcome: row.found.outcome });
  same(
    `${at} locked`,
    answer.locked,
    row.locked && { entryId: row.locked.entryId, waitId: row.locked.waitId },
  );
  same(`${at} moved`, answer.moved, row.moved);
}

function compareSteps(same: Differences['same'], model: ModelAnswers, bikeId: Id, rows: StepRow[]) {
  const steps = onBike(model.steps, bikeId);
  const sure = new Set(steps.filter(([, { unsure }]) => !unsure).map(([id]) => id));
  const shown = steps.filter(([id, { state }]) => sure.has(id) && state !== 'dropped');
  same(
    `steps of ${bikeId}`,
    sorted(shown.map(([id, { state }]) => `${id} ${state}`)),
    sorted(rows.filter(({ stepId }) => sure.has(stepId)).map(({ stepId, state }) => `${stepId} ${state}`)),
  );
}

type Held = Pick<ModelAnswers, 'waits' | 'rechecks' | 'defects'>;

/** The running waits, open re-checks and open defects of a bike, as lines that can be compared. */
function timedLines(model: Held, bikeId: Id) {
  const waits = onBike(model.waits, bikeId).filter(([, { running }]) => running);
  const rechecks = onBike(model.rechecks, bikeId).filter(([, { open }]) => open);
  const defects = onBike(model.defects, bikeId).filter(([, { open }]) => open);
  return { waits, rechecks, defects };
}

interface TimedRows {
  waits: { waitId: Id; dueAtMs?: number; jointId?: Id }[];
  rechecks: {
    recheckId: Id;
    dueAtMs?: number;
    reachedAtMs?: number;
    ridesThen: number;
    kmThen: number;
    turn: number;
  }[];
  defects: { defectId: Id; dueAtMs?: number }[];
}

function compareTimed(same: Differences['same'], model: ModelAnswers, bikeId: Id, rows: TimedRows) {
  const { waits, rechecks, defects } = timedLines(model, bikeId);
  same(
    `running waits of ${bikeId}`,
    sorted(waits.map(([id, { dueAtMs }]) => `${id} due ${dueAtMs}`)),
    sorted(rows.waits.map(({ waitId, dueAtMs }) => `${waitId} due ${dueAtMs}`)),
  );
  same(
    `open re-checks of ${bikeId}`,
    sorted(rechecks.map(([id]) => id)),
    sorted(rows.rechecks.map(({ recheckId }) => recheckId)),
  );
  for (const row of rows.rechecks) {
    const answer = model.rechecks.get(row.recheckId);
    if (!answer) continue;
    const at = `re-check ${row.recheckId}`;
    same(`${at} turn`, answer.turn, row.turn);
    same(`${at} ridden before`, [answer.ridesThen, answer.kmThen], [row.ridesThen, row.kmThen]);
    if (answer.unsureDue) continue;
    same(`${at} reached`, answer.reachedAtMs, row.reachedAtMs);
    same(`${at} due`, answer.dueAtMs, row.dueAtMs);
  }
  same(
    `open defects of ${bikeId}`,
    sorted(defects.map(([id, { dueAtMs }]) => `${id} due ${dueAtMs}`)),
    sorted(rows.defects.map(({ defectId, dueAtMs }) => `${defectId} due ${dueAtMs}`)),
  );
}

/** What the bike's views say beside what the model says. */
async function compareBike(differ: Differences, logbook: Logbook, model: ModelAnswers, bikeId: Id) {
  const { same, within } = differ;
  const view = await logbook.read('bike', { bikeId });
  const answer = model.bikes.get(bikeId);
  same(`bike ${bikeId} is shown`, answer !== undefined, view !== undefined);
  if (!view || !answer) return;
  const { bike } = view;
  same(`name of ${bikeId}`, answer.name, bike.name);
  same(`${bikeId} put away`, answer.putAway, bike.putAway !== undefined);
  compareStanding(same, answer, bike);
  const steps = onBike(model.steps, bikeId);
  const joints = onBike(model.joints, bikeId);
  compareSteps(same, model, bikeId, view.steps);
  if (!steps.some(([, { unsure }]) => unsure)) {
    const count = (state: string) => steps.filter(([, step]) => step.state === state).length;
    same(
      `step counts of ${bikeId}`,
      [steps.length - count('dropped'), count('done'), count('skipped')],
      [bike.steps, bike.stepsDone, bike.stepsSkipped],
    );
  }
  same(
    `hand-tight on ${bikeId}`,
    joints.filter(([, { state }]) => state === 'hand-tight').length,
    bike.handTight,
  );
  same(
    `problems it must not be ridden with, on ${bikeId}`,
    sorted(
      onBike(model.defects, bikeId).flatMap(([id, { open, decision }]) =>
        open && decision === 'do-not-ride' ? [id] : [],
      ),
    ),
    sorted(bike.grave.map(({ defectId }) => defectId)),
  );
  same(
    `joints of ${bikeId}`,
    sorted(joints.map(([id]) => id)),
    sorted(view.joints.map(({ jointId }) => jointId)),
  );
  for (const row of view.joints) {
    compareJoint(same, model, row);
    const early = model.joints.get(row.jointId)?.early;
    if (early) within(`joint ${row.jointId} early`, early, (row as { early?: number }).early);
  }
  const held = [...model.parts].filter(([, part]) => place(part.place) === bikeId);
  same(`parts on ${bikeId}`, sorted(held.map(([id]) => id)), sorted(view.parts.map(({ partId }) => partId)));
  compareTimed(same, model, bikeId, view);
  const { count = 0, km = 0, minutes = 0 } = view.rides ?? {};
  const ridden = model.rides.get(bikeId);
  same(`rides of ${bikeId}`, [ridden?.count, ridden?.km, ridden?.minutes], [count, km, minutes]);
  same(
    `seals of ${bikeId}`,
    sorted(onBike(model.seals, bikeId).map(([id, { marks }]) => `${id}: ${marks.join()}`)),
    sorted(
      view.seals
        .filter(({ marks }) => marks.length > 0)
        .map(({ jointId, marks }) => `${jointId}: ${marks.map(({ entryId }) => entryId).join()}`),
    ),
  );
}

type Shown = Pick<NonNullable<Awaited<ReturnType<typeof bikeOf>>>['bike'], 'release' | 'revoked' | 'bikeId'>;
const bikeOf = (logbook: Logbook, bikeId: Id) => logbook.read('bike', { bikeId });

function compareStanding(
  same: Differences['same'],
  answer: NonNullable<ReturnType<ModelAnswers['bikes']['get']>>,
  { bikeId, release, revoked }: Shown,
) {
  same(`release of ${bikeId}`, answer.release?.releaseId, release?.releaseId);
  same(
    `release of ${bikeId} withdrawn`,
    answer.release?.withdrawn ?? false,
    release?.withdrawn !== undefined,
  );
  same(`open items of the release of ${bikeId}`, answer.release?.open, release?.open);
  same(`release of ${bikeId} revoked by`, answer.revokedBy, revoked?.entryId);
}

async function comparePart(differ: Differences, logbook: Logbook, model: ModelAnswers, partId: Id) {
  const { same, within } = differ;
  const answer = model.parts.get(partId);
  const part = (await logbook.read('part', { partId }))?.part;
  same(`part ${partId} is shown`, answer !== undefined, part !== undefined);
  if (!part || !answer) return;
  same(`part ${partId} name`, answer.name, part.name);
  same(`part ${partId} condition`, answer.condition, part.condition);
  same(`part ${partId} place`, place(answer.place), place(part.place));
  same(
    `part ${partId} changes`,
    answer.changes,
    part.changes.map(({ entryId }) => entryId),
  );
  same(
    `part ${partId} moves`,
    answer.moves,
    part.moves.map(({ entryId }) => entryId),
  );
  within(`part ${partId} early`, answer.early, (part as { early?: number }).early);
}

/** The ids that a journal names, begun or not. */
export interface Named {
  bikeIds: Iterable<Id>;
  partIds: Iterable<Id>;
}

/**
 * Reads every view of a logbook and says where it differs from the model.
 * @param named the ids to ask for, also those of things that no longer count
 */
export async function compareViews(logbook: Logbook, model: ModelAnswers, named: Named): Promise<Mismatch[]> {
  const differ = differences();
  const bikes = await logbook.read('bikes', {});
  differ.same('bikes', sorted(model.bikes.keys()), sorted(bikes.map(({ bikeId }) => bikeId)));
  for (const bikeId of named.bikeIds) await compareBike(differ, logbook, model, bikeId);
  for (const partId of named.partIds) await comparePart(differ, logbook, model, partId);
  const due = await logbook.read('due', { untilMs: Number.MAX_SAFE_INTEGER });
  differ.same('due lines', dueLines(model), sorted(due.map(({ is, id }) => `${is} ${id}`)));
  return differ.list;
}

/** Everything with a due instant, as the due list names it. */
function dueLines(model: ModelAnswers): string[] {
  const due = (answers: Map<Id, { dueAtMs?: number; open?: boolean; running?: boolean }>, kind: string) =>
    [...answers]
      .filter(([, { open, running }]) => open || running)
      .filter(([, { dueAtMs }]) => dueAtMs !== undefined)
      .map(([id]) => `${kind} ${id}`);
  return sorted([
    ...due(model.waits, 'wait'),
    ...due(model.rechecks, 'recheck'),
    ...due(model.defects, 'defect'),
  ]);
}

/** Says where a bike at a past instant differs from what the model makes of the entries until then. */
export async function compareAsBuilt(
  logbook: Logbook,
  model: ModelAnswers,
  bikeId: Id,
  atMs: number,
): Promise<Mismatch[]> {
  const differ = differences();
  const same: Differences['same'] = (what, expected, found) =>
    differ.same(`at ${atMs}, ${what}`, expected, found);
  const built = await logbook.read('as-built', { bikeId, atMs });
  const answer = model.bikes.get(bikeId);
  same(`bike ${bikeId} is shown`, answer !== undefined, built.bike !== undefined);
  if (!answer || !built.bike) return differ.list;
  compareStanding(same, answer, built.bike);
  same(
    `joints of ${bikeId}`,
    sorted(onBike(model.joints, bikeId).map(([id]) => id)),
    sorted(built.joints.map(({ jointId }) => jointId)),
  );
  for (const row of built.joints) compareJoint(same, model, row);
  const held = [...model.parts].filter(([, part]) => place(part.place) === bikeId);
  same(`parts on ${bikeId}`, sorted(held.map(([id]) => id)), sorted(built.parts.map(({ partId }) => partId)));
  const { count = 0, km = 0 } = built.rides ?? {};
  const ridden = model.rides.get(bikeId);
  same(`rides of ${bikeId}`, [ridden?.count, ridden?.km], [count, km]);
  compareTimed(same, model, bikeId, {
    waits: built.waits.filter(({ endedAtMs }) => endedAtMs === undefined),
    rechecks: built.rechecks.filter(
      ({ answeredAtMs, dropped }) => answeredAtMs === undefined && dropped === undefined,
    ),
    defects: built.defects.filter(({ closed }) => closed === undefined),
  });
  return differ.list;
}

/** Says which lines the histories of a bike and a joint leave out, of those that name it. */
export async function compareHistories(
  logbook: Logbook,
  all: readonly Entry[],
  dice: Pick<Dice, 'pick'>,
): Promise<Mismatch[]> {
  const differ = differences();
  for (const [prefix, name] of [
    ['b:', 'bikeId'],
    ['j:', 'jointId'],
  ] as const) {
    const id = dice.pick([...new Set(all.flatMap((entry) => (field(entry, name) as Id | undefined) ?? []))]);
    if (id === undefined) continue;
    const { lines } = await logbook.read('history', { place: `${prefix}${id}`, limit: 1000 });
    const shown = new Set(lines.map(({ entry }) => entry.id));
    const named = all.filter((entry) => field(entry, name) === id);
    const missing = named.filter((entry) => !shown.has(entry.id));
    differ.same(
      `lines that the history of ${id} leaves out`,
      [],
      missing.map(({ type }) => type),
    );
  }
  return differ.list;
}
