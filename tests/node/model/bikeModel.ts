import type { Entry, Id } from '../../../src/journal/entries.ts';
import { comesBefore, factsOf, field, idsOf, is } from './reading.ts';

export interface BikeAnswer {
  name: string;
  release?: { releaseId: Id; statement: string; open: number; withdrawn: boolean };
  /** The entry that revoked the last release. */
  revokedBy?: Id;
  putAway: boolean;
}

/** The bike on which an entry revokes: a part that moves revokes on the bike it leaves. */
function bikeOf(entry: Entry): unknown {
  if (entry.type === 'part-moved') return entry.from.on === 'bike' ? entry.from.bikeId : undefined;
  return field(entry, 'bikeId');
}

/** [L2] Whether an entry revokes a release that stands. */
function revokes(entry: Entry): boolean {
  if (entry.type === 'joint-described') return field(entry, 'revokes') === true;
  // A look that found everything as it was, or reads so by now, changes nothing.
  if (entry.type === 'torque-found' && entry.outcome === 'held') return false;
  return field(entry, 'matters') === true;
}

/** What is known of one bike, from the entries that count as they read. */
export function bikeAnswer(bikeId: Id, read: readonly Entry[]): BikeAnswer | undefined {
  const [beginning, ...facts] = factsOf('bike', bikeId, read);
  if (beginning?.type !== 'bike-started') return undefined;
  const named = [beginning, ...facts].filter(is('bike-started', 'bike-described')).filter(({ name }) => name);
  const away = facts.filter(is('bike-put-away', 'bike-taken-out')).at(-1);
  const answer: BikeAnswer = {
    name: named.at(-1)?.name ?? '',
    putAway: away?.type === 'bike-put-away',
  };
  const release = facts.filter(is('bike-released')).at(-1);
  if (!release) return answer;
  const after = read.filter((entry) => comesBefore(release, entry) && bikeOf(entry) === bikeId);
  const withdrawn = after.find(is('release-withdrawn'));
  answer.release = {
    releaseId: release.releaseId,
    statement: release.statement,
    open: release.open.length,
    withdrawn: withdrawn !== undefined,
  };
  // Only what says that the bike may be ridden can be revoked, and only while it stands.
  if (release.statement === 'not-to-ride') return answer;
  const revoker = after.find(revokes);
  if (revoker && !(withdrawn && comesBefore(withdrawn, revoker))) answer.revokedBy = revoker.id;
  return answer;
}

export interface StepAnswer {
  bikeId: Id;
  state: 'open' | 'done' | 'skipped' | 'dropped';
  jointId?: Id;
  kind: string;
  /** Two readings are possible: something stands after the step was dropped. */
  unsure: boolean;
}

/** What became of one step: the last word on it. */
export function stepAnswer(stepId: Id, read: readonly Entry[]): StepAnswer | undefined {
  const [beginning, ...facts] = factsOf('step', stepId, read);
  if (beginning?.type !== 'step-added') return undefined;
  const outcomes = [
    ...(['step-done', 'torque-applied', 'locker-applied'] as const),
    ...(['step-skipped', 'step-reopened', 'step-dropped'] as const),
  ];
  const heard = facts.filter(is(...outcomes));
  const last = heard.at(-1)?.type;
  const states = {
    'step-skipped': 'skipped',
    'step-reopened': 'open',
    'step-dropped': 'dropped',
  } as const;
  const kinds = facts.filter(is('step-described')).filter(({ kind }) => kind !== undefined);
  return {
    bikeId: beginning.bikeId,
    state: last === undefined ? 'open' : (states[last as keyof typeof states] ?? 'done'),
    kind: kinds.at(-1)?.kind ?? beginning.kind,
    ...(beginning.jointId === undefined ? {} : { jointId: beginning.jointId }),
    unsure: heard.slice(0, -1).some(({ type }) => type === 'step-dropped'),
  };
}

export interface RidesAnswer {
  count: number;
  km: number;
  minutes: number;
}

export const ridesOf = (bikeId: Id, read: readonly Entry[]) =>
  read.filter(is('ride-logged')).filter((ride) => ride.bikeId === bikeId);

/** What a bike has been ridden. */
export function ridesAnswer(bikeId: Id, read: readonly Entry[]): RidesAnswer {
  const rides = ridesOf(bikeId, read);
  return {
    count: rides.length,
    km: rides.reduce((sum, { km }) => sum + (km ?? 0), 0),
    minutes: rides.reduce((sum, { minutes }) => sum + (minutes ?? 0), 0),
  };
}

export const bikeIds = (read: readonly Entry[]): Id[] => idsOf('bike', read);
