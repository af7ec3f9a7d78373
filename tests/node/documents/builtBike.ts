import { rideCheck } from '../../../src/standards/checks/rideCheck.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';
import { typed } from '../words/history/everyEntry.ts';

export const NINE = Date.UTC(2026, 4, 3, 9);
const HOUR_MS = 3_600_000;

/** An invented bike built, cut, ridden, released with something open, and read back as built. */
export async function builtBike() {
  const { logbook, clock } = await openTestLogbook(NINE);
  const bikeId = 'b1';
  const place = { on: 'bike' as const, bikeId };
  const part = { type: 'add-part', place, origin: 'bought-used' } as const;
  await done(logbook, { type: 'change-settings', change: { doer: 'the builder' } });
  await done(logbook, { type: 'start-bike', bikeId, name: 'Magpie', about: 'a track frame for town' });
  await done(logbook, {
    ...part,
    partId: 'p1',
    label: 'P-001',
    name: 'Frame',
    kind: 'frame',
    serial: '4711',
    kmBefore: 'unknown',
  });
  await done(logbook, { ...part, partId: 'p2', label: 'P-002', name: 'Stem', kind: 'stem', kmBefore: 1200 });
  await done(logbook, { type: 'add-tool', toolId: 't1', name: 'small wrench', minNm: 2, maxNm: 24 });
  await done(logbook, {
    type: 'make-joint',
    jointId: 'j1',
    bikeId,
    name: 'Stem on steerer',
    kind: 'stem-steerer',
    partIds: ['p1', 'p2'],
    between: [{ kind: 'assembly-paste' }],
    fasteners: [{ thread: 'M5', count: 2, hand: 'right' }],
    targets: [
      { source: 'printed-on-the-part', torque: typed('5', 'N.m'), partId: 'p2', reference: 'face plate' },
    ],
  });
  await done(logbook, {
    type: 'change-part',
    partId: 'p1',
    cut: 'cold-set',
    where: 'rear ends',
    before: typed('120', 'mm'),
    after: typed('130', 'mm'),
    how: 'threaded rod',
    why: 'a wider hub',
    inspection: { everyDays: 30, words: 'look at the bridge' },
  });
  clock.nowMs += HOUR_MS;
  await done(logbook, {
    type: 'apply-torque',
    jointId: 'j1',
    applied: typed('5,2', 'N.m'),
    entered: 'keypad',
    bolts: 2,
    passes: 2,
    toolId: 't1',
  });
  await done(logbook, { type: 'log-ride', bikeId, km: 8, minutes: 30 });
  for (const { id: groupId, items } of rideCheck) {
    const answers = items.map(({ id, neverDefer }, at) => ({
      itemId: id,
      ok: !(groupId === 'cranks' && !neverDefer && at === 1),
      words: 'a little play',
    }));
    await done(logbook, { type: 'confirm-ride-check', bikeId, groupId, items: answers });
  }
  clock.nowMs += HOUR_MS;
  await done(logbook, {
    type: 'release-bike',
    bikeId,
    statement: 'first-ride',
    covers: 'the whole build',
    by: 'the builder',
  });
  clock.nowMs += HOUR_MS;
  await done(logbook, { type: 'log-ride', bikeId, km: 4, minutes: 20 });
  const asBuilt = (atMs: number) => logbook.read('as-built', { bikeId, atMs });
  return { logbook, clock, asBuilt };
}

export const circumstances = {
  zone: 'UTC',
  names: { bike: () => undefined, part: () => undefined, joint: () => undefined },
};
