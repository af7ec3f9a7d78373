import { describe, expect, test } from 'vitest';
import { aBike, nm } from '../logbook/aBike.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const DAY = 86_400_000;
type Opened = Awaited<ReturnType<typeof openTestLogbook>>;

async function tighten({ logbook, clock }: Opened, jointId: string, toolId: string) {
  clock.nowMs += 60_000;
  return done(logbook, {
    ...{ type: 'apply-torque', jointId, applied: nm(5), entered: 'tap', bolts: 2, passes: 1, toolId },
  });
}

/** Two bikes, two tools; the small one was checked before any of the work. */
async function aWorkshop() {
  const opened = await openTestLogbook();
  const { logbook, clock } = opened;
  const checkedAtMs = clock.nowMs - 30 * DAY;
  for (const toolId of ['small', 'large'])
    await done(logbook, { type: 'add-tool', toolId, name: `${toolId} wrench`, lastCheckMs: checkedAtMs });
  const one = await aBike(logbook, 'b1');
  const two = await aBike(logbook, 'b2');
  return { ...opened, one, two };
}

describe('a tool found to show wrong', () => {
  test('sends every joint it was the last on back to the bench, on every bike, and no other', async () => {
    const shop = await aWorkshop();
    const { logbook, one, two } = shop;
    const other = await aBike(logbook, 'b3');
    await tighten(shop, one.jointId, 'small');
    await tighten(shop, two.jointId, 'small');
    await tighten(shop, other.jointId, 'large');
    const entries = await done(logbook, { type: 'find-tool-out', toolId: 'small', why: 'clicks late' });
    expect(entries.map(({ type }) => type)).toEqual(['tool-found-out', 'recheck-set', 'recheck-set']);
    for (const { bikeId, jointId } of [one, two]) {
      const [recheck, ...more] = await logbook.read('rechecks', { bikeId });
      expect(more).toEqual([]);
      expect(recheck).toMatchObject({ jointId, kind: 'retorque', turn: 0, dueRides: 0 });
      expect(recheck?.dueAtMs).toBeLessThanOrEqual(shop.clock.nowMs);
      expect(recheck?.instruction).toContain('small wrench');
    }
    expect(await logbook.read('rechecks', { bikeId: 'b3' })).toEqual([]);
    logbook.close();
  });

  test('leaves alone what another tool did again since', async () => {
    const shop = await aWorkshop();
    await tighten(shop, shop.one.jointId, 'small');
    await tighten(shop, shop.one.jointId, 'large');
    await done(shop.logbook, { type: 'find-tool-out', toolId: 'small', why: 'clicks late' });
    expect(await shop.logbook.read('rechecks', { bikeId: 'b1' })).toEqual([]);
    shop.logbook.close();
  });

  test('leaves alone what it did before it was last known to show right', async () => {
    const shop = await aWorkshop();
    await tighten(shop, shop.one.jointId, 'small');
    shop.clock.nowMs += DAY;
    await done(shop.logbook, { type: 'describe-tool', toolId: 'small', lastCheckMs: shop.clock.nowMs });
    await tighten(shop, shop.two.jointId, 'small');
    await done(shop.logbook, { type: 'find-tool-out', toolId: 'small', why: 'fell from the bench' });
    expect(await shop.logbook.read('rechecks', { bikeId: 'b1' })).toEqual([]);
    expect(await shop.logbook.read('rechecks', { bikeId: 'b2' })).toHaveLength(1);
    shop.logbook.close();
  });

  test('[R3] a joint with threadlocker is looked at, never turned', async () => {
    const shop = await aWorkshop();
    const { jointId } = shop.one;
    await tighten(shop, jointId, 'small');
    await done(shop.logbook, {
      ...{ type: 'apply-locker', jointId, grade: 'medium', surface: 'steel', primer: false, waitMs: DAY },
    });
    await done(shop.logbook, { type: 'find-tool-out', toolId: 'small', why: 'clicks late' });
    const rechecks = await shop.logbook.read('rechecks', { bikeId: 'b1' });
    expect(rechecks.map(({ kind }) => kind)).toEqual(['look-at-mark']);
    shop.logbook.close();
  });

  test('stands on the tool, needs a reason, is said once, and is mended by a check', async () => {
    const shop = await aWorkshop();
    const { logbook, clock } = shop;
    const find = { type: 'find-tool-out' as const, toolId: 'small' };
    expect(await logbook.run({ ...find, why: ' ' })).toEqual({ refused: 'reason-missing' });
    expect(await logbook.run({ ...find, toolId: 'none', why: 'x' })).toEqual({ refused: 'no-such-tool' });
    await done(logbook, { ...find, why: 'clicks late' });
    expect(await logbook.run({ ...find, why: 'again' })).toEqual({ refused: 'nothing-changes' });
    const small = async () => (await logbook.read('tools', {})).find(({ toolId }) => toolId === 'small');
    expect((await small())?.foundOut).toEqual({ atMs: clock.nowMs, why: 'clicks late' });
    await tighten(shop, shop.one.jointId, 'small');
    const stateNow = async () =>
      (await logbook.read('bike', { bikeId: 'b1' }))?.joints[0]?.applied?.tool?.state;
    expect(await stateNow()).toBe('check-overdue');
    clock.nowMs += DAY;
    await done(logbook, { type: 'describe-tool', toolId: 'small', lastCheckMs: clock.nowMs });
    await tighten(shop, shop.one.jointId, 'small');
    expect(await stateNow()).toBe('checked');
    logbook.close();
  });
});
