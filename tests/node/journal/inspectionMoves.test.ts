import { expect, test } from 'vitest';
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
