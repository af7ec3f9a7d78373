import { expect, test, vi } from 'vitest';
import type { ViewName, Views } from '../../../src/logbook.ts';
import { aBike, torque } from '../logbook/aBike.ts';
import { openTestLogbook } from '../logbook/openTestLogbook.ts';

const bikeId = 'b1';
const jointId = 'b1-j1';
const atMs = Date.UTC(2026, 4, 4);

/** Every view that shows more than one row. */
const asked: { [V in ViewName]?: Views[V]['ask'] } = {
  bikes: {},
  due: { untilMs: atMs },
  bike: { bikeId },
  bench: { bikeId },
  joint: { jointId },
  part: { partId: 'b1-p1' },
  rechecks: { bikeId },
  release: { bikeId },
  history: { place: `b:${bikeId}`, limit: 3 },
  'as-built': { bikeId, atMs },
};

test.each(Object.entries(asked))(
  'the view "%s" is read in one transaction, so that none of its rows is newer than another',
  async (view, ask) => {
    const { logbook } = await openTestLogbook();
    await aBike(logbook, bikeId);
    await torque(logbook, jointId);
    const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
    try {
      expect(await logbook.read(view as ViewName, ask as never)).toBeTruthy();
      expect(begun).toHaveBeenCalledTimes(1);
    } finally {
      begun.mockRestore();
      logbook.close();
    }
  },
);

test('an entry is read in one transaction with what became of it', async () => {
  const { logbook } = await openTestLogbook();
  await aBike(logbook, bikeId);
  const [entry] = await torque(logbook, jointId);
  const entryId = entry?.id ?? '';
  await logbook.run({ type: 'correct', entryId, reason: 'misread', becomes: { bolts: 3 } });
  const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
  try {
    const line = await logbook.read('entry', { entryId });
    expect(line?.fixes.map(({ reason }) => reason)).toEqual(['misread']);
    expect(begun).toHaveBeenCalledTimes(1);
  } finally {
    begun.mockRestore();
    logbook.close();
  }
});
