import type { Entry, Id, Place } from '../../../src/journal/entries.ts';
import { comesBefore, earlyOf, factsOf, field, is } from './reading.ts';

export interface JointAnswer {
  bikeId: Id;
  name: string;
  kind: string;
  partIds: Id[];
  /** Shims and adapters between. */
  betweenIds: Id[];
  bolts: number;
  matters: boolean;
  state: 'open' | 'hand-tight' | 'torqued' | 'apart';
  applied?: { entryId: Id; value: number };
  appliedTimes: number;
  found?: { entryId: Id; outcome: string };
  locked?: { entryId: Id; waitId: Id };
  moved: number;
  /** Facts before the beginning: at least those that change the state, at most all that name it. */
  early: { least: number; most: number };
}

const stateKinds = ['torque-applied', 'hand-tightened', 'joint-taken-apart'] as const;

/** What is known of one joint. Taken apart, it has nothing applied, found or locked any more. */
export function jointAnswer(jointId: Id, read: readonly Entry[]): JointAnswer | undefined {
  const [beginning, ...facts] = factsOf('joint', jointId, read);
  if (beginning?.type !== 'joint-made') return undefined;
  const described = facts.filter(is('joint-described'));
  /** The last word on one field. */
  const now = <K extends 'name' | 'kind' | 'partIds' | 'between' | 'fasteners' | 'matters'>(name: K) =>
    described.filter((entry) => entry[name] !== undefined).at(-1)?.[name] ?? beginning[name];
  const apart = facts.findLastIndex(is('joint-taken-apart'));
  const since = facts.slice(apart + 1);
  const applied = since.filter(is('torque-applied')).at(-1);
  const found = since.filter(is('torque-found')).at(-1);
  const locked = since.filter(is('locker-applied')).at(-1);
  const last = facts.filter(is(...stateKinds)).at(-1)?.type;
  const early = earlyOf('joint', jointId, read);
  const fixes = read.filter(is('entry-corrected')).filter((fix) => comesBefore(fix, beginning));
  return {
    bikeId: beginning.bikeId,
    name: now('name') as string,
    kind: now('kind') as string,
    partIds: now('partIds') as Id[],
    betweenIds: (now('between') as { partId?: Id }[]).flatMap(({ partId }) => (partId ? [partId] : [])),
    bolts: (now('fasteners') as { count: number }[]).reduce((sum, { count }) => sum + count, 0),
    matters: now('matters') as boolean,
    state:
      last === 'joint-taken-apart'
        ? 'apart'
        : last === 'torque-applied'
          ? 'torqued'
          : last === 'hand-tightened'
            ? 'hand-tight'
            : 'open',
    ...(applied ? { applied: { entryId: applied.id, value: applied.applied.value } } : {}),
    appliedTimes: facts.filter(is('torque-applied')).length,
    ...(found ? { found: { entryId: found.id, outcome: found.outcome } } : {}),
    ...(locked ? { locked: { entryId: locked.id, waitId: locked.waitId } } : {}),
    moved: since.filter(is('torque-found')).filter(({ outcome }) => outcome !== 'held').length,
    early: {
      least: early.filter(is(...stateKinds, 'torque-found', 'locker-applied')).length,
      // Corrections that stand there may be counted with what they correct.
      most: early.length + fixes.length,
    },
  };
}

export interface SealAnswer {
  bikeId: Id;
  marks: Id[];
}

/** The marks on the seal of a joint, in order. */
export function sealAnswer(jointId: Id, read: readonly Entry[]): SealAnswer | undefined {
  const marks = read.filter(is('seal-marked')).filter((mark) => mark.jointId === jointId);
  const joint = read.filter(is('joint-made')).find((made) => made.jointId === jointId);
  return joint && marks.length > 0 ? { bikeId: joint.bikeId, marks: marks.map(({ id }) => id) } : undefined;
}

export interface PartAnswer {
  name: string;
  label: string;
  condition?: string;
  place: Place;
  changes: Id[];
  moves: Id[];
  early: { least: number; most: number };
}

/** What is known of one part: where it was last put, and every one-way change of its life. */
export function partAnswer(partId: Id, read: readonly Entry[]): PartAnswer | undefined {
  const [beginning, ...facts] = factsOf('part', partId, read);
  if (beginning?.type !== 'part-added') return undefined;
  const moves = facts.filter(is('part-moved'));
  const spoken = [beginning, ...facts].filter(is('part-added', 'part-described', 'part-moved'));
  let condition: string | undefined;
  for (const entry of spoken) {
    if (entry.condition !== undefined) condition = entry.condition;
    const cleared = field(entry, 'cleared') as readonly string[] | undefined;
    if (cleared?.includes('condition')) condition = undefined;
  }
  const described = facts.filter(is('part-described'));
  const early = facts.filter((entry) => comesBefore(entry, beginning));
  const fixes = read.filter(is('entry-corrected')).filter((fix) => comesBefore(fix, beginning));
  return {
    name: described.filter(({ name }) => name !== undefined).at(-1)?.name ?? beginning.name,
    label: described.filter(({ label }) => label !== undefined).at(-1)?.label ?? beginning.label,
    ...(condition === undefined ? {} : { condition }),
    place: moves.at(-1)?.to ?? beginning.place,
    changes: facts.filter(is('part-changed')).map(({ id }) => id),
    moves: moves.map(({ id }) => id),
    early: {
      least: early.filter(is('part-moved', 'part-changed', 'part-described')).length,
      most: early.length + fixes.length,
    },
  };
}
