import type { Entry, Id } from '../../../src/journal/entries.ts';
import { rideCheck } from '../../../src/standards/checks/rideCheck.ts';
import type { Act, From, Written } from './acts.ts';
import { thrownCorrection } from './corrections.ts';
import type { Dice } from './dice.ts';
import type { ModelAnswers } from './modelAnswers.ts';
import { field } from './reading.ts';

export const MINUTE = 60_000;
export const HOUR = 60 * MINUTE;
export const DAY = 24 * HOUR;

/** What a throw may build on. */
export interface World {
  model: ModelAnswers;
  given: ReadonlyMap<number, Entry[]>;
  dice: Dice;
  /** What the last act ran, for a second tap on the same thing. */
  last?: Written | undefined;
  /** How many acts there were; numbers what is new. */
  acts: number;
  /** Whether this logbook takes lists. */
  lists: boolean;
}

const nm = (value: number) => ({ value, unit: 'N.m', typed: String(value) });
const mm = (value: number) => ({ value, unit: 'mm', typed: String(value) });

/** A value of an entry, as what it is taken from; itself where no act gave it. */
export function taken({ given }: World, name: string, id: Id): From | Id {
  for (const [act, entries] of given) {
    const place = entries.findIndex((entry) => field(entry, name) === id);
    if (place >= 0) return { from: [act, place, name] };
  }
  return id;
}

type Throw = (world: World) => Written | undefined;

const one = <A>({ dice }: World, answers: Map<Id, A>, fits: (answer: A) => boolean = () => true) =>
  dice.pick([...answers].filter(([, answer]) => fits(answer)));

/** Mostly a joint that is not apart. */
const aJoint = (world: World) =>
  one(world, world.model.joints, ({ state }) => state !== 'apart' || world.dice.chance(0.15));
const aBike = (world: World) => world.dice.pick([...world.model.bikes.keys()]);

const startBike: Throw = ({ acts, dice }) => {
  const demo = dice.chance(0.25);
  return {
    type: 'start-bike',
    bikeId: demo ? `demo-b${acts}` : `b${acts}`,
    name: `Bike ${acts}`,
    ...(demo ? { demo: true } : {}),
  };
};

const addPart: Throw = (world) => {
  const bikeId = aBike(world);
  const shelf = bikeId === undefined || world.dice.chance(0.2);
  const partId = !shelf && bikeId.startsWith('demo-') ? `demo-p${world.acts}` : `p${world.acts}`;
  return {
    ...{ type: 'add-part', partId, label: partId, name: `Part ${partId}`, kind: 'other', origin: 'found' },
    place: shelf ? { on: 'shelf' } : { on: 'bike', bikeId },
  };
};

const partsOn = ({ model }: World, bikeId: Id) =>
  [...model.parts].flatMap(([id, { place }]) => (place.on === 'bike' && place.bikeId === bikeId ? [id] : []));

const makeJoint: Throw = (world) => {
  const { dice, acts } = world;
  const bikeId = aBike(world);
  if (bikeId === undefined) return undefined;
  const [first, second, shim] = dice.shuffled(partsOn(world, bikeId));
  if (!first || !second) return undefined;
  const kind = dice.weighed([
    ...([
      [5, 'stem-steerer'],
      [2, 'rack'],
      [1, 'rotor'],
      [1, 'bead'],
      [1, 'other'],
    ] as const),
  ]);
  const bolted = kind !== 'bead';
  return {
    ...{ type: 'make-joint', jointId: `j${acts}`, bikeId, name: `Joint ${acts}`, kind },
    partIds: [first, second],
    between: shim && dice.chance(0.4) ? [{ kind: 'shim', partId: shim }] : [{ kind: 'grease' }],
    fasteners: bolted ? [{ thread: 'M5', count: 2, hand: 'right' }] : [],
    targets: bolted ? [{ source: 'printed-on-the-part', torque: nm(5), partId: first }] : [],
  };
};

