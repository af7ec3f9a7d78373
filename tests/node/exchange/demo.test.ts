import { expect, test } from 'vitest';
import { loadDemo } from '../../../src/exchange/demo.ts';
import { openTestLogbook } from '../logbook/openTestLogbook.ts';

test('the demo goes through the same door as anything else, and out again without a trace', async () => {
  const { logbook } = await openTestLogbook(Date.UTC(2026, 10, 25, 15));
  await logbook.run({ type: 'start-bike', bikeId: 'mine', name: 'Mine' });
  const before = await logbook.read('size', {});
  await loadDemo(logbook);
  const bikes = await logbook.read('bikes', {});
  expect(bikes.map(({ name }) => name).sort()).toEqual(['Ferry', 'Magpie', 'Mine']);
  const ferry = bikes.find(({ name }) => name === 'Ferry');
  expect(ferry).toBeDefined();
  expect((await logbook.read('due', { untilMs: logbook.now() + 86_400_000 })).length).toBeGreaterThan(0);
  expect(await logbook.removeDemo()).toMatchObject({ removed: expect.any(Number) });
  // One line stands for what was taken out.
  expect(await logbook.read('size', {})).toEqual({ ...before, entries: before.entries + 1 });
  expect((await logbook.read('bikes', {})).map(({ name }) => name)).toEqual(['Mine']);
  expect(await logbook.read('due', { untilMs: Number.MAX_SAFE_INTEGER })).toEqual([]);
  logbook.close();
}, 60_000);
