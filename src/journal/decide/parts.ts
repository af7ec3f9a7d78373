import { convert, type LengthUnit } from '../../mechanics/units.ts';
import { timeDueMs } from '../../planning/due.ts';
import type { CommandOf } from '../commands.ts';
import type { EntryBody, Id, OneWayChange, PartAbout, Place } from '../entries.ts';
import { bikeOf as bikeOfPlace } from '../facts.ts';
import type { Rows } from '../fold.ts';
import { labelHolder } from '../labelHolder.ts';
import type { PartRow } from '../rows.ts';
import { apart } from './joints.ts';
import { rideCounts } from './rechecks.ts';
import {
  bikeOf,
  type Circumstances,
  clearing,
  partOf,
  positive,
  present,
  type Ruling,
  refuse,
  words,
} from './ruling.ts';

function samePlace(a: Place, b: Place): boolean {
  return a.on === b.on && bikeOfPlace(a) === bikeOfPlace(b);
}

function checkLabel(rows: Rows, partId: Id, label: string): void {
  const holder = labelHolder(rows.all('part'), partId, label);
  if (holder) refuse('label-taken', holder.name);
}

const HEAVIEST_G = 100_000;
const FARTHEST_KM = 1_000_000;
/** Longer than anything of a bike, a tandem's frame included. Own judgement, no source. */
const LONGEST_MM = 3000;

function checkFigures({ massG, kmBefore }: Partial<PartAbout>): void {
  if (massG !== undefined) positive(massG, HEAVIEST_G);
  if (typeof kmBefore === 'number' && kmBefore !== 0) positive(kmBefore, FARTHEST_KM);
}

export function addPart(rows: Rows, command: CommandOf<'add-part'>, now: Circumstances): Ruling {
  const { type: _type, happenedAtMs: _at, partId = now.newId(), place, ...about } = command;
  const name = words(command.name, 'name-missing');
  if (place.on === 'bike') bikeOf(rows, place.bikeId);
  checkFigures(about);
  checkLabel(rows, partId, command.label);
  return [present({ type: 'part-added', partId, place, ...about, name, label: command.label.trim() })];
}

export function describePart(rows: Rows, command: CommandOf<'describe-part'>): Ruling {
  const { type: _type, happenedAtMs: _at, partId, ...about } = command;
  const part = partOf(rows, partId);
  if (about.name !== undefined) words(about.name, 'name-missing');
  checkFigures(about);
  if (about.label !== undefined) checkLabel(rows, partId, about.label);
  const bikeId = bikeOfPlace(part.place);
  return [present({ type: 'part-described', partId, bikeId, ...about, ...clearing(part, about) })];
}

/** Joints of a bike that hold this part and are still together. */
function jointsHolding(rows: Rows, bikeId: Id, part: PartRow) {
  return rows
    .group('joint', `joint@${bikeId}`)
    .filter((joint) => joint.state !== 'apart' && joint.partIds.includes(part.partId));
}

/** The looks that a part's one-way changes ask for go with it: they end on the bike it leaves and begin on the next. */
function inspectionsMoved(
  rows: Rows,
  part: PartRow,
  to: Id | undefined,
  now: Circumstances,
  atMs: number,
): EntryBody[] {
  const from = bikeOfPlace(part.place);
  const open = from === undefined ? [] : rows.group('recheck', `recheck@${from}`);
  const ended = open
    .filter(
      ({ partId, jointId, kind }) => partId === part.partId && jointId === undefined && kind === 'inspect',
    )
    .map(
      ({ recheckId, bikeId }): EntryBody => ({
        type: 'recheck-dropped',
        recheckId,
        bikeId,
        why: `${part.name} taken off`,
      }),
    );
  if (to === undefined) return ended;
  const begun = part.changes.flatMap(({ where, inspection }) =>
    inspection ? [inspectionOf(rows, part, to, { where, inspection }, now, atMs)] : [],
  );
  return [...ended, ...begun];
}

/**
 * A part is on one bike at most: moving it takes it off the other, and the joints it was in are thereby
 * apart, each with an entry of its own.
 */
export function movePart(rows: Rows, command: CommandOf<'move-part'>, now: Circumstances): Ruling {
  const part = partOf(rows, command.partId);
  const { to } = command;
  if (samePlace(part.place, to)) refuse('same-place', part.name);
  if (to.on === 'bike') bikeOf(rows, to.bikeId);
  if (to.on === 'quarantine') words(to.why, 'reason-missing');
  if (to.on === 'scrapped') words(to.how, 'reason-missing');
  const from = bikeOfPlace(part.place);
  const joints = from === undefined ? [] : jointsHolding(rows, from, part);
  const matters = joints.some((joint) => joint.matters) || undefined;
  const { why, condition } = command;
  return [
    ...joints.flatMap((joint) => apart(rows, joint, `${part.name} taken off`)),
    present({ type: 'part-moved', partId: part.partId, from: part.place, to, why, condition, matters }),
    ...inspectionsMoved(rows, part, bikeOfPlace(to), now, command.happenedAtMs ?? now.nowMs),
  ];
}

export function changePart(rows: Rows, command: CommandOf<'change-part'>, now: Circumstances): Ruling {
  const { type: _type, happenedAtMs: atMs = now.nowMs, partId, ...change } = command;
  const part = partOf(rows, partId);
  words(change.where, 'words-missing');
  words(change.how, 'words-missing');
  words(change.why, 'reason-missing');
  if (!Number.isFinite(change.before.value) || !Number.isFinite(change.after.value)) refuse('not-a-number');
  if (change.before.value < 0 || change.after.value < 0) refuse('not-positive');
  if (change.left !== undefined && !(change.left.value >= 0)) refuse('not-a-number');
  for (const { value, unit, typed } of [change.before, change.after, change.left ?? change.after])
    if (convert<LengthUnit>(value, unit, 'mm') > LONGEST_MM) refuse('absurd-value', typed);
  const bikeId = bikeOfPlace(part.place);
  const entries: EntryBody[] = [present({ type: 'part-changed', partId, bikeId, ...change })];
  const { inspection } = change;
  if (inspection) {
    words(inspection.words, 'words-missing');
    if (inspection.everyDays === undefined && inspection.everyKm === undefined) refuse('limit-missing');
    if (inspection.everyDays !== undefined) positive(inspection.everyDays, 3660);
    if (inspection.everyKm !== undefined) positive(inspection.everyKm, 100_000);
    const { where } = change;
    if (bikeId !== undefined)
      entries.push(inspectionOf(rows, part, bikeId, { where, inspection }, now, atMs));
  }
  return entries;
}

/** The look that a one-way change asks for, counted from the instant it happened or its part came to the bike. */
function inspectionOf(
  rows: Rows,
  part: PartRow,
  bikeId: Id,
  { where, inspection }: { where: string; inspection: NonNullable<OneWayChange['inspection']> },
  now: Circumstances,
  atMs: number,
): EntryBody {
  return present({
    type: 'recheck-set',
    recheckId: now.newId(),
    bikeId,
    partId: part.partId,
    kind: 'inspect',
    title: `${part.name}: ${where}`,
    instruction: words(inspection.words, 'words-missing'),
    dueRides: 1,
    dueKm: inspection.everyKm,
    dueDays: inspection.everyDays,
    dueAtMs: timeDueMs(atMs, inspection.everyDays),
    turn: 0,
    ...rideCounts(rows, bikeId),
  });
}
