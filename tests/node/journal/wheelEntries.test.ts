import { describe, expect, test } from 'vitest';
import type { Command, CommandOf } from '../../../src/journal/commands.ts';
import type { LengthUnit, Typed } from '../../../src/mechanics/units.ts';
import { aBike } from '../logbook/aBike.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const mm = (typed: string): Typed<LengthUnit> => ({ value: Number(typed), unit: 'mm', typed });

const rear: Omit<CommandOf<'make-wheel'>, 'parts'> = {
  type: 'make-wheel',
  wheelId: 'w1',
  name: 'Rear, 20 inch',
  position: 'rear',
  drilling: 'even',
  head: 'elbow',
  leftSide: { spokes: 18, crosses: 3, pcd: mm('45'), flange: mm('34') },
  driveSide: { spokes: 18, crosses: 3, pcd: mm('45'), flange: mm('20') },
  firstSide: 'left',
  erds: [mm('384')],
};

const noneRead = Array.from({ length: 36 }, () => null);
const oneSet: Omit<CommandOf<'read-wheel'>, 'tensionsN'> = {
  type: 'read-wheel',
  wheelId: 'w1',
  moment: 'before',
  tyre: 'off',
  readIn: 'N',
  read: noneRead.map((_, at) => 500 + at),
};
const tensionsN = oneSet.read;

/** A bike with a hub, a rim and their spokes on it, laced to one wheel, and a second bike. */
async function aBikeWithWheel() {
  const opened = await openTestLogbook();
  const { logbook } = opened;
  await aBike(logbook, 'b1');
  await aBike(logbook, 'b2');
  for (const [partId, kind] of [
    ['hub', 'rear-hub'],
    ['rim', 'rim'],
    ['spokes', 'spoke-set'],
  ] as const)
    await done(logbook, {
      ...{ type: 'add-part', partId, place: { on: 'bike', bikeId: 'b1' }, label: '', name: partId, kind },
      origin: 'bought-new',
    });
  const parts = [
    { as: 'spokes', partId: 'spokes' },
    { as: 'hub', partId: 'hub' },
    { as: 'rim', partId: 'rim' },
  ] as const;
  const made = await done(logbook, { ...rear, parts: [...parts] });
  return { ...opened, parts: [...parts], made };
}

const wheelOf = async ({ logbook }: Pick<Awaited<ReturnType<typeof openTestLogbook>>, 'logbook'>) =>
  (await logbook.read('wheel', { wheelId: 'w1' }))?.wheel;

