import { timeDueMs } from '../../planning/due.ts';
import { visible } from '../checks/field.ts';
import type { Command, Refusal, Refused } from '../commands.ts';
import type { Described, Entry, EntryBody, Id, Unknowable } from '../entries.ts';
import { begunKey, factKeys, splitKey } from '../facts.ts';
import type { OpenInPile } from '../fitAtHand.ts';
import { type Rows, rootOf } from '../fold.ts';
import { phoneName } from '../phoneName.ts';
import type { BikeRow, JointRow, PartRow, RowKind, StepRow } from '../rows.ts';

/** What a decision takes from outside: the clock, the zone, and ids for what is new. */
export interface Circumstances {
  nowMs: number;
  zone: string;
  newId(): Id;
  /** What the phone is called, as it was typed. */
  phone?: string | undefined;
  /** Wanted where a release says what is open. */
  openInPile?: OpenInPile;
}

/** New entries without their heads. */
export type Ruling = EntryBody[];

/** Thrown by `refuse` and caught by `decide`, so that a decision reads top to bottom. */
export class RefusedCommand extends Error {
  readonly refused: Refused;
  constructor(refused: Refusal, about?: string) {
    super(refused);
    this.refused = about === undefined ? { refused } : { refused, about };
  }
}

/** A clock may run a little ahead of the one that wrote a command; more than this is a mistake. */
const AHEAD_MS = 60_000;

/** Earlier than any bicycle; a slip of the year. */
const EARLIEST_MS = Date.UTC(1800, 0);

/** Ends a decision with a named refusal. */
export function refuse(refused: Refusal, about?: string): never {
  throw new RefusedCommand(refused, about);
}

/**
 * Refuses a time at which nothing can have happened, for a command and for a correction alike.
 * @param happenedAtMs ms UTC, from the year 1800 to now; left out, it is now
 */
export function checkTime(happenedAtMs: unknown, { nowMs }: Circumstances): void {
  if (happenedAtMs === undefined) return;
  if (typeof happenedAtMs !== 'number' || !Number.isFinite(happenedAtMs)) refuse('not-a-number');
  if (happenedAtMs > nowMs + AHEAD_MS) refuse('in-the-future');
  if (happenedAtMs < EARLIEST_MS) refuse('absurd-value', String(happenedAtMs));
}

export function bikeOf(rows: Rows, bikeId: Id): BikeRow {
  return rows.get('bike', bikeId) ?? refuse('no-such-bike');
}

export function partOf(rows: Rows, partId: Id): PartRow {
  return rows.get('part', partId) ?? refuse('no-such-part');
}

export function jointOf(rows: Rows, jointId: Id): JointRow {
  return rows.get('joint', jointId) ?? refuse('no-such-joint');
}

export function stepOf(rows: Rows, stepId: Id): StepRow {
  const step = rows.get('step', stepId);
  if (!step || step.state === 'dropped') return refuse('no-such-step');
  return step;
}

/** A text that must say something, without the spaces round it. */
export function words(text: string | undefined, missing: Refusal): string {
  if (typeof text === 'string' && visible(text)) return text.trim();
  return refuse(missing);
}

/** Fields of `from` that are present; keeps entries free of undefined fields. */
export function present<T extends object>(from: T): T {
  return Object.fromEntries(Object.entries(from).filter(([, value]) => value !== undefined)) as T;
}

/**
 * What a description takes away: the fields that hold something and are not said anew in the same breath.
 * @param row the thing as it is known
 */
export function clearing<T extends object>(
  row: T,
  about: Described<T>,
): { cleared?: Unknowable<T>[] | undefined } {
  const cleared = about.cleared?.filter((field) => row[field] !== undefined && about[field] === undefined);
  return { cleared: cleared?.length ? cleared : undefined };
}

/** When a span of days is over; days that are no number are left to the check of the entry. */
export function dueAt(fromMs: number, days: number | undefined): number | undefined {
  const reckoned = days !== undefined && Number.isFinite(days) && days >= 0 && days <= 3660;
  return reckoned ? timeDueMs(fromMs, days) : undefined;
}

/** The id of what a command makes: its own, if nothing bears it yet, or a new one. */
export function freshId(rows: Rows, kind: RowKind, given: Id | undefined, now: Circumstances): Id {
  if (given === undefined) return now.newId();
  if (rows.get(kind, given)) refuse('already-there');
  return given;
}

/** The newest place in the order that any of the rows holds which these entries are facts of. */
function newestIn(rows: Rows, bodies: readonly EntryBody[]): number {
  const begun = new Set(bodies.map((body) => begunKey(body as Entry)));
  const keys = new Set(bodies.flatMap((body) => factKeys(body as Entry)));
  const held = [...keys].flatMap((key) => (begun.has(key) ? [] : (rows.get(...splitKey(key))?.lastMs ?? [])));
  // A correction comes after those that the same entry has.
  for (const body of bodies) {
    const root = body.type === 'entry-corrected' && rootOf(rows, body as Entry);
    const fix = root && rows.get('fix', root.id);
    if (fix) held.push(fix.lastMs);
  }
  // A ride counts for every task and every limit of its bike that is open.
  for (const body of bodies) {
    if (body.type !== 'ride-logged') continue;
    const open = [
      ...rows.group('recheck', `recheck@${body.bikeId}`),
      ...rows.group('defect', `defect@${body.bikeId}`),
    ];
    held.push(...open.map(({ lastMs }) => lastMs));
  }
  return Math.max(Number.NEGATIVE_INFINITY, ...held);
}

/**
 * Heads the entries of one command. Where the clock stands before something that the rows already hold, the entries
 * come right after it: an answer never stands before what it answers.
 */
export function headed(
  rows: Rows,
  bodies: EntryBody[],
  command: Command,
  now: Circumstances,
  version: number,
): Entry[] {
  const by = rows.get('settings', 'app')?.settings.doer.trim();
  const phone = phoneName(now.phone);
  const late = command.happenedAtMs !== undefined;
  const newest = late ? Number.NEGATIVE_INFINITY : newestIn(rows, bodies);
  return bodies.map((body) => ({
    id: now.newId(),
    v: version,
    writtenAtMs: now.nowMs,
    happenedAtMs: command.happenedAtMs ?? now.nowMs,
    zone: now.zone,
    ...(by ? { by } : {}),
    ...(phone ? { phone } : {}),
    ...(newest > now.nowMs ? { orderMs: newest + 1 } : {}),
    ...body,
  }));
}
