import type { Act, Written } from './acts.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

type Undated = Act extends infer One ? (One extends Act ? Omit<One, 'no' | 'afterMs'> : never) : never;

/** Acts numbered from 1, five seconds apart where nothing else is said. */
const sequence = (...acts: (Undated & { afterMs?: number })[]): Act[] =>
  acts.map((act, at) => ({ afterMs: 5000, ...act, no: at + 1 }) as Act);

const run = (command: Written, tab: 0 | 1 = 0) => ({ act: 'run', tab, command }) as const;
const both = (command: Written) =>
  ({ act: 'race', commands: ([0, 1] as const).map((tab) => ({ tab, command })) }) as const;
const look = { act: 'look' } as const;

const nm = (value: number) => ({ value, unit: 'N.m', typed: String(value) });

const start = (bikeId: string): Written => ({
  ...{ type: 'start-bike', bikeId, name: `Bike ${bikeId}` },
  ...(bikeId.startsWith('demo-') ? { demo: true } : {}),
});
const add = (partId: string, bikeId: string): Written => ({
  ...{ type: 'add-part', partId, label: partId, name: `Part ${partId}`, kind: 'other', origin: 'found' },
  place: { on: 'bike', bikeId },
});
const join: Written = {
  ...{ type: 'make-joint', jointId: 'j', bikeId: 'b', name: 'Stem', kind: 'stem-steerer' },
  ...{ partIds: ['p', 'q'], between: [], fasteners: [{ thread: 'M5', count: 2, hand: 'right' }] },
  targets: [{ source: 'printed-on-the-part', torque: nm(5) }],
};
const torque = (value = 5): Written => ({
  ...{ type: 'apply-torque', jointId: 'j', applied: nm(value), entered: 'tap', bolts: 2, passes: 1 },
});
const locker: Written = {
  ...{ type: 'apply-locker', jointId: 'j', grade: 'medium', surface: 'steel', primer: false, waitMs: DAY },
};

/** The first acts of most: a bike with two parts and a joint between them. Acts 1 to 4. */
const built = [run(start('b')), run(add('p', 'b')), run(add('q', 'b'), 1), run(join)];

