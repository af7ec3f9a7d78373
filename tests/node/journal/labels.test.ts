import { expect, test } from 'vitest';
import { labelHolder } from '../../../src/journal/labelHolder.ts';
import { sentenceOf } from '../../../src/words/refusals.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const part = (partId: string, label: string) => ({
  ...{ type: 'add-part' as const, partId, label, name: `Part ${partId}`, kind: 'fork' },
  ...{ origin: 'found' as const, place: { on: 'shelf' as const } },
});
const taken = { refused: 'label-taken', about: 'Part p1' } as const;

test.each([
  [' red 1 ', 'p2', 'p1'],
  ['Red 1', 'p1', undefined],
  ['Red 1', undefined, 'p1'],
  [' ', 'p2', undefined],
  ['Red 1', 'demo-fork', undefined],
  ['P-001', 'p2', undefined],
])('[P4] %j for %s is kept by %s', (label, partId, holder) => {
  const parts = [
    { partId: 'p1', label: 'Red 1' },
    { partId: 'demo-stem', label: 'P-001' },
  ];
  expect(labelHolder(parts, partId, label)?.partId).toBe(holder);
});

test('[P4] a label is on one part, wherever that part is, however it is written', async () => {
  const { logbook } = await openTestLogbook();
  await done(logbook, { type: 'start-bike', bikeId: 'b1', name: 'Heron' });
  await done(logbook, { ...part('p1', 'Red 1'), place: { on: 'bike', bikeId: 'b1' } });
  expect(await logbook.run(part('p2', ' red 1 '))).toEqual(taken);
  expect(sentenceOf(taken)).toContain('Part p1');
  await done(logbook, part('p2', 'Red 2'));
  expect(await logbook.run({ type: 'describe-part', partId: 'p2', label: 'RED 1' })).toEqual(taken);
  // Its own label, and none at all, are not taken by others.
  await done(logbook, { type: 'describe-part', partId: 'p1', label: 'red 1' });
  await done(logbook, part('p3', ''));
  await done(logbook, part('p4', ' '));
  await done(logbook, { type: 'move-part', partId: 'p1', to: { on: 'scrapped', how: 'sawn through' } });
  expect(await logbook.run(part('p5', 'red 1'))).toEqual(taken);
  logbook.close();
});

test('[P4] two at once: the second meets the first', async () => {
  const { logbook } = await openTestLogbook();
  const both = await Promise.all([logbook.run(part('p1', 'X')), logbook.run(part('p2', 'X'))]);
  expect(both[0]).toHaveProperty('entries');
  expect(both[1]).toEqual(taken);
  logbook.close();
});

test('[P4] struck out or given up, a label is free again', async () => {
  const { logbook } = await openTestLogbook();
  const [added] = await done(logbook, part('p1', 'X'));
  await done(logbook, { type: 'undo', entryIds: [added!.id] });
  await done(logbook, part('p2', 'X'));
  await done(logbook, { type: 'describe-part', partId: 'p2', label: 'Y' });
  await done(logbook, part('p3', 'X'));
  logbook.close();
});

test('[P4] the demo may come although its labels are in use, and keeps none from the person', async () => {
  const { logbook } = await openTestLogbook();
  await done(logbook, part('p1', 'P-001'));
  await done(logbook, part('demo-fork', 'P-001'));
  await done(logbook, part('demo-stem', 'P-002'));
  // The form asks before the command does, and is told the same.
  expect(await logbook.read('label-holder', { label: 'P-002' })).toBeUndefined();
  await done(logbook, part('p2', 'P-002'));
  expect(await logbook.read('label-holder', { label: 'p-002' })).toMatchObject({ partId: 'p2' });
  expect(await logbook.read('label-holder', { label: 'P-002', partId: 'p2' })).toBeUndefined();
  expect(await logbook.read('label-holder', { label: 'P-002', partId: 'demo-fork' })).toBeUndefined();
  logbook.close();
});
