import type { CommandOf } from '../commands.ts';
import type { EntryBody, Id, OneWayChange, Place } from '../entries.ts';
import { bikeOfPlace } from '../facts.ts';
import type { Rows } from '../fold.ts';
import type { JointRow, PartRow } from '../rows.ts';
import { apart, endedAbout, partsOf, startedBy } from './joints.ts';
import {
  bikeOf,
  type Circumstances,
  clearing,
  dueAt,
  freshId,
  partOf,
  present,
  type Ruling,
  refuse,
  words,
} from './ruling.ts';

function samePlace(a: Place, b: Place): boolean {
  return a.on === b.on && bikeOfPlace(a) === bikeOfPlace(b);
}

export function addPart(rows: Rows, command: CommandOf<'add-part'>, now: Circumstances): Ruling {
  const { type: _type, happenedAtMs: _at, partId: given, place, ...about } = command;
  const partId = freshId(rows, 'part', given, now);
  const name = words(command.name, 'name-missing');
  if (place.on === 'bike') bikeOf(rows, place.bikeId);
  return [present({ type: 'part-added', partId, place, ...about, name, label: command.label.trim() })];
}

export function describePart(rows: Rows, command: CommandOf<'describe-part'>): Ruling {
  const { type: _type, happenedAtMs: _at, partId, ...about } = command;
  const part = partOf(rows, partId);
  if (about.name !== undefined) words(about.name, 'name-missing');
  const bikeId = bikeOfPlace(part.place);
  return [present({ type: 'part-described', partId, bikeId, ...about, ...clearing(part, about) })];
}

/** Joints of a bike that hold this part, together or apart. */
function jointsHolding(rows: Rows, bikeId: Id, part: PartRow): JointRow[] {
  return rows.group('joint', `joint@${bikeId}`).filter((joint) => partsOf(joint).includes(part.partId));
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
    inspection ? [inspectionOf(part, to, { where, inspection }, now, atMs)] : [],
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
  const from = bikeOfPlace(part.place);
  const joints = from === undefined ? [] : jointsHolding(rows, from, part);
  const matters = joints.some((joint) => joint.matters && joint.state !== 'apart') || undefined;
  const { why, condition } = command;
  return [
    ...joints.flatMap((joint) =>
      joint.state === 'apart'
        ? endedAbout(rows, joint, startedBy(command))
        : apart(rows, joint, `${part.name} taken off`, startedBy(command)),
    ),
    present({ type: 'part-moved', partId: part.partId, from: part.place, to, why, condition, matters }),
    ...inspectionsMoved(rows, part, bikeOfPlace(to), now, command.happenedAtMs ?? now.nowMs),
  ];
}

export function changePart(rows: Rows, command: CommandOf<'change-part'>, now: Circumstances): Ruling {
  const { type: _type, happenedAtMs: atMs = now.nowMs, partId, ...change } = command;
  const part = partOf(rows, partId);
  const bikeId = bikeOfPlace(part.place);
  const entries: EntryBody[] = [present({ type: 'part-changed', partId, bikeId, ...change })];
  const { inspection } = change;
  if (inspection) {
    const { where } = change;
    if (bikeId !== undefined) entries.push(inspectionOf(part, bikeId, { where, inspection }, now, atMs));
  }
  return entries;
}

/** The look that a one-way change asks for, counted from the instant it happened or its part came to the bike. */
function inspectionOf(
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
    dueAtMs: dueAt(atMs, inspection.everyDays),
    turn: 0,
  });
}