describe('a wheel', () => {
  test('stands in the history of its bike and of each of its parts, and knows the bike its hub is on', async () => {
    const shop = await aBikeWithWheel();
    const seen = await shop.logbook.read('wheel', { wheelId: 'w1' });
    expect(seen?.bike?.bikeId).toBe('b1');
    expect(seen?.parts.map(({ partId }) => partId).sort()).toEqual(['hub', 'rim', 'spokes']);
    for (const place of ['b:b1', 'p:hub', 'p:rim', 'p:spokes']) {
      const { lines } = await shop.logbook.read('history', { place, limit: 50 });
      expect(
        lines.map(({ entry }) => entry.type),
        place,
      ).toContain('wheel-made');
    }
    shop.logbook.close();
  });

  test('is described, corrected and undone as any other thing', async () => {
    const shop = await aBikeWithWheel();
    const { logbook, clock } = shop;
    const [described] = await done(logbook, { type: 'describe-wheel', wheelId: 'w1', hubHole: mm('2.6') });
    expect((await wheelOf(shop))?.hubHole?.value).toBe(2.6);
    await done(logbook, {
      ...{ type: 'correct', entryId: described?.id ?? '', reason: 'misread' },
      becomes: { hubHole: mm('2.4') },
    });
    expect((await wheelOf(shop))?.hubHole?.value).toBe(2.4);
    clock.nowMs += 2000;
    await done(logbook, { type: 'describe-wheel', wheelId: 'w1', cleared: ['hubHole'] });
    expect((await wheelOf(shop))?.hubHole).toBeUndefined();
    clock.nowMs += 2000;
    const [read] = await done(logbook, { ...oneSet, tensionsN });
    expect((await wheelOf(shop))?.readings).toHaveLength(1);
    await done(logbook, { type: 'undo', entryIds: [read?.id ?? ''] });
    expect((await wheelOf(shop))?.readings).toEqual([]);
    logbook.close();
  });

  test('keeps every set of readings in the order it was taken, also one written down late', async () => {
    const shop = await aBikeWithWheel();
    const { logbook, clock } = shop;
    clock.nowMs += 5000;
    await done(logbook, { ...oneSet, tensionsN, moment: 'after' });
    await done(logbook, { ...oneSet, tensionsN, happenedAtMs: clock.nowMs - 3000 });
    expect((await wheelOf(shop))?.readings.map(({ moment }) => moment)).toEqual(['before', 'after']);
    logbook.close();
  });

  test('moves to another bike with all its parts in one transaction, and a joint between two of them ends once', async () => {
    const shop = await aBikeWithWheel();
    const { logbook } = shop;
    await done(logbook, {
      ...{ type: 'make-joint', jointId: 'j-spokes', bikeId: 'b1', name: 'Rear spokes', kind: 'spokes' },
      ...{ partIds: ['hub', 'rim'], between: [], fasteners: [], targets: [] },
    });
    const entries = await done(logbook, {
      type: 'move-wheel',
      wheelId: 'w1',
      to: { on: 'bike', bikeId: 'b2' },
    });
    const types = entries.map(({ type }) => type);
    expect(types.filter((type) => type === 'part-moved')).toHaveLength(3);
    expect(types.filter((type) => type === 'joint-taken-apart')).toHaveLength(1);
    const seen = await logbook.read('wheel', { wheelId: 'w1' });
    expect(seen?.bike?.bikeId).toBe('b2');
    const again = await logbook.run({ type: 'move-wheel', wheelId: 'w1', to: { on: 'bike', bikeId: 'b2' } });
    expect(again).toMatchObject({ refused: 'same-place' });
    logbook.close();
  });

  test('taken apart it is on no list, takes no reading, and its hub may go into another', async () => {
    const shop = await aBikeWithWheel();
    const { logbook, clock, parts } = shop;
    const second = { ...rear, wheelId: 'w2', name: 'Another', parts };
    expect(await logbook.run(second)).toMatchObject({ refused: 'part-in-other-wheel', about: rear.name });
    await done(logbook, { type: 'take-wheel-apart', wheelId: 'w1', why: 'the rim cracked' });
    expect(await logbook.read('wheels', {})).toEqual([]);
    expect(await logbook.run({ ...oneSet, tensionsN })).toMatchObject({ refused: 'no-such-wheel' });
    clock.nowMs += 2000;
    await done(logbook, second);
    expect((await logbook.read('wheels', {})).map(({ wheelId }) => wheelId)).toEqual(['w2']);
    logbook.close();
  });

  test('[H7] what took a hub out of its wheel is not struck out while another wheel has that hub', async () => {
    for (const freeing of [
      { type: 'take-wheel-apart', wheelId: 'w1', why: 'the rim cracked' },
      { type: 'describe-wheel', wheelId: 'w1', parts: [] },
    ] satisfies Command[]) {
      const shop = await aBikeWithWheel();
      const { logbook, clock, parts } = shop;
      const [freed] = await done(logbook, freeing);
      clock.nowMs += 2000;
      const [second] = await done(logbook, { ...rear, wheelId: 'w2', name: 'Another', parts });
      const strike = {
        type: 'correct',
        entryId: freed?.id ?? '',
        reason: 'not done',
        becomes: null,
      } as const;
      const undo = { type: 'undo' as const, entryIds: [freed?.id ?? ''] };
      for (const back of [strike, undo])
        expect(await logbook.run(back)).toMatchObject({ refused: 'part-in-other-wheel', about: 'Another' });
      clock.nowMs += 2000;
      const [gone] = await done(logbook, { type: 'undo', entryIds: [second?.id ?? ''] });
      clock.nowMs += 2000;
      await done(logbook, strike);
      clock.nowMs += 2000;
      const again = { type: 'undo' as const, entryIds: [gone?.id ?? ''] };
      expect(await logbook.run(again)).toMatchObject({ refused: 'part-in-other-wheel', about: rear.name });
      expect((await wheelOf(shop))?.parts.map(({ partId }) => partId)).toEqual(['spokes', 'hub', 'rim']);
      logbook.close();
    }
  });

  test('[L2] taken apart on a bike it revokes the release', async () => {
    const shop = await aBikeWithWheel();
    const [apart] = await done(shop.logbook, {
      type: 'take-wheel-apart',
      wheelId: 'w1',
      why: 'to relace it',
    });
    expect(apart).toMatchObject({ bikeId: 'b1', matters: true });
    shop.logbook.close();
  });

  test.each([
    [{ driveSide: { spokes: 16, crosses: 3 } }, 'spokes-do-not-divide'],
    [{ drilling: 'two-to-one' as const }, 'spokes-do-not-divide'],
    [{ leftSide: { ...rear.leftSide, crosses: 6 } }, 'crossing-impossible'],
    [{ erds: [mm('60')] }, 'rim-smaller-than-hub'],
    [{ target: { value: 0, unit: 'N' as const, typed: '0' } }, 'not-positive'],
  ])('that cannot be is refused by name: %j', async (change, refused) => {
    const { logbook, clock } = await aBikeWithWheel();
    clock.nowMs += 2000;
    expect(await logbook.run({ ...rear, wheelId: 'w9', parts: [], ...change })).toMatchObject({ refused });
    expect(await logbook.run({ type: 'describe-wheel', wheelId: 'w1', ...change })).toMatchObject({
      refused,
    });
    logbook.close();
  });

  test('readings that do not count its spokes are refused', async () => {
    const { logbook } = await aBikeWithWheel();
    const short = { ...oneSet, read: [500], tensionsN: [500] };
    expect(await logbook.run(short)).toMatchObject({ refused: 'readings-miscounted' });
    expect(await logbook.run({ ...oneSet, tensionsN, sidewaysMm: [0.1] })).toMatchObject({
      refused: 'readings-miscounted',
    });
    expect(await logbook.run({ ...oneSet, tensionsN: tensionsN.map(() => Number.NaN) })).toMatchObject({
      refused: 'not-a-number',
    });
    logbook.close();
  });
});
