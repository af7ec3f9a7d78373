import { checkEntry, fieldsOf } from '../checkEntry.ts';
import type { CommandOf } from '../commands.ts';
import { stepsByChange } from '../cutSteps.ts';
import { asItReads, type Correction, effective, isCorrection, standingCorrections } from '../effective.ts';
import type { Entry, EntryBody, EntryOf, Id } from '../entries.ts';
import { begunKey, bikeOfPlace, bikesOf, revokedBike } from '../facts.ts';
import { type Rows, reduceAnew, rootOf } from '../fold.ts';
import { checkStepKind } from '../guards.ts';
import { kinds } from '../kinds/kinds.ts';
import { standing } from '../order.ts';
import type { StepRow } from '../rows.ts';
import { type Circumstances, checkTime, present, type Ruling, refuse, words } from './ruling.ts';
import { checkGivenBack } from './wheels.ts';

/** How long undo is offered; two seconds of grace for a slow tap. */
const UNDO_MS = 10_000;
const GRACE_MS = 2000;

function entryOf(rows: Rows, id: Id): Entry {
  return rows.entry(id) ?? refuse('no-such-entry');
}

/** An entry as it reads today; nothing when it is struck out. */
function today(rows: Rows, entry: Entry): Entry | undefined {
  if (!isCorrection(entry)) {
    const fixes = rows.get('fix', entry.id)?.fixes.filter(({ struckOut }) => !struckOut) ?? [];
    return asItReads(entry, fixes);
  }
  const root = rootOf(rows, entry);
  const all = root ? rows.facts(`fix/${root.id}`).filter(isCorrection) : [];
  return standingCorrections(all).some(({ id }) => id === entry.id) ? entry : undefined;
}

/**
 * Whether a step that is done stands on this change of a part, so that it would be done without one.
 * @param movedMs when the change is said to have happened from now on; struck out where it is left out
 */
function finishesStep(rows: Rows, entry: Entry, together: readonly Id[], movedMs?: number): boolean {
  if (entry.type !== 'part-changed') return false;
  const part = rows.get('part', entry.partId);
  if (!part) return false;
  const bikeIds = new Set([entry.bikeId, bikeOfPlace(part.place)].filter((id) => id !== undefined));
  const steps = [...bikeIds].flatMap((bikeId) => rows.group('step', `step@${bikeId}`));
  const after =
    movedMs === undefined
      ? part.changes.filter(({ entryId }) => !together.includes(entryId))
      : part.changes.map((one) => (one.entryId === entry.id ? { ...one, atMs: movedMs } : one));
  const kept = new Set(stepsByChange({ partId: part.partId, changes: after }, steps).values());
  return [...stepsByChange(part, steps).values()].some(
    (step) => !kept.has(step) && !together.includes(step.doneBy ?? ''),
  );
}

/** Keys of the rows that are about a joint and would be about none without it: seal, steps, timers, re-checks, problems. */
function aboutJoint(rows: Rows, { jointId, bikeId }: EntryOf<'joint-made'>): string[] {
  const kinds = ['step', 'wait', 'recheck', 'defect'] as const;
  const about = kinds.flatMap((kind) =>
    rows.group(kind, `${kind}@${bikeId}`).filter((row) => row.jointId === jointId),
  );
  return [`seal/${jointId}`, ...about.map(({ key }) => key)];
}

/** Whether others stand on the row that an entry begins, so that it cannot simply be struck out. */
function builtUpon(rows: Rows, entry: Entry, together: readonly Id[]): boolean {
  const key = begunKey(entry);
  if (key === undefined) return false;
  const keys = entry.type === 'joint-made' ? [key, ...aboutJoint(rows, entry)] : [key];
  const others = keys
    .flatMap((about) => effective(rows.facts(about)))
    .filter((one) => !isCorrection(one) && !together.includes(one.id));
  if (entry.type !== 'bike-started') return others.length > 0;
  const on = (kind: 'part' | 'joint' | 'step') => rows.group(kind, `${kind}@${entry.bikeId}`).length > 0;
  return others.length > 0 || on('part') || on('joint') || on('step');
}

/** Whether a look that was noted as "held" reads from now on that a joint that matters had moved. */
function movedAfterAll(rows: Rows, before: Entry, becomes: Correction['becomes']): boolean {
  return (
    before.type === 'torque-found' &&
    before.outcome === 'held' &&
    (becomes?.['outcome'] ?? 'held') !== 'held' &&
    rows.get('joint', before.jointId)?.matters === true
  );
}

