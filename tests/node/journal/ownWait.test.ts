import { describe, expect, test } from 'vitest';
import { sheetLines } from '../../../src/documents/sheetLines.ts';
import { lockerOn } from '../../../src/practice/bench/lockerCommand.ts';
import { circumstances } from '../documents/builtBike.ts';
import { aBike, nm } from '../logbook/aBike.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const DAY_MS = 86_400_000;
const HOUR_MS = 3_600_000;
const locker = { grade: 'medium', surface: 'anodised', primer: false, waitMs: 33 * DAY_MS };
const own = { waitMs: 2 * DAY_MS, why: 'Kept warm' };

describe('[T11] a wait the person sets in place of one that is too long', () => {
  const cold = { grade: 'medium', surface: 'anodised', primer: false, temperatureC: 8 } as const;

  test('goes with its reason, and not without it', () => {
    expect(lockerOn({ ...cold, ownWaitH: 48, ownWhy: ' Kept warm ' }, undefined)?.own).toEqual(own);
    expect(lockerOn({ ...cold, ownWaitH: 48 }, undefined)).toBeUndefined();
    expect(lockerOn({ ...cold, ownWaitH: 48, ownWhy: ' ' }, undefined)).toBeUndefined();
    expect(lockerOn(cold, undefined)?.own).toBeUndefined();
    // Where a day will do, nothing is set.
    const quick = lockerOn(
      { ...cold, surface: 'steel', temperatureC: 22, ownWaitH: 48, ownWhy: 'x' },
      undefined,
    );
    expect(quick).toMatchObject({ waitMs: 24 * HOUR_MS });
    expect(quick?.own).toBeUndefined();
  });

  test.each(['apply-locker', 'apply-torque'] as const)(
    'counts with %s; the one reckoned and the reason stay',
    async (way) => {
      const { logbook, clock } = await openTestLogbook();
      const { jointId } = await aBike(logbook);
      const entries = await done(
        logbook,
        way === 'apply-locker'
          ? { type: way, jointId, ...locker, own }
          : {
              type: way,
              jointId,
              applied: nm(5),
              entered: 'tap',
              bolts: 2,
              passes: 1,
              locker: { ...locker, own },
            },
      );
      expect(entries.find(({ type }) => type === 'locker-applied')).toMatchObject({ waitMs: locker.waitMs });
      expect(entries.find(({ type }) => type === 'wait-changed')).toMatchObject({ ...own, jointId });
      const card = await logbook.read('joint', { jointId });
      expect(card?.waits.map(({ dueAtMs }) => dueAtMs)).toEqual([clock.nowMs + own.waitMs]);
      clock.nowMs += 3 * DAY_MS;
      const seen = await logbook.read('as-built', { bikeId: 'b1', atMs: clock.nowMs });
      expect(JSON.stringify(sheetLines(seen, circumstances))).toMatch(/cured since/);
      logbook.close();
    },
  );

  test('without a reason, or of no length, it is refused and nothing is written', async () => {
    const { logbook } = await openTestLogbook();
    const { jointId } = await aBike(logbook);
    const put = { type: 'apply-locker', jointId, ...locker } as const;
    expect(await logbook.run({ ...put, own: { ...own, why: ' ' } })).toMatchObject({
      refused: 'reason-missing',
    });
    expect(await logbook.run({ ...put, own: { ...own, waitMs: Number.NaN } })).toMatchObject({
      refused: 'not-a-number',
    });
    expect((await logbook.read('joint', { jointId }))?.joint.locked).toBeUndefined();
    logbook.close();
  });

  test('the new application of another day has its own again', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { jointId } = await aBike(logbook);
    await done(logbook, { type: 'apply-locker', jointId, ...locker, own });
    clock.nowMs += HOUR_MS;
    await done(logbook, { type: 'apply-locker', jointId, ...locker });
    const running = (await logbook.read('joint', { jointId }))?.waits.filter(
      ({ endedAtMs }) => endedAtMs === undefined,
    );
    expect(running?.map(({ dueAtMs }) => dueAtMs)).toEqual([clock.nowMs + locker.waitMs]);
    logbook.close();
  });
});
