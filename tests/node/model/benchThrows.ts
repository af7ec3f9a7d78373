import type { Id } from '../../../src/journal/entries.ts';
import type { Written } from './acts.ts';
import type { Dice } from './dice.ts';
import { aBike, aJoint, HOUR, MINUTE, mm, nm, one, type Throw, taken, type World } from './world.ts';

export const startBike: Throw = ({ acts, dice }) => {
  const demo = dice.chance(0.25);
  return {
    type: 'start-bike',
    bikeId: demo ? `demo-b${acts}` : `b${acts}`,
    name: `Bike ${acts}`,
    ...(demo ? { demo: true } : {}),
  };
};

export const addPart: Throw = (world) => {
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

export const makeJoint: Throw = (world) => {
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

export const applyTorque: Throw = (world) => {
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

export const applyLocker: Throw = (world) => {
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

export const markSeal: Throw = (world) => {
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

export const findTorque: Throw = (world) => {
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
    ...(dice.chance(0.2) ? { between: 'threadlocker' } : {}),
    ...(dice.chance(0.1) ? { locker: lockerOn(dice) } : {}),
    ...(recheckId && dice.chance(0.7) ? { recheckId: taken(world, 'recheckId', recheckId) } : {}),
  };
};

export const movePart: Throw = (world) => {
  const [partId] = one(world, world.model.parts) ?? [];
  const bikeId = aBike(world);
  if (!partId) return undefined;
  const away = bikeId === undefined || world.dice.chance(0.5);
  const to = away ? { on: 'shelf' } : { on: 'bike', bikeId };
  return { type: 'move-part', partId, to, ...(world.dice.chance(0.3) ? { condition: 'worn' } : {}) };
};

export const changePart: Throw = (world) => {
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

export const describePart: Throw = (world) => {
  const [partId] = one(world, world.model.parts) ?? [];
  if (!partId) return undefined;
  return world.dice.chance(0.3)
    ? { type: 'describe-part', partId, cleared: ['condition'] }
    : { type: 'describe-part', partId, name: `Renamed ${world.acts}`, condition: 'as new' };
};

export const describeJoint: Throw = (world) => {
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
export const handTighten: Throw = (world) => {
  const [jointId, joint] = aJoint(world) ?? [];
  return jointId && joint ? { type: 'hand-tighten', jointId, bolts: Math.max(1, joint.bolts) } : undefined;
};

export const takeApart: Throw = (world) => {
  const [jointId] = aJoint(world) ?? [];
  return jointId ? { type: 'take-joint-apart', jointId, why: 'grease' } : undefined;
};
