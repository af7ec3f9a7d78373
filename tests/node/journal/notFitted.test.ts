import { describe, expect, test } from 'vitest';
import type { Logbook } from '../../../src/logbook.ts';
import { notFitted } from '../../../src/standards/checks/notFitted.ts';
import { rideCheck } from '../../../src/standards/checks/rideCheck.ts';
import { aBike, answers } from '../logbook/aBike.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';
import { releaseSays } from '../logbook/releaseSays.ts';

const SECOND = 3000;
const without = (groupId: string, ...absent: string[]) =>
  answers(groupId).map((item) =>
    absent.includes(item.itemId) ? { itemId: item.itemId, ok: false, absent: true as const } : item,
  );

/** A part on the bike, with what its kind and end tell. */
const part = (logbook: Logbook, partId: string, kind: string, position?: 'front' | 'rear') =>
  done(logbook, {
    ...{ type: 'add-part', partId, place: { on: 'bike', bikeId: 'b1' }, label: partId, name: partId, kind },
    ...{ origin: 'found', ...(position ? { position } : {}) },
  });

/** Every group confirmed, with what is not there. */
async function lookOver(logbook: Logbook, clock: { nowMs: number }, ...absent: string[]) {
  for (const { id } of rideCheck) {
    clock.nowMs += SECOND;
    await done(logbook, {
      ...{ type: 'confirm-ride-check', bikeId: 'b1', groupId: id, items: without(id, ...absent) },
    });
  }
}
const sign = { type: 'release-bike', bikeId: 'b1', statement: 'first-ride', covers: 'all', by: 'T' } as const;

/** One joint, which does not matter, so that nothing but the check stands in the way. */
const bikeOf = (logbook: Logbook) => aBike(logbook, 'b1', { kind: 'other', matters: false });

describe('what a bike has not got', () => {
  test('[L8] every thing of the check can be not fitted; what is done on every bike cannot', async () => {
    const { logbook, clock } = await openTestLogbook();
    await bikeOf(logbook);
    for (const { id: groupId, items } of rideCheck)
      for (const { id, words } of items) {
        clock.nowMs += SECOND;
        const told = await logbook.run({
          ...{ type: 'confirm-ride-check', bikeId: 'b1', groupId, items: without(groupId, id) },
        });
        if (notFitted[id]) expect(told, id).not.toHaveProperty('refused');
        else expect(told, id).toMatchObject({ refused: 'must-be-done', about: words });
      }
    logbook.close();
  });

  test('[L8] a bike without a front brake is released without an untrue answer, and the release names it with the law', async () => {
    const { logbook, clock } = await openTestLogbook();
    await bikeOf(logbook);
    await lookOver(logbook, clock, 'front-brake', 'front-rotor', 'rack-and-guards');
    const [signed] = await done(logbook, sign);
    const named = releaseSays(signed).filter((words) => words.startsWith('Not fitted'));
    expect(named).toEqual([
      'Not fitted: front brake. Most places ask by law for two brakes that work on their own. Look up the rules of the place you ride in.',
      'Not fitted: front rotor or brake cable. Most places ask by law for two brakes that work on their own. Look up the rules of the place you ride in.',
      'Not fitted: rack, mudguards or bags',
    ]);
    logbook.close();
  });

  test('[L8] what the bike has by its parts is not "not fitted", now; of a day before it is not known', async () => {
    const { logbook, clock } = await openTestLogbook();
    await bikeOf(logbook);
    await part(logbook, 'caliper', 'caliper', 'front');
    clock.nowMs += SECOND;
    const items = without('front-wheel', 'front-brake');
    const check = { type: 'confirm-ride-check', bikeId: 'b1', groupId: 'front-wheel', items } as const;
    expect(await logbook.run(check)).toMatchObject({ refused: 'is-fitted', about: 'front brake' });
    await done(logbook, { ...check, happenedAtMs: clock.nowMs - 86_400_000 });
    logbook.close();
  });

  test('[L8] a brake fitted after the look is asked for again', async () => {
    const { logbook, clock } = await openTestLogbook();
    await bikeOf(logbook);
    await lookOver(logbook, clock, 'front-brake');
    await part(logbook, 'caliper', 'caliper', 'front');
    expect(await logbook.run(sign)).toMatchObject({
      refused: 'must-not-be-deferred',
      about: 'Pre-ride check not done: Front wheel: front brake, fitted since the check',
    });
    logbook.close();
  });

  test('[L8] without a wheel, a fork or any brake at all it is not released; a fixed wheel or a back-pedal hub is no lack', async () => {
    const { logbook, clock } = await openTestLogbook();
    await bikeOf(logbook);
    await lookOver(logbook, clock, 'front-tyre');
    expect(await logbook.run(sign)).toMatchObject({ about: 'Not fitted: front tyre' });
    await lookOver(logbook, clock, 'front-brake', 'rear-brake');
    expect(await logbook.run(sign)).toMatchObject({ about: 'No brake at all on either wheel' });
    await done(logbook, {
      ...{ type: 'add-part', partId: 'hub', place: { on: 'bike', bikeId: 'b1' }, label: 'hub', name: 'hub' },
      ...{ kind: 'rear-hub', origin: 'found' },
      faces: [
        {
          ...{ faceId: 'd', kind: 'driver-mount', standard: null, nominal: {}, measured: {} },
          traits: { drive: 'fixed' },
        },
      ],
    });
    await done(logbook, sign);
    logbook.close();
  });

  test('[L8] a check that finds no brake at all takes back a release that stands', async () => {
    const { logbook, clock } = await openTestLogbook();
    await bikeOf(logbook);
    await lookOver(logbook, clock);
    await done(logbook, sign);
    await lookOver(logbook, clock, 'front-brake', 'rear-brake');
    const { release } = (await logbook.read('bike', { bikeId: 'b1' }))?.bike ?? {};
    expect(release?.withdrawn).toContain('No brake at all');
    logbook.close();
  });

  test('[L8] a correction may carry it, and as it should be and not fitted at once is nothing', async () => {
    const { logbook, clock } = await openTestLogbook();
    await bikeOf(logbook);
    const [said] = await done(logbook, {
      ...{ type: 'confirm-ride-check', bikeId: 'b1', groupId: 'saddle', items: answers('saddle') },
    });
    clock.nowMs += SECOND;
    const correct = { type: 'correct', entryId: said?.id ?? '', reason: 'there is no rack' } as const;
    await done(logbook, { ...correct, becomes: { items: without('saddle', 'rack-and-guards') } });
    clock.nowMs += SECOND;
    const both = answers('saddle').map((item) => ({ ...item, absent: true }));
    expect(await logbook.run({ ...correct, becomes: { items: both } })).toMatchObject({
      refused: 'malformed',
    });
    logbook.close();
  });
});