const applyTorque: Throw = (world) => {
  const { dice } = world;
  const [jointId, joint] = aJoint(world) ?? [];
  if (!jointId || !joint) return undefined;
  const [stepId] =
    one(world, world.model.steps, (step) => step.jointId === jointId && step.kind === 'torque') ?? [];
  return {
    ...{ type: 'apply-torque', jointId, applied: nm(3 + dice.below(5)), entered: 'tap', passes: 1 },
    bolts: dice.chance(0.08) ? Math.max(0, joint.bolts - 1) : Math.max(1, joint.bolts),
    ...(stepId && dice.chance(0.6) ? { stepId: taken(world, 'stepId', stepId) } : {}),
    ...(dice.chance(0.15) ? { note: 'click' } : {}),
    ...(dice.chance(0.15) ? { between: 'threadlocker' } : {}),
    ...(dice.chance(0.15) ? { between: 'threadlocker', locker: lockerOn(dice) } : {}),
  };
};

const lockerOn = (dice: Dice) => ({
  ...{ grade: 'medium', surface: 'steel', primer: false },
  waitMs: (1 + dice.below(24)) * HOUR,
});

const applyLocker: Throw = (world) => {
  const { dice, acts } = world;
  const waitId = dice.chance(0.5) ? { waitId: `w${acts}` } : {};
  const [stepId] =
    one(world, world.model.steps, ({ kind, state }) => kind === 'lock' && state === 'open') ?? [];
  if (stepId && dice.chance(0.5)) {
    const jointId = world.model.steps.get(stepId)?.jointId;
    const where = jointId === undefined ? {} : { jointId };
    return {
      type: 'apply-locker',
      ...waitId,
      ...where,
      stepId: taken(world, 'stepId', stepId),
      ...lockerOn(dice),
    };
  }
  const [jointId] = aJoint(world) ?? [];
  return jointId ? { type: 'apply-locker', ...waitId, jointId, ...lockerOn(dice) } : undefined;
};

const markSeal: Throw = (world) => {
  const [jointId] = aJoint(world) ?? [];
  if (!jointId) return undefined;
  const marks = [
    { mark: 'laid-left' },
    { mark: 'seated', dry: true, beadLine: 'even' },
    { mark: 'verdict', verdict: 'holds' },
    { mark: 'reading', reading: { pressure: { value: 2.5, unit: 'bar', typed: '2.5' } } },
    { mark: 'spun-and-shaken' },
  ];
  return {
    ...{ type: 'mark-seal', jointId, mark: world.dice.pick(marks) },
    ...(world.dice.chance(0.5) ? { lookAgainMs: (10 + world.dice.below(100)) * MINUTE } : {}),
  };
};

const findTorque: Throw = (world) => {
  const { dice, model } = world;
  const [jointId, joint] = aJoint(world) ?? [];
  if (!jointId || !joint) return undefined;
  const [recheckId] = one(world, model.rechecks, (one) => one.open && one.jointId === jointId) ?? [];
  const mark = joint.locked !== undefined ? dice.chance(0.8) : dice.chance(0.2);
  const moved = dice.chance(0.4);
  return {
    ...{ type: 'find-torque', jointId, way: mark ? 'mark' : 'tightening' },
    outcome: moved ? (mark ? 'turned' : 'moved') : 'held',
    ...(moved && !mark ? { movedAt: nm(3), ...(dice.chance(0.5) ? { broughtTo: nm(5) } : {}) } : {}),
    ...(recheckId && dice.chance(0.7) ? { recheckId: taken(world, 'recheckId', recheckId) } : {}),
  };
};

const movePart: Throw = (world) => {
  const [partId] = one(world, world.model.parts) ?? [];
  const bikeId = aBike(world);
  if (!partId) return undefined;
  const away = bikeId === undefined || world.dice.chance(0.5);
  const to = away ? { on: 'shelf' } : { on: 'bike', bikeId };
  return { type: 'move-part', partId, to, ...(world.dice.chance(0.3) ? { condition: 'worn' } : {}) };
};

const changePart: Throw = (world) => {
  const [partId] = one(world, world.model.parts) ?? [];
  if (!partId) return undefined;
  return {
    ...{
      type: 'change-part',
      partId,
      cut: 'file',
      where: 'slot',
      before: mm(9.5),
      after: mm(10),
      left: mm(6),
    },
    ...{ how: 'flat file', why: 'the axle is 10' },
    ...(world.dice.chance(0.5) ? { inspection: { everyKm: 20, everyDays: 3, words: 'cracks' } } : {}),
  };
};

