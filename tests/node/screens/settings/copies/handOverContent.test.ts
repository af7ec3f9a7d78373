import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { handOverFiles } from '../../../../../src/exchange/handOver.ts';
import { handOverContent } from '../../../../../src/screens/settings/copies/handOverContent.ts';
import { done, openTestLogbook } from '../../../logbook/openTestLogbook.ts';

/** A bike with more entries than one page of its history, and a part that came from another bike. */
async function aBikeToHandOver() {
  const { logbook, clock } = await openTestLogbook();
  await done(logbook, { type: 'start-bike', bikeId: 'b1', name: 'Magpie' });
  await done(logbook, { type: 'start-bike', bikeId: 'b2', name: 'Ferry' });
  await done(logbook, {
    ...{ type: 'add-part', partId: 'p1', place: { on: 'bike', bikeId: 'b2' }, label: 'P-001' },
    ...{ name: 'Saddle', kind: 'saddle', serial: 'ZX-99817', origin: 'bought-used' },
    originWords: 'Mill Lane market',
  });
  await done(logbook, { type: 'move-part', partId: 'p1', to: { on: 'bike', bikeId: 'b1' } });
  const notes = Array.from({ length: 600 }, (_, at) => `note ${at}${at === 7 ? ', cost 45 EUR' : ''}`);
  clock.nowMs += 5000;
  await done(
    logbook,
    notes.map((words) => ({ type: 'add-note', bikeId: 'b1', words })),
  );
  return logbook;
}

test('a bike is handed over with its whole history, oldest first, and the things in it by name', async () => {
  const logbook = await aBikeToHandOver();
  const content = await handOverContent(logbook, 'b1');
  expect(content.entries).toHaveLength(602);
  expect(content.entries.at(0)?.type).toBe('bike-started');
  expect(content.entries.at(-1)).toMatchObject({ words: 'note 599' });
  const { names } = content;
  expect([names.bike('b2'), names.part('p1')]).toEqual(['Ferry', 'Saddle (P-001)']);
  const all = Object.values(handOverFiles(content, { prices: true, serials: true, places: true })).join('\n');
  for (const text of ['ZX-99817', 'Mill Lane market', '45 EUR', 'Ferry']) expect(all).toContain(text);
  const bare = handOverFiles(content, { prices: false, serials: false, places: false });
  for (const text of ['ZX-99817', 'Mill Lane', '45 EUR', 'Ferry'])
    expect(Object.values(bare).join('\n')).not.toContain(text);
});

test('a bike that is not there gives no files', async () => {
  const { logbook } = await openTestLogbook();
  const content = await handOverContent(logbook, 'b9');
  expect(handOverFiles(content, { prices: true, serials: true, places: true })).toEqual({});
});
