import { rideCheck } from '../../../src/standards/checks/rideCheck.ts';
import type { Written } from './acts.ts';
import { aBike, HOUR, MINUTE, one, type Throw, taken } from './world.ts';

export const addStep: Throw = (world) => {
  const bikeId = aBike(world);
  if (bikeId === undefined) return undefined;
  const [jointId] = one(world, world.model.joints, (joint) => joint.bikeId === bikeId) ?? [];
  const kind = world.dice.pick(jointId ? ['torque', 'check', 'lock'] : ['check', 'lock']);
  return {
    ...{ type: 'add-step', stepId: `s${world.acts}`, bikeId, kind, title: `Step ${world.acts}` },
    ...(jointId ? { jointId } : {}),
  };
};

export const onStep =
  (type: 'finish-step' | 'skip-step' | 'reopen-step' | 'drop-step' | 'open-step' | 'split-step'): Throw =>
  (world) => {
    const [id] = one(world, world.model.steps, ({ state }) => state !== 'dropped') ?? [];
    if (!id) return undefined;
    const stepId = taken(world, 'stepId', id);
    if (type === 'split-step') return { type, stepId, titles: ['one', 'other'] };
    return type === 'finish-step' || type === 'open-step' ? { type, stepId } : { type, stepId, why: 'so' };
  };

export const startWait: Throw = (world) => {
  const bikeId = aBike(world);
  if (bikeId === undefined) return undefined;
  const [jointId] = one(world, world.model.joints, (joint) => joint.bikeId === bikeId) ?? [];
  return {
    ...{ type: 'start-wait', bikeId, kind: 'adhesive', title: `Wait ${world.acts}` },
    ...(world.dice.chance(0.5) ? { waitId: `w${world.acts}` } : {}),
    ...{ waitMs: (5 + world.dice.below(3000)) * MINUTE, ...(jointId ? { jointId } : {}) },
  };
};

export const onWait: Throw = (world) => {
  const running = world.dice.chance(0.85);
  const [id] = one(world, world.model.waits, (wait) => wait.running === running) ?? [];
  if (!id) return undefined;
  const waitId = taken(world, 'waitId', id);
  return world.dice.chance(0.5)
    ? { type: 'end-wait', waitId, outcome: 'looked' }
    : { type: 'change-wait', waitId, waitMs: (5 + world.dice.below(3000)) * MINUTE, why: 'colder' };
};

export const findDefect: Throw = (world) => {
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

export const closeDefect: Throw = (world) => {
  const [id] = one(world, world.model.defects, ({ open }) => open || world.dice.chance(0.1)) ?? [];
  return id ? { type: 'close-defect', defectId: taken(world, 'defectId', id), how: 'mended' } : undefined;
};

export const logRide: Throw = (world) => {
  const bikeId = aBike(world);
  if (bikeId === undefined) return undefined;
  return {
    ...{ type: 'log-ride', bikeId, km: 1 + world.dice.below(30) },
    ...(world.dice.chance(0.5) ? { minutes: 1 + world.dice.below(200) } : {}),
  };
};

export const setRecheck: Throw = (world) => {
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

export const onRecheck: Throw = (world) => {
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

export const confirmGroup: Throw = (world) => {
  const bikeId = aBike(world);
  const group = world.dice.pick(rideCheck);
  if (bikeId === undefined || !group) return undefined;
  const bad = world.dice.chance(0.2) ? world.dice.pick(group.items)?.id : undefined;
  // A rack is what a bike may lack, a drop is what is done.
  const lacking = world.dice.chance(0.3) ? ['rack-and-guards'] : world.dice.chance(0.05) ? ['drop'] : [];
  const items = group.items.map(({ id }) =>
    lacking.includes(id)
      ? { itemId: id, ok: false, absent: true }
      : id === bad
        ? { itemId: id, ok: false, words: 'bad' }
        : { itemId: id, ok: true },
  );
  return {
    ...{ type: 'confirm-ride-check', bikeId, groupId: group.id },
    items: world.dice.chance(0.1) ? items.slice(1) : items,
  };
};

export const onBike: Throw = (world) => {
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
export const addNote: Throw = (world) => {
  const bikeId = aBike(world);
  return bikeId === undefined ? undefined : { type: 'add-note', bikeId, words: `note ${world.acts}` };
};