const describePart: Throw = (world) => {
  const [partId] = one(world, world.model.parts) ?? [];
  if (!partId) return undefined;
  return world.dice.chance(0.3)
    ? { type: 'describe-part', partId, cleared: ['condition'] }
    : { type: 'describe-part', partId, name: `Renamed ${world.acts}`, condition: 'as new' };
};

const describeJoint: Throw = (world) => {
  const [jointId] = aJoint(world) ?? [];
  if (!jointId) return undefined;
  return world.dice.weighed<Written>([
    [2, { type: 'describe-joint', jointId, name: `Renamed ${world.acts}` }],
    [1, { type: 'describe-joint', jointId, note: `note ${world.acts}` }],
    [1, { type: 'describe-joint', jointId, matters: world.dice.chance(0.5) }],
    [
      1,
      {
        ...{ type: 'describe-joint', jointId },
        targets: [{ source: 'own-judgement', torque: nm(4 + world.dice.below(4)) }],
      },
    ],
    [1, { type: 'describe-joint', jointId, fasteners: [{ thread: 'M6', count: 1, hand: 'right' }] }],
  ]);
};

const addStep: Throw = (world) => {
  const bikeId = aBike(world);
  if (bikeId === undefined) return undefined;
  const [jointId] = one(world, world.model.joints, (joint) => joint.bikeId === bikeId) ?? [];
  const kind = world.dice.pick(jointId ? ['torque', 'check', 'lock'] : ['check', 'lock']);
  return {
    ...{ type: 'add-step', stepId: `s${world.acts}`, bikeId, kind, title: `Step ${world.acts}` },
    ...(jointId ? { jointId } : {}),
  };
};

const onStep =
  (type: 'finish-step' | 'skip-step' | 'reopen-step' | 'drop-step' | 'open-step' | 'split-step'): Throw =>
  (world) => {
    const [id] = one(world, world.model.steps, ({ state }) => state !== 'dropped') ?? [];
    if (!id) return undefined;
    const stepId = taken(world, 'stepId', id);
    if (type === 'split-step') return { type, stepId, titles: ['one', 'other'] };
    return type === 'finish-step' || type === 'open-step' ? { type, stepId } : { type, stepId, why: 'so' };
  };

const startWait: Throw = (world) => {
  const bikeId = aBike(world);
  if (bikeId === undefined) return undefined;
  const [jointId] = one(world, world.model.joints, (joint) => joint.bikeId === bikeId) ?? [];
  return {
    ...{ type: 'start-wait', bikeId, kind: 'adhesive', title: `Wait ${world.acts}` },
    ...(world.dice.chance(0.5) ? { waitId: `w${world.acts}` } : {}),
    ...{ waitMs: (5 + world.dice.below(3000)) * MINUTE, ...(jointId ? { jointId } : {}) },
  };
};

const onWait: Throw = (world) => {
  const running = world.dice.chance(0.85);
  const [id] = one(world, world.model.waits, (wait) => wait.running === running) ?? [];
  if (!id) return undefined;
  const waitId = taken(world, 'waitId', id);
  return world.dice.chance(0.5)
    ? { type: 'end-wait', waitId, outcome: 'looked' }
    : { type: 'change-wait', waitId, waitMs: (5 + world.dice.below(3000)) * MINUTE, why: 'colder' };
};

const findDefect: Throw = (world) => {
  const { dice } = world;
  const bikeId = aBike(world);
  if (bikeId === undefined) return undefined;
  const [jointId] = one(world, world.model.joints, (joint) => joint.bikeId === bikeId) ?? [];
  const limited = dice.chance(0.7);
  return {
    ...{ type: 'find-defect', bikeId, words: `defect ${world.acts}`, area: 'other' },
    ...(dice.chance(0.5) ? { defectId: `d${world.acts}` } : {}),
    ...(jointId && !limited ? { jointId } : {}),
    decision: limited ? 'ride-limited' : 'do-not-ride',
    ...(limited && dice.chance(0.8) ? { untilKm: 5 + dice.below(40) } : {}),
    ...(limited && dice.chance(0.5) ? { untilMs: { now: (1 + dice.below(48)) * HOUR } } : {}),
  };
};

