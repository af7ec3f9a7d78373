import { expect, test } from 'vitest';
import type { CommandOf } from '../../../src/journal/commands.ts';
import type { WheelPart } from '../../../src/journal/entries.ts';
import type { Logbook } from '../../../src/logbook.ts';
import { aBike, nm } from '../logbook/aBike.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

/** A hub and a rim of the demo, and a hub and a rim of one's own, all on the shelf. */
async function aShelf() {
  const opened = await openTestLogbook();
  for (const [partId, kind] of [
    ['demo-hub', 'rear-hub'],
    ['demo-rim', 'rim'],
    ['hub', 'rear-hub'],
    ['rim', 'rim'],
  ] as const)
    await done(opened.logbook, {
      ...{ type: 'add-part', partId, place: { on: 'shelf' }, label: '', name: partId, kind },
      origin: 'bought-new',
    });
  return opened;
}

const wheelOf = (hub: string, rim: string): CommandOf<'make-wheel'> => ({
  ...{ type: 'make-wheel', wheelId: 'w1', name: 'Rear', drilling: 'even', head: 'elbow', firstSide: 'left' },
  leftSide: { spokes: 18, crosses: 3 },
  driveSide: { spokes: 18, crosses: 3 },
  parts: made(hub, rim),
});
const made = (hub: string, rim: string): WheelPart[] => [
  { as: 'hub', partId: hub },
  { as: 'rim', partId: rim },
];

const removed = { removed: expect.any(Number) };
/** Rows are as the journal says, and no line is missing. */
async function expectWhole(logbook: Logbook) {
  const { gaps: _gaps, ...found } = await logbook.check();
  expect(found).toMatchObject({ noEntry: [], rows: [], places: [], photosMissing: [] });
  expect(found).not.toHaveProperty('unfoldable');
}

test('a wheel with a hub of the demo and a rim of one’s own keeps the demo, until it has a hub of one’s own', async () => {
  const { logbook } = await aShelf();
  await done(logbook, wheelOf('demo-hub', 'rim'));
  expect(await logbook.removeDemo()).toEqual({ inUseBy: ['Rear'] });
  await done(logbook, { type: 'describe-wheel', wheelId: 'w1', parts: made('hub', 'rim') });
  expect(await logbook.removeDemo()).toEqual(removed);
  expect((await logbook.read('wheels', {})).map(({ parts }) => parts)).toEqual([made('hub', 'rim')]);
  await expectWhole(logbook);
});

test('a wheel that was taken apart does not keep the demo; what was written of it stays', async () => {
  const { logbook } = await aShelf();
  await done(logbook, wheelOf('demo-hub', 'rim'));
  await done(logbook, { type: 'take-wheel-apart', wheelId: 'w1', why: 'rim bent' });
  expect(await logbook.removeDemo()).toEqual(removed);
  expect((await logbook.read('wheel', { wheelId: 'w1' }))?.wheel.apart).toBe('rim bent');
  await expectWhole(logbook);
});

test('a wheel that ends up of parts of the demo alone goes with it, first lines and all', async () => {
  const { logbook } = await aShelf();
  await done(logbook, wheelOf('hub', 'rim'));
  await done(logbook, { type: 'describe-wheel', wheelId: 'w1', parts: made('demo-hub', 'demo-rim') });
  expect(await logbook.removeDemo()).toEqual(removed);
  expect(await logbook.read('wheels', {})).toEqual([]);
  await expectWhole(logbook);
});

test('a joint on a bike of one’s own with a part of the demo keeps the demo, until that part is taken off', async () => {
  const { logbook } = await aShelf();
  const { jointId, partIds } = await aBike(logbook);
  const onBike = { on: 'bike', bikeId: 'b1' } as const;
  await done(logbook, { type: 'move-part', partId: 'demo-rim', to: onBike });
  await done(logbook, { type: 'describe-joint', jointId, partIds: [partIds[0], 'demo-rim'] });
  expect(await logbook.removeDemo()).toEqual({ inUseBy: ['Bike b1'] });
  await done(logbook, { type: 'move-part', partId: 'demo-rim', to: { on: 'shelf' } });
  expect(await logbook.removeDemo()).toEqual(removed);
  await logbook.sortAnew(() => {});
  expect((await logbook.read('joint', { jointId }))?.joint.state).toBe('apart');
  await done(logbook, { type: 'describe-joint', jointId, partIds });
  expect((await logbook.read('joint', { jointId }))?.joint.partIds).toEqual(partIds);
  await expectWhole(logbook);
});

test('what was tightened on a bike of one’s own with a wrench of the demo stays, and so does its correction', async () => {
  const { logbook } = await aShelf();
  const { jointId } = await aBike(logbook);
  await done(logbook, { type: 'add-tool', toolId: 'demo-wrench', name: 'wrench', minNm: 2, maxNm: 24 });
  const [tightened] = await done(logbook, {
    ...{ type: 'apply-torque', jointId, entered: 'keypad', bolts: 2, passes: 2, toolId: 'demo-wrench' },
    applied: nm(5),
  });
  const becomes = { applied: nm(4) };
  await done(logbook, { type: 'correct', entryId: tightened?.id ?? '', reason: 'read wrong', becomes });
  expect(await logbook.removeDemo()).toEqual(removed);
  expect((await logbook.read('joint', { jointId }))?.joint.applied?.applied.value).toBe(4);
  await expectWhole(logbook);
});
