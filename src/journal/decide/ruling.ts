import type { Command, Refusal, Refused } from '../commands.ts';
import type { Described, Entry, EntryBody, Id, Unknowable } from '../entries.ts';
import type { OpenInPile } from '../fitAtHand.ts';
import type { Rows } from '../fold.ts';
import type { BikeRow, JointRow, PartRow, StepRow } from '../rows.ts';

/** What a decision takes from outside: the clock, the zone, and ids for what is new. */
export interface Circumstances {
  nowMs: number;
  zone: string;
  newId(): Id;
  /** Wanted where a release says what is open. */
  openInPile?: OpenInPile;
}

/** New entries without their heads, or a named refusal. */
export type Ruling = EntryBody[] | Refused;

/** Thrown by the `…Of` functions below and caught by `decide`, so that a decision reads top to bottom. */
export class RefusedCommand extends Error {
  readonly refused: Refused;
  constructor(refused: Refusal, about?: string) {
    super(refused);
    this.refused = about === undefined ? { refused } : { refused, about };
  }
}

/** Ends a decision with a named refusal. */
export function refuse(refused: Refusal, about?: string): never {
  throw new RefusedCommand(refused, about);
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

/** A text that must not be empty. */
export function words(text: string | undefined, missing: Refusal): string {
  const trimmed = (text ?? '').trim();
  return trimmed === '' ? refuse(missing) : trimmed;
}

/** A number that must be finite and above zero, and at most `most`. */
export function positive(value: number | undefined, most: number): number {
  if (value === undefined || !Number.isFinite(value)) return refuse('not-a-number');
  if (value <= 0) return refuse('not-positive');
  return value > most ? refuse('absurd-value', String(value)) : value;
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

/** Heads the entries of one command. */
export function headed(
  rows: Rows,
  bodies: EntryBody[],
  command: Command,
  now: Circumstances,
  version: number,
): Entry[] {
  const by = rows.get('settings', 'app')?.settings.doer.trim();
  return bodies.map((body) => ({
    id: now.newId(),
    v: version,
    writtenAtMs: now.nowMs,
    happenedAtMs: command.happenedAtMs ?? now.nowMs,
    zone: now.zone,
    ...(by ? { by } : {}),
    ...body,
  }));
}