const closeDefect: Throw = (world) => {
  const [id] = one(world, world.model.defects, ({ open }) => open || world.dice.chance(0.1)) ?? [];
  return id ? { type: 'close-defect', defectId: taken(world, 'defectId', id), how: 'mended' } : undefined;
};

const logRide: Throw = (world) => {
  const bikeId = aBike(world);
  if (bikeId === undefined) return undefined;
  return {
    ...{ type: 'log-ride', bikeId, km: 1 + world.dice.below(30) },
    ...(world.dice.chance(0.5) ? { minutes: 1 + world.dice.below(200) } : {}),
  };
};

const setRecheck: Throw = (world) => {
  const bikeId = aBike(world);
  if (bikeId === undefined) return undefined;
  const { dice } = world;
  return {
    ...{ type: 'set-recheck', bikeId, kind: 'inspect', title: `Look ${world.acts}`, instruction: 'look' },
    ...(dice.chance(0.5) ? { recheckId: `r${world.acts}` } : {}),
    ...(dice.chance(0.7) ? { dueRides: 1 + dice.below(3) } : { dueDays: 1 + dice.below(5) }),
    ...(dice.chance(0.5) ? { dueKm: 1 + dice.below(40) } : {}),
  };
};

const onRecheck: Throw = (world) => {
  const { dice } = world;
  const [id] = one(world, world.model.rechecks, ({ open }) => open || dice.chance(0.1)) ?? [];
  if (!id) return undefined;
  const recheckId = taken(world, 'recheckId', id);
  return dice.weighed<Written>([
    [3, { type: 'answer-recheck', recheckId, outcome: 'as-it-should' }],
    [1, { type: 'answer-recheck', recheckId, outcome: 'finding', words: 'loose' }],
    [2, { type: 'change-recheck', recheckId, dueRides: 1 + dice.below(4), why: 'sooner' }],
    [1, { type: 'change-recheck', recheckId, dueKm: 5 + dice.below(40), dueDays: 3, why: 'later' }],
    [1, { type: 'drop-recheck', recheckId, why: 'not needed' }],
  ]);
};

const confirmGroup: Throw = (world) => {
  const bikeId = aBike(world);
  const group = world.dice.pick(rideCheck);
  if (bikeId === undefined || !group) return undefined;
  const bad = world.dice.chance(0.2) ? world.dice.pick(group.items)?.id : undefined;
  const items = group.items.map(({ id }) =>
    id === bad ? { itemId: id, ok: false, words: 'bad' } : { itemId: id, ok: true },
  );
  return {
    ...{ type: 'confirm-ride-check', bikeId, groupId: group.id },
    items: world.dice.chance(0.1) ? items.slice(1) : items,
  };
};

const onBike: Throw = (world) => {
  const bikeId = aBike(world);
  if (bikeId === undefined) return undefined;
  return world.dice.weighed<Written>([
    [2, { type: 'plan-steps', bikeId }],
    [1, { type: 'describe-bike', bikeId, name: `Renamed ${world.acts}` }],
    [1, { type: 'put-bike-away', bikeId, why: 'winter' }],
    [1, { type: 'take-bike-out', bikeId }],
    [1, { type: 'withdraw-release', bikeId, why: 'rain' }],
    [2, { type: 'add-note', bikeId, words: `note ${world.acts}` }],
    [1, { type: 'release-bike', bikeId, statement: 'not-to-ride', covers: 'all', by: 'T' }],
    [1, { type: 'release-bike', bikeId, statement: 'ride', covers: 'all', by: 'T' }],
  ]);
};

const unknownThing: Throw = ({ dice }) =>
  dice.pick<Written>([
    { type: 'log-ride', bikeId: 'none', km: 3 },
    { type: 'hand-tighten', jointId: 'none', bolts: 2 },
    { type: 'end-wait', waitId: 'none', outcome: 'looked' },
    { type: 'finish-step', stepId: 'none' },
    { type: 'close-defect', defectId: 'none', how: 'x' },
    { type: 'move-part', partId: 'none', to: { on: 'shelf' } },
    { type: 'undo', entryIds: ['none'] },
    { type: 'correct', entryId: 'none', reason: 'x', becomes: null },
  ]);

