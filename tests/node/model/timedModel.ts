import type { Entry, Id } from '../../../src/journal/entries.ts';
import { ridesOf } from './bikeModel.ts';
import { comesBefore, factsOf, field, is } from './reading.ts';

export interface WaitAnswer {
  bikeId: Id;
  jointId?: Id;
  kind: string;
  running: boolean;
  startedAtMs: number;
  dueAtMs: number;
  /** What changes of the clock have moved it by. */
  movedMs: number;
  /** The changes of the clock it has taken. */
  clockChanges: string[];
}

/** [W1, W2] One wait: when it began, how long it was last set to, and what the clock was moved by. */
export function waitAnswer(waitId: Id, read: readonly Entry[]): WaitAnswer | undefined {
  const [beginning, ...facts] = factsOf('wait', waitId, read);
  if (beginning?.type !== 'wait-started' && beginning?.type !== 'locker-applied') return undefined;
  const set = facts.filter(is('wait-changed')).at(-1)?.waitMs ?? beginning.waitMs;
  const changes = new Map<string, number>();
  for (const moved of facts.filter(is('clock-moved'))) {
    // [W2] One change of the clock is taken once.
    const change = (field(moved, 'changeId') as string | undefined) ?? moved.id;
    if (!changes.has(change)) changes.set(change, moved.byMs);
  }
  const movedMs = [...changes.values()].reduce((sum, byMs) => sum + byMs, 0);
  return {
    bikeId: beginning.bikeId,
    ...(beginning.jointId === undefined ? {} : { jointId: beginning.jointId }),
    kind: beginning.type === 'locker-applied' ? 'cure' : beginning.kind,
    running: !facts.some(is('wait-ended')),
    startedAtMs: beginning.happenedAtMs,
    dueAtMs: beginning.happenedAtMs + set + movedMs,
    movedMs,
    clockChanges: [...changes.keys()],
  };
}

const rideCounts = (rides: readonly { km?: number }[]) => ({
  rides: rides.length,
  km: rides.reduce((sum, { km }) => sum + (km ?? 0), 0),
});

/** When rides, in order, first cover a count or a distance. */
function reachedAt(
  rides: readonly { km?: number; happenedAtMs: number }[],
  dueRides: number | undefined,
  dueKm: number | undefined,
): number | undefined {
  return rides.find((_ride, at) => {
    const until = rideCounts(rides.slice(0, at + 1));
    return (dueRides !== undefined && until.rides >= dueRides) || (dueKm !== undefined && until.km >= dueKm);
  })?.happenedAtMs;
}

const earliest = (...instants: (number | undefined)[]): number | undefined => {
  const known = instants.filter((instant) => instant !== undefined);
  return known.length === 0 ? undefined : Math.min(...known);
};

export interface RecheckAnswer {
  bikeId: Id;
  jointId?: Id;
  partId?: Id;
  turn: number;
  open: boolean;
  dropped: boolean;
  ridesThen: number;
  kmThen: number;
  reachedAtMs?: number;
  dueAtMs?: number;
  /** Two readings are possible: the time at which it was set was corrected afterwards. */
  unsureDue: boolean;
}

/** [R4] One re-check: due by its time, or by the rides and the distance after it was set. */
export function recheckAnswer(
  recheckId: Id,
  read: readonly Entry[],
  all: readonly Entry[],
): RecheckAnswer | undefined {
  const [beginning, ...facts] = factsOf('recheck', recheckId, read);
  if (beginning?.type !== 'recheck-set') return undefined;
  const spans = facts.filter(is('recheck-changed')).at(-1) ?? beginning;
  const rides = ridesOf(beginning.bikeId, read);
  const before = rideCounts(rides.filter((ride) => comesBefore(ride, beginning)));
  const after = rides.filter((ride) => comesBefore(beginning, ride));
  // Due after no ride at all, it is due before the next one.
  const reachedAtMs =
    spans.dueRides === 0 ? beginning.happenedAtMs : reachedAt(after, spans.dueRides, spans.dueKm);
  const dueAtMs = earliest(reachedAtMs, spans.dueAtMs);
  const asWritten = all.find(({ id }) => id === beginning.id) ?? beginning;
  return {
    bikeId: beginning.bikeId,
    ...(beginning.jointId === undefined ? {} : { jointId: beginning.jointId }),
    ...(beginning.partId === undefined ? {} : { partId: beginning.partId }),
    turn: beginning.turn,
    open: !facts.some(is('recheck-answered', 'recheck-dropped', 'torque-found')),
    dropped: facts.some(is('recheck-dropped')),
    ridesThen: before.rides,
    kmThen: before.km,
    ...(reachedAtMs === undefined ? {} : { reachedAtMs }),
    ...(dueAtMs === undefined ? {} : { dueAtMs }),
    unsureDue: asWritten.happenedAtMs !== beginning.happenedAtMs,
  };
}

export interface DefectAnswer {
  bikeId: Id;
  jointId?: Id;
  open: boolean;
  decision: string;
  dueAtMs?: number;
}

/** [L6] One defect: a limit is over at its instant, or when the rides after it have covered its distance. */
export function defectAnswer(defectId: Id, read: readonly Entry[]): DefectAnswer | undefined {
  const [beginning, ...facts] = factsOf('defect', defectId, read);
  if (beginning?.type !== 'defect-found') return undefined;
  const after = ridesOf(beginning.bikeId, read).filter((ride) => comesBefore(beginning, ride));
  const dueAtMs = earliest(reachedAt(after, undefined, beginning.untilKm), beginning.untilMs);
  return {
    bikeId: beginning.bikeId,
    ...(beginning.jointId === undefined ? {} : { jointId: beginning.jointId }),
    open: !facts.some(is('defect-closed')),
    decision: beginning.decision,
    ...(dueAtMs === undefined ? {} : { dueAtMs }),
  };
}
