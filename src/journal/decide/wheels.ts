import type { CommandOf } from '../commands.ts';
import type { EntryBody, Id, WheelPart } from '../entries.ts';
import { bikeOfPlace } from '../facts.ts';
import { type Rows, reduceAnew } from '../fold.ts';
import type { WheelRow } from '../rows.ts';
import { movePart } from './parts.ts';
import {
  type Circumstances,
  clearing,
  freshId,
  partOf,
  present,
  type Ruling,
  refuse,
  words,
} from './ruling.ts';

function wheelOf(rows: Rows, wheelId: Id): WheelRow {
  const wheel = rows.get('wheel', wheelId);
  return wheel && wheel.apart === undefined ? wheel : refuse('no-such-wheel');
}

/** The parts of a wheel, each once, and the bike they are on: the hub's first. */
function partsNamed(rows: Rows, parts: readonly WheelPart[]): { partIds: Id[]; bikeId: Id | undefined } {
  const hubFirst = [...parts].sort((a, b) => Number(b.as === 'hub') - Number(a.as === 'hub'));
  const partIds = [...new Set(hubFirst.map(({ partId }) => partId))];
  const bikes = partIds.map((partId) => bikeOfPlace(partOf(rows, partId).place));
  return { partIds, bikeId: bikes.find((bikeId) => bikeId !== undefined) };
}

/** A hub or a rim is in one wheel at most; a bag of nipples may serve several. */
function checkSingle(rows: Rows, wheelId: Id, parts: readonly WheelPart[]): void {
  const whole = (list: readonly WheelPart[]) =>
    list.filter(({ as }) => as === 'hub' || as === 'rim').map(({ partId }) => partId);
  for (const other of rows.group('wheel', 'wheel')) {
    if (other.wheelId === wheelId) continue;
    if (whole(other.parts).some((partId) => whole(parts).includes(partId)))
      refuse('part-in-other-wheel', other.name);
  }
}

/**
 * Struck out, an entry may give a wheel a hub or a rim back that another one has by now.
 * @param struckId the entry, or a correction of one
 */
export function checkGivenBack(rows: Rows, wheelId: Id, struckId: Id): void {
  const key = `wheel/${wheelId}`;
  const facts = rows.facts(key).filter(({ id }) => id !== struckId);
  const wheel = reduceAnew(key, facts) as WheelRow | undefined;
  if (wheel && wheel.apart === undefined) checkSingle(rows, wheelId, wheel.parts);
}

export function makeWheel(rows: Rows, command: CommandOf<'make-wheel'>, now: Circumstances): Ruling {
  const { type: _type, happenedAtMs: _at, wheelId: given, ...about } = command;
  const wheelId = freshId(rows, 'wheel', given, now);
  checkSingle(rows, wheelId, about.parts);
  const named = partsNamed(rows, about.parts);
  return [
    present({ type: 'wheel-made', wheelId, ...named, ...about, name: words(command.name, 'name-missing') }),
  ];
}

export function describeWheel(rows: Rows, command: CommandOf<'describe-wheel'>): Ruling {
  const { type: _type, happenedAtMs: _at, wheelId, ...about } = command;
  const wheel = wheelOf(rows, wheelId);
  if (about.name !== undefined) words(about.name, 'name-missing');
  const parts = about.parts ?? wheel.parts;
  checkSingle(rows, wheelId, parts);
  const named = partsNamed(rows, parts);
  return [present({ type: 'wheel-described', wheelId, ...named, ...about, ...clearing(wheel, about) })];
}

export function readWheel(rows: Rows, command: CommandOf<'read-wheel'>): Ruling {
  const { type: _type, happenedAtMs: _at, wheelId, ...set } = command;
  const wheel = wheelOf(rows, wheelId);
  if (set.read?.length !== wheel.leftSide.spokes + wheel.driveSide.spokes)
    refuse('readings-miscounted', `${set.read?.length}`);
  return [present({ type: 'wheel-read', wheelId, ...partsNamed(rows, wheel.parts), ...set })];
}

export function takeWheelApart(rows: Rows, command: CommandOf<'take-wheel-apart'>): Ruling {
  const wheel = wheelOf(rows, command.wheelId);
  const named = partsNamed(rows, wheel.parts);
  const why = words(command.why, 'reason-missing');
  // A bike whose wheel has no spokes any more is not the bike that was released.
  const matters = named.bikeId !== undefined;
  return [present({ type: 'wheel-taken-apart', wheelId: wheel.wheelId, ...named, why, matters })];
}

/** What of an entry makes it the same as another: two parts that leave one joint take it apart once. */
const sameAs = (body: EntryBody): string => {
  const { jointId, waitId, recheckId, stepId, partId } = body as unknown as Record<string, Id | undefined>;
  return [body.type, jointId, waitId, recheckId, stepId, partId].join('/');
};

/** All parts of a wheel go together; those that are there already stay. */
export function moveWheel(rows: Rows, command: CommandOf<'move-wheel'>, now: Circumstances): Ruling {
  const { to, why, happenedAtMs } = command;
  const wheel = wheelOf(rows, command.wheelId);
  const { partIds } = partsNamed(rows, wheel.parts);
  const there = (partId: Id) => {
    const { place } = partOf(rows, partId);
    return place.on === to.on && bikeOfPlace(place) === bikeOfPlace(to);
  };
  const leaving = partIds.filter((partId) => !there(partId));
  if (leaving.length === 0) refuse('same-place', wheel.name);
  const moved = leaving.flatMap((partId) =>
    movePart(rows, present({ type: 'move-part', partId, to, why, happenedAtMs }), now),
  );
  const seen = new Set<string>();
  return moved.filter((body) => !seen.has(sameAs(body)) && seen.add(sameAs(body)));
}
