import type { CommandOf } from '../commands.ts';
import type { Entry, EntryBody, Id } from '../entries.ts';
import { bikesOf } from '../facts.ts';
import type { Rows } from '../fold.ts';
import { type Circumstances, present, type Ruling, refuse, words } from './ruling.ts';
import { checkTorque } from './torque.ts';

/** How long undo is offered; two seconds of grace for a slow tap. */
const UNDO_MS = 10_000;
const GRACE_MS = 2000;

/** Fields that say what an entry is about; a correction changes what it says, never what it is about. */
const FIXED = new Set([
  'id',
  'v',
  'type',
  'writtenAtMs',
  'zone',
  'by',
  'bikeId',
  'partId',
  'jointId',
  'stepId',
  'waitId',
  'recheckId',
  'rideId',
  'toolId',
  'defectId',
  'releaseId',
  'noteId',
  'matters',
]);

/** Entries that others are built on, and statements made at a moment: they are answered, not rewritten. */
const STANDS = new Set<Entry['type']>([
  'entry-corrected',
  'bike-released',
  'release-withdrawn',
  'step-dropped',
  'clock-moved',
  'settings-changed',
]);

function entryOf(rows: Rows, id: Id): Entry {
  return rows.entry(id) ?? refuse('no-such-entry');
}

function struckOut(rows: Rows, id: Id): boolean {
  return rows.get('fix', id)?.fixes.at(-1)?.becomes === null;
}

/** The row an entry begins, for entries that begin one others may stand on. */
function keyOf(entry: Entry): string | undefined {
  if (entry.type === 'bike-started') return `bike/${entry.bikeId}`;
  if (entry.type === 'part-added') return `part/${entry.partId}`;
  return entry.type === 'joint-made' ? `joint/${entry.jointId}` : undefined;
}

/** Whether later entries stand on this one, so that it cannot simply be struck out. */
function builtUpon(rows: Rows, entry: Entry, together: Id[]): boolean {
  const key = keyOf(entry);
  if (key === undefined) return false;
  const others = rows
    .facts(key)
    .filter(({ id, type }) => type !== 'entry-corrected' && !together.includes(id));
  const onBike = (kind: 'part' | 'joint' | 'step', bikeId: Id) =>
    rows.group(kind, `${kind}@${bikeId}`).length > 0;
  if (entry.type === 'bike-started') {
    const { bikeId } = entry;
    return others.length > 0 || onBike('part', bikeId) || onBike('joint', bikeId) || onBike('step', bikeId);
  }
  return others.length > 0;
}

function correction(
  entry: Entry,
  reason: string,
  undo: boolean,
  becomes: Record<string, unknown> | null,
): EntryBody {
  const matters = (entry as { matters?: boolean }).matters === true ? true : undefined;
  return present({
    type: 'entry-corrected',
    corrects: entry.id,
    reason,
    undo,
    becomes,
    bikeId: bikesOf(entry)[0],
    matters,
  });
}

/** Strikes out what was just written. The entries stay readable; nothing is deleted. */
export function undo(rows: Rows, command: CommandOf<'undo'>, now: Circumstances): Ruling {
  const entries = command.entryIds.map((id) => entryOf(rows, id));
  return entries.reverse().map((entry) => {
    if (now.nowMs - entry.writtenAtMs > UNDO_MS + GRACE_MS) refuse('undo-too-late');
    if (struckOut(rows, entry.id)) refuse('already-undone');
    if (builtUpon(rows, entry, command.entryIds)) refuse('others-build-on-it');
    return correction(entry, 'undone', true, null);
  });
}

/** From now on the entry reads differently, or not at all; the old reading and the reason stay. */
export function correct(rows: Rows, command: CommandOf<'correct'>): Ruling {
  const entry = entryOf(rows, command.entryId);
  if (STANDS.has(entry.type)) refuse('cannot-be-corrected');
  const reason = words(command.reason, 'reason-missing');
  const { becomes } = command;
  if (becomes === null) {
    if (struckOut(rows, entry.id)) refuse('already-undone');
    if (builtUpon(rows, entry, [entry.id])) refuse('others-build-on-it');
    return [correction(entry, reason, false, null)];
  }
  const changed = Object.entries(becomes).filter(([field]) => !FIXED.has(field));
  if (changed.length === 0 || changed.length !== Object.keys(becomes).length) refuse('cannot-be-corrected');
  if (becomes['happenedAtMs'] !== undefined && !Number.isFinite(becomes['happenedAtMs']))
    refuse('not-a-number');
  const corrected = { ...entry, ...becomes } as Entry;
  if (corrected.type === 'torque-applied')
    checkTorque(corrected.applied, rows.get('joint', corrected.jointId));
  if (corrected.type === 'torque-found' && corrected.movedAt) checkTorque(corrected.movedAt);
  if (corrected.happenedAtMs > entry.writtenAtMs) refuse('in-the-future');
  return [correction(entry, reason, false, becomes)];
}