/**
 * A correction of what a release was signed on revokes it. What happened after the release revokes by itself, as it
 * reads; once it is struck out, the release stands again. A look that says "moved" after all was no reason to revoke
 * when it was written, so its correction is, wherever the look stands.
 * @param before the entry as it reads now
 * @param becomes what the entry reads like from now on
 */
function correction(
  rows: Rows,
  entry: Entry,
  before: Entry,
  { reason, undo, becomes }: Pick<Correction, 'reason' | 'undo' | 'becomes'>,
  remarksOnly: boolean,
): EntryBody {
  const moves = movedAfterAll(rows, before, becomes);
  const [bikeId] = bikesOf(entry);
  const revokes = moves ? bikeId : revokedBike(entry);
  const release = revokes === undefined || remarksOnly ? undefined : rows.get('bike', revokes)?.release;
  const atMs = typeof becomes?.['happenedAtMs'] === 'number' ? becomes['happenedAtMs'] : standing(entry).ms;
  return present({
    type: 'entry-corrected',
    ...{ corrects: entry.id, reason, undo, becomes },
    bikeId: revokes ?? (entry as { bikeId?: Id }).bikeId,
    matters: release && (moves || Math.min(standing(entry).ms, atMs) <= release.atMs) ? true : undefined,
  });
}

/** Without what is struck out, a step that is done does not read as one that a tick cannot finish. */
function checkKindGivenBack(rows: Rows, stepId: Id, struck: readonly Id[]): void {
  const key = `step/${stepId}`;
  const left = reduceAnew(
    key,
    rows.facts(key).filter(({ id }) => !struck.includes(id)),
  ) as StepRow | undefined;
  const step = rows.get('step', stepId);
  if (left && step) checkStepKind(left, { ...step, state: left.state });
}

function strike(rows: Rows, entry: Entry, reason: string, undo: boolean, together: readonly Id[]): EntryBody {
  const before = today(rows, entry) ?? refuse('already-undone');
  if (builtUpon(rows, entry, together) || finishesStep(rows, entry, together)) refuse('others-build-on-it');
  const root = rootOf(rows, entry);
  if (root && 'wheelId' in root && root.type !== 'wheel-read') checkGivenBack(rows, root.wheelId, entry.id);
  if (root?.type === 'step-described') checkKindGivenBack(rows, root.stepId, [entry.id, ...together]);
  return correction(rows, entry, before, { reason, undo, becomes: null }, false);
}

/** Strikes out what was just written. The entries stay readable; nothing is deleted. */
export function undo(rows: Rows, { entryIds }: CommandOf<'undo'>, now: Circumstances): Ruling {
  if (new Set(entryIds).size !== entryIds.length) refuse('already-undone');
  const entries = entryIds.map((id) => entryOf(rows, id));
  return entries.reverse().map((entry) => {
    const agoMs = now.nowMs - entry.writtenAtMs;
    if (agoMs > UNDO_MS + GRACE_MS) refuse('undo-too-late');
    return strike(rows, entry, 'undone', true, entryIds);
  });
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** From now on the entry reads differently, or not at all; the old reading and the reason stay. */
export function correct(rows: Rows, command: CommandOf<'correct'>, now: Circumstances): Ruling {
  const entry = entryOf(rows, command.entryId);
  if (kinds[entry.type].stands) refuse('cannot-be-corrected');
  const reason = words(command.reason, 'reason-missing');
  const { becomes } = command;
  if (becomes === null) return [strike(rows, entry, reason, false, [entry.id])];
  const before = today(rows, entry) ?? refuse('already-undone');
  const fields = fieldsOf(entry.type);
  const named = Object.keys(becomes);
  for (const field of named) {
    const may = field === 'happenedAtMs' || (Object.hasOwn(fields, field) && fields[field]?.as !== 'fixed');
    if (!may || becomes[field] === undefined) refuse('cannot-be-corrected');
  }
  checkTime(becomes['happenedAtMs'], now);
  const changed = named.filter(
    (field) => !same(becomes[field], (before as unknown as Record<string, unknown>)[field]),
  );
  if (changed.length === 0) refuse(named.length === 0 ? 'cannot-be-corrected' : 'nothing-changes');
  checkEntry(rows, { ...before, ...becomes } as Entry, changed);
  const movedMs = changed.includes('happenedAtMs') ? Number(becomes['happenedAtMs']) : undefined;
  if (movedMs !== undefined && finishesStep(rows, entry, [], movedMs)) refuse('others-build-on-it');
  const remarksOnly = changed.every((field) => fields[field]?.as === 'remark');
  return [correction(rows, entry, before, { reason, undo: false, becomes }, remarksOnly)];
}