const handTighten: Throw = (world) => {
  const [jointId, joint] = aJoint(world) ?? [];
  return jointId && joint ? { type: 'hand-tighten', jointId, bolts: Math.max(1, joint.bolts) } : undefined;
};

const takeApart: Throw = (world) => {
  const [jointId] = aJoint(world) ?? [];
  return jointId ? { type: 'take-joint-apart', jointId, why: 'grease' } : undefined;
};

const addNote: Throw = (world) => {
  const bikeId = aBike(world);
  return bikeId === undefined ? undefined : { type: 'add-note', bikeId, words: `note ${world.acts}` };
};

const kinds: readonly (readonly [number, Throw])[] = [
  [1, startBike],
  [5, addPart],
  [5, makeJoint],
  [9, applyTorque],
  [4, handTighten],
  [4, applyLocker],
  [2, markSeal],
  [5, findTorque],
  [3, takeApart],
  [5, movePart],
  [2, changePart],
  [2, describePart],
  [4, describeJoint],
  [3, addStep],
  [3, onStep('finish-step')],
  [2, onStep('skip-step')],
  [2, onStep('reopen-step')],
  [1, onStep('drop-step')],
  [1, onStep('open-step')],
  [1, onStep('split-step')],
  [3, startWait],
  [3, onWait],
  [4, findDefect],
  [2, closeDefect],
  [8, logRide],
  [3, setRecheck],
  [4, onRecheck],
  [3, confirmGroup],
  [5, onBike],
  [1, unknownThing],
  [14, thrownCorrection],
];

/** One command that fits the world more or less; now and then the last one again, or written down late. */
export function thrownCommand(world: World): Written {
  const { dice, last } = world;
  if (last && dice.chance(0.04)) return last;
  const written =
    dice.weighed(kinds)(world) ?? dice.weighed(kinds)(world) ?? addNote(world) ?? startBike(world);
  if (!written) throw new RangeError('a bike can always be started');
  const late = !['undo', 'correct', 'shift-waits'].includes(written.type) && dice.chance(0.12);
  return late ? { ...written, happenedAtMs: { now: -(1 + dice.below(72)) * 20 * MINUTE } } : written;
}

/** Everything a release of a bike asks for, and the release. */
export function thrownRelease(world: World, bikeId: Id): Written[] {
  const loose = [...world.model.joints].filter(
    ([, joint]) => joint.bikeId === bikeId && joint.state !== 'torqued' && joint.bolts > 0,
  );
  const stops = [...world.model.defects].filter(([, defect]) => defect.bikeId === bikeId && defect.open);
  return [
    ...loose.map(
      ([jointId, { bolts }]): Written => ({
        ...{ type: 'apply-torque', jointId, applied: nm(5), entered: 'tap', bolts, passes: 1 },
      }),
    ),
    ...stops.map(
      ([id]): Written => ({
        ...{ type: 'close-defect', defectId: taken(world, 'defectId', id), how: 'mended' },
      }),
    ),
    ...rideCheck.map(
      (group): Written => ({
        ...{ type: 'confirm-ride-check', bikeId, groupId: group.id },
        items: group.items.map(({ id }) => ({ itemId: id, ok: true })),
      }),
    ),
    { type: 'release-bike', bikeId, statement: 'ride', covers: 'all', by: 'T' },
  ];
}

const tabOf = (dice: Dice): 0 | 1 => (dice.chance(0.5) ? 0 : 1);

/** How long nothing happens before an act. */
function pause(dice: Dice): number {
  return dice.weighed([
    [2, 0],
    [1, 400],
    [1, 1499],
    [1, 1500],
    [6, 5000],
    [6, MINUTE * (1 + dice.below(60))],
    [3, HOUR * (1 + dice.below(30))],
    [1, DAY * (1 + dice.below(20))],
  ]);
}

type Undated = Act extends infer One ? (One extends Act ? Omit<One, 'no' | 'afterMs'> : never) : never;

