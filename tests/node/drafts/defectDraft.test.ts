import { expect, test } from 'vitest';
import { type DefectDraft, emptyDefect, readDefect } from '../../../src/drafts/defectDraft.ts';
import { aBike } from '../logbook/aBike.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const HOUR = 3_600_000;
const worn: DefectDraft = { ...emptyDefect, words: 'Worn grip', decision: 'ride-limited' };
const limited = (further: string, unit: 'km' | '[mi_i]' = 'km') =>
  readDefect({ ...worn, further }, 'b1', 'ride-limited', unit);

test('the example of the description', () => {
  expect(limited('20')?.untilKm).toBe(20);
});

test('[L6] what may still be ridden counts from the problem on, however far the bike has gone before', async () => {
  const { logbook, clock } = await openTestLogbook();
  await aBike(logbook);
  await done(logbook, { type: 'log-ride', bikeId: 'b1', km: 300 });
  clock.nowMs += HOUR;
  const command = limited('20');
  if (!command) throw new Error('the distance was not read');
  await done(logbook, { ...command, defectId: 'd' });
  const dueAt = async () =>
    (await logbook.read('bike', { bikeId: 'b1' }))?.defects.map(({ dueAtMs }) => dueAtMs);
  clock.nowMs += HOUR;
  await done(logbook, { type: 'log-ride', bikeId: 'b1', km: 19 });
  expect(await dueAt()).toEqual([undefined]);
  clock.nowMs += HOUR;
  await done(logbook, { type: 'log-ride', bikeId: 'b1', km: 2 });
  expect(await dueAt()).toEqual([clock.nowMs]);
  logbook.close();
});

test('miles become km, words are no distance, and a bike that stays has no limit', () => {
  // International mile, 1.609344 km exactly (yard and pound agreement of 1959).
  expect(limited('10', '[mi_i]')?.untilKm).toBeCloseTo(16.09344, 9);
  expect(limited('far')).toBeUndefined();
  expect(limited('')).toEqual({
    ...{ type: 'find-defect', bikeId: 'b1', words: 'Worn grip', area: 'other', decision: 'ride-limited' },
  });
  const stays = readDefect({ ...worn, further: 'far', restriction: 'slowly' }, 'b1', 'do-not-ride', 'km');
  expect(stays).not.toHaveProperty('restriction');
  expect(stays).not.toHaveProperty('untilKm');
});
