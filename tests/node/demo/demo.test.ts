import { expect, test } from 'vitest';
import { loadDemo } from '../../../src/demo/loadDemo.ts';
import { checkPile } from '../../../src/fit/checkPile.ts';
import { isAccepted } from '../../../src/fit/openFindings.ts';
import { pileOf } from '../../../src/fit/pileOf.ts';
import { openDatabase, VIEWS_META } from '../../../src/store/database.ts';
import { rebuildIfOld } from '../../../src/store/rebuild.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

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

test('[J3] a part of one’s own that was on a bike of the demo outlives it', async () => {
  const { logbook, name } = await openTestLogbook(Date.UTC(2026, 10, 25, 15));
  await loadDemo(logbook);
  const onFerry = { on: 'bike', bikeId: 'demo-ferry' } as const;
  const saddle = { label: 'X-1', name: 'Saddle', kind: 'saddle', origin: 'found' } as const;
  await done(logbook, { type: 'add-part', partId: 'mine', place: onFerry, ...saddle });
  expect(await logbook.removeDemo()).toEqual({ holdOwn: ['Ferry'] });
  await done(logbook, { type: 'move-part', partId: 'mine', to: { on: 'shelf' } });
  expect(await logbook.removeDemo()).toMatchObject({ removed: expect.any(Number) });
  expect((await logbook.read('parts', { at: 'shelf' })).map(({ partId }) => partId)).toEqual(['mine']);
  logbook.close();
  const db = await openDatabase(name);
  const rows = await db.getAll('views');
  await db.put('meta', { name: VIEWS_META, value: 0 });
  await rebuildIfOld(db, () => {});
  expect(await db.getAll('views')).toEqual(rows);
  db.close();
}, 60_000);

test('the fit check of the demo bike on the bench: every bridge accepted, two things still to be measured', async () => {
  const { logbook } = await openTestLogbook(Date.UTC(2026, 10, 25, 15));
  await loadDemo(logbook);
  const card = await logbook.read('bike', { bikeId: 'demo-magpie' });
  if (!card) throw new Error('the demo has no such bike');
  const { findings, toMeasure, fitting } = checkPile(pileOf(card.parts));
  expect(findings.filter((finding) => !isAccepted(card.findings, finding))).toEqual([]);
  expect(findings.map(({ topic }) => topic).sort()).toEqual([
    'bar-in-stem',
    'caliper-on-mount',
    'crank-width',
    'post-in-seat-tube',
    'stem-on-steerer',
    'valve-in-rim',
    'valve-in-rim',
  ]);
  // The piece that is there is the one the check would take.
  for (const { topic, bridges } of findings.filter((finding) => finding.topic !== 'crank-width'))
    expect(bridges[0]?.bridgeId, topic).toMatch(/^part:demo-m-/);
  expect(toMeasure.map(({ topic }) => topic)).toEqual(['steerer-length', 'chainline']);
  expect(fitting.map(({ topic }) => topic)).toEqual(
    expect.arrayContaining(['saddle-on-post', 'pedal-in-crank', 'hub-between-ends']),
  );
  const view = await logbook.read('release', { bikeId: 'demo-magpie' });
  expect(view?.open.filter(({ what }) => what === 'fit-finding')).toHaveLength(2);
  const ferry = await logbook.read('release', { bikeId: 'demo-ferry' });
  expect(ferry?.open.filter(({ what }) => what === 'fit-finding')).toEqual([]);
  logbook.close();
}, 60_000);