/** Sequences that once showed a mismatch, made as short as they can be. */
export const keptSequences: readonly { what: string; acts: Act[] }[] = [
  { what: 'a bike started from two tabs at the same instant', acts: sequence(both(start('b')), look) },
  {
    what: 'a part moved from one tab while the other had looked at it',
    acts: sequence(
      run(start('b')),
      run(start('c'), 1),
      run(add('p', 'b')),
      run({ type: 'describe-part', partId: 'p', name: 'Other' }, 1),
      run({ type: 'move-part', partId: 'p', to: { on: 'bike', bikeId: 'c' } }),
      look,
    ),
  },
  {
    what: "a torque's time set right to before its joint was written down",
    acts: sequence(
      ...built,
      run(torque()),
      run({
        ...{ type: 'correct', entryId: { from: [5, 0, 'id'] }, reason: 'earlier' },
        becomes: { happenedAtMs: { from: [5, 0, 'happenedAtMs'], plus: -HOUR } },
      }),
      look,
    ),
  },
  {
    what: 'a part described while the clock stood before it was added',
    acts: sequence(
      run(start('b')),
      run(add('p', 'b')),
      { act: 'set-clock', byMs: -2 * DAY },
      run({ type: 'describe-part', partId: 'p', condition: 'worn' }, 1),
      look,
    ),
  },
  {
    what: 'one change of the clock answered on two pages at once',
    acts: sequence(
      ...built,
      run(locker),
      { act: 'set-clock', byMs: HOUR },
      both({ type: 'shift-waits', byMs: HOUR, changeId: 'change' }),
      look,
    ),
  },
  {
    what: 'a correction of what was struck out',
    acts: sequence(
      ...built,
      run(torque()),
      run({ type: 'undo', entryIds: [{ from: [5, 0, 'id'] }] }),
      run({
        ...{ type: 'correct', entryId: { from: [5, 0, 'id'] }, reason: 'misread' },
        becomes: { applied: nm(6) },
      }),
      look,
    ),
  },
  {
    what: 'commands from two tabs while a page makes the rows anew',
    acts: sequence(
      ...built,
      {
        ...both({ type: 'log-ride', bikeId: 'b', km: 12 }),
        rebuild: true,
        claims: true,
      },
      { act: 'rebuild', pages: 2 },
      run(torque()),
      look,
    ),
  },
  {
    what: 'a ride written down late, before the limit that it would have reached',
    acts: sequence(
      ...built,
      run({
        ...{ type: 'find-defect', bikeId: 'b', words: 'bell', area: 'other', decision: 'ride-limited' },
        untilKm: 20,
      }),
      run({ type: 'log-ride', bikeId: 'b', km: 30, happenedAtMs: { now: -10_000 } }),
      look,
      run({ type: 'log-ride', bikeId: 'b', km: 25 }),
      { act: 'claim', who: 'all' },
      look,
    ),
  },
  {
    what: 'a joint that is apart, its part on the shelf, and tools that would go onto it',
    acts: sequence(
      ...built,
      run({ type: 'move-part', partId: 'p', to: { on: 'shelf' } }),
      run(torque()),
      run({ type: 'hand-tighten', jointId: 'j', bolts: 2 }),
      run(locker, 1),
      look,
    ),
  },
  {
    what: 'a part of the person that was on a bike of the demo',
    acts: sequence(
      ...built,
      run(start('demo-b')),
      run({ type: 'move-part', partId: 'p', to: { on: 'bike', bikeId: 'demo-b' } }),
      { act: 'remove-demo', tab: 1 },
      run({ type: 'describe-part', partId: 'p', name: 'Kept' }),
      run({ type: 'move-part', partId: 'p', to: { on: 'shelf' } }),
      { act: 'remove-demo', tab: 0 },
      run(torque(6), 1),
      look,
    ),
  },
  {
    what: 'a joint put together anew while the clock stood before its re-check was set',
    acts: sequence(
      ...built,
      run({ type: 'log-ride', bikeId: 'b', km: 3 }),
      run({
        ...{ type: 'correct', entryId: { from: [5, 1, 'id'] }, reason: 'not ridden' },
        becomes: null,
      }),
      { act: 'set-clock', byMs: -2 * DAY },
      run({ type: 'take-joint-apart', jointId: 'j', why: 'grease' }),
      run(torque()),
      run({ type: 'log-ride', bikeId: 'b', km: 5 }, 1),
      look,
    ),
  },
  {
    what: 'an entry struck out that was corrected while the clock stood ahead, and the correction of it too',
    acts: sequence(
      run(start('b')),
      run(add('p', 'b')),
      run({
        ...{ type: 'correct', entryId: { from: [2, 0, 'id'] }, reason: 'earlier' },
        becomes: { happenedAtMs: { from: [2, 0, 'happenedAtMs'], plus: -HOUR } },
      }),
      { act: 'set-clock', byMs: -2 * DAY },
      run({
        ...{ type: 'correct', entryId: { from: [2, 0, 'id'] }, reason: 'never there' },
        becomes: null,
      }),
      { act: 'set-clock', byMs: -2 * DAY },
      run(
        {
          ...{ type: 'correct', entryId: { from: [5, 0, 'id'] }, reason: 'it was' },
          becomes: null,
        },
        1,
      ),
      look,
    ),
  },
  {
    what: 'a joint struck out that has a mark of a seal',
    acts: sequence(
      ...built,
      run({ type: 'mark-seal', jointId: 'j', mark: { mark: 'laid-left' } }),
      run({ ...{ type: 'correct', entryId: { from: [4, 0, 'id'] }, reason: 'wrong' }, becomes: null }),
      look,
    ),
  },
];
