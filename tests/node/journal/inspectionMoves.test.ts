import { expect, test } from 'vitest';
import { timeDueMs } from '../../../src/planning/due.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const mm = (value: number) => ({ value, unit: 'mm' as const, typed: String(value) });

// GM M.A.305 and AMC M.A.305: a change names the new checks it brings; 14 CFR 43.10: its record goes with the part.
test('the looks a one-way change asks for go with the part from shelf to bike to bike', async () => {
  const { logbook } = await openTestLogbook();
  for (const bikeId of ['b1', 'b2']) await done(logbook, { type: 'start-bike', bikeId, name: bikeId });
  await done(logbook, {
    type: 'add-part',
    partId: 'p1',
    place: { on: 'shelf' },
    label: 'P-001',
    name: 'Fork',
    kind: 'fork',
    origin: 'found',
  });
  const change = {
    cut: 'saw',
    where: 'steerer',
    before: mm(210),
    after: mm(188),
    how: 'saw',
    why: 'long',
  } as const;
  const inspection = { everyKm: 500, words: 'cracks' };
  expect(
    await logbook.run({ type: 'change-part', partId: 'p1', ...change, inspection: { words: 'cracks' } }),
  ).toMatchObject({ refused: 'limit-missing' });
  await done(logbook, { type: 'change-part', partId: 'p1', ...change, inspection });
  const looks = async (bikeId: string) =>
    (await logbook.read('rechecks', { bikeId })).map(({ title, dueKm }) => [title, dueKm]);
  await done(logbook, { type: 'move-part', partId: 'p1', to: { on: 'bike', bikeId: 'b1' } });
  expect(await looks('b1')).toEqual([['Fork: steerer', 500]]);
  const moved = await done(logbook, { type: 'move-part', partId: 'p1', to: { on: 'bike', bikeId: 'b2' } });
  expect(await looks('b1')).toEqual([]);
  expect(await looks('b2')).toEqual([['Fork: steerer', 500]]);
  await done(logbook, { type: 'undo', entryIds: moved.map(({ id }) => id) });
  expect(await looks('b1')).toEqual([['Fork: steerer', 500]]);
  expect(await looks('b2')).toEqual([]);
  await done(logbook, { type: 'move-part', partId: 'p1', to: { on: 'sold' } });
  expect(await looks('b1')).toEqual([]);
  logbook.close();
});

test('[C3] a cut written down three days later is looked at a month after it was made', async () => {
  const { logbook, clock } = await openTestLogbook();
  await done(logbook, { type: 'start-bike', bikeId: 'b1', name: 'b1' });
  const place = { on: 'bike', bikeId: 'b1' } as const;
  const fork = { label: 'P-001', name: 'Fork', kind: 'fork', origin: 'found' } as const;
  await done(logbook, { type: 'add-part', partId: 'p1', place, ...fork });
  const happenedAtMs = clock.nowMs;
  clock.nowMs += 3 * 86_400_000;
  const cut = { cut: 'saw', where: 'steerer', how: 'saw', why: 'long' } as const;
  const inspection = { everyDays: 30, words: 'cracks' };
  const sizes = { before: mm(210), after: mm(188) };
  await done(logbook, { type: 'change-part', partId: 'p1', happenedAtMs, ...cut, ...sizes, inspection });
  const [look] = await logbook.read('rechecks', { bikeId: 'b1' });
  expect(look?.dueAtMs).toBe(timeDueMs(happenedAtMs, 30));
  logbook.close();
});