/** A bike to begin with: three parts, a joint that matters and one that does not. */
function firstBike(bikeId: Id, from: number): Written[] {
  const partIds = [0, 1, 2].map((at) => `${bikeId.startsWith('demo-') ? 'demo-p' : 'p'}${from}${at}`);
  const [first = '', second = '', third = ''] = partIds;
  const joint = (jointId: Id, kind: string, ids: Id[], shim?: Id): Written => ({
    ...{ type: 'make-joint', jointId, bikeId, name: `Joint ${jointId}`, kind, partIds: ids },
    between: shim ? [{ kind: 'shim', partId: shim }] : [],
    fasteners: [{ thread: 'M5', count: 2, hand: 'right' }],
    targets: [{ source: 'printed-on-the-part', torque: nm(5), partId: ids[0] }],
  });
  return [
    {
      type: 'start-bike',
      bikeId,
      name: `Bike ${bikeId}`,
      ...(bikeId.startsWith('demo-') ? { demo: true } : {}),
    },
    ...partIds.map(
      (partId): Written => ({
        ...{
          type: 'add-part',
          partId,
          label: partId,
          name: `Part ${partId}`,
          kind: 'other',
          origin: 'found',
        },
        place: { on: 'bike', bikeId },
      }),
    ),
    joint(`j${from}0`, 'stem-steerer', [first, second], third),
    joint(`j${from}1`, 'rack', [second, third]),
  ];
}

/** The next acts of a sequence: mostly one command from one tab. */
export function thrownActs(world: World): Act[] {
  const { dice, acts } = world;
  let no = acts;
  const dated = (one: Undated, afterMs = pause(dice)): Act => {
    no += 1;
    return { ...one, no, afterMs } as Act;
  };
  const run = (command: Written, afterMs?: number) =>
    dated({ act: 'run', tab: tabOf(dice), command }, afterMs);
  if (acts === 0) return firstBike(dice.chance(0.2) ? 'demo-b0' : 'b0', 9).map((one) => run(one, 5000));
  return dice.weighed<() => Act[]>([
    [70, () => [run(thrownCommand(world))]],
    [
      9,
      () => {
        const raced = Array.from({ length: 2 + dice.below(3) }, (_one, at) => ({
          tab: tabOf(dice),
          command: thrownCommand({ ...world, acts: (acts + 1) * 10 + at }),
        }));
        if (dice.chance(0.3) && raced[0]) raced.push({ ...raced[0], tab: raced[0].tab === 0 ? 1 : 0 });
        const rebuild = dice.chance(0.1) ? ({ rebuild: true } as const) : {};
        const claims = dice.chance(0.4) ? ({ claims: true } as const) : {};
        return [dated({ act: 'race', commands: raced, ...rebuild, ...claims })];
      },
    ],
    [
      world.lists ? 5 : 0,
      () => {
        const commands = Array.from({ length: 2 + dice.below(2) }, (_one, at) =>
          thrownCommand({ ...world, acts: (acts + 1) * 10 + at }),
        );
        const list = dated({ act: 'list', tab: tabOf(dice), commands });
        return dice.chance(0.8) ? [list] : [list, dated({ act: 'list', tab: tabOf(dice), commands }, 400)];
      },
    ],
    [
      4,
      () => {
        const bikeId = aBike(world);
        if (bikeId === undefined) return [run(thrownCommand(world))];
        return thrownRelease(world, bikeId).map((command) => run(command, 2000));
      },
    ],
    [
      4,
      () => {
        const byMs = dice.pick([HOUR, -HOUR, 2 * DAY, -2 * DAY, 40 * MINUTE, -5000]) ?? HOUR;
        const command: Written = { type: 'shift-waits', byMs, changeId: `c${acts}` };
        const set = dated({ act: 'set-clock', byMs }, 0);
        if (dice.chance(0.3)) return [set];
        if (dice.chance(0.3)) {
          const both = ([0, 1] as const).map((tab) => ({ tab, command }));
          return [set, dated({ act: 'race', commands: both }, 0)];
        }
        return [set, run(command, 3000)];
      },
    ],
    [
      2,
      () => [
        dated({
          act: 'claim',
          who: dice.pick(['first-tab', 'second-tab', 'worker', 'all'] as const) ?? 'all',
        }),
      ],
    ],
    [1, () => [dated({ act: 'remove-demo', tab: tabOf(dice) })]],
    [1, () => [dated({ act: 'rebuild', pages: dice.chance(0.5) ? 1 : 2 })]],
    [1, () => [dated({ act: 'open-again', tab: tabOf(dice) })]],
    [3, () => [dated({ act: 'look' })]],
  ])();
}
