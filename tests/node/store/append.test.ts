import { expect, test } from 'vitest';
import { aBike, nm } from '../logbook/aBike.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const tap = (jointId: string, value: number) => ({
  ...{
    type: 'apply-torque' as const,
    jointId,
    applied: nm(value),
    entered: 'tap' as const,
    bolts: 2,
    passes: 1,
  },
});

test('[J1] two tabs that remember the same rows cannot both add the next line: one starts over', async () => {
  const one = await openTestLogbook();
  const { bikeId, jointId } = await aBike(one.logbook);
  const other = await openTestLogbook(one.clock.nowMs, one.name);
  // Both have read the joint and know the last line.
  await done(one.logbook, tap(jointId, 4));
  one.clock.nowMs += 5000;
  other.clock.nowMs = one.clock.nowMs;
  await done(other.logbook, tap(jointId, 5));
  one.clock.nowMs += 5000;
  other.clock.nowMs = one.clock.nowMs;
  // This one still believes in 4 and in an older last line.
  const results = await Promise.all([
    one.logbook.run(tap(jointId, 6)),
    other.logbook.run({ type: 'add-note', bikeId, words: 'at the same time' }),
  ]);
  for (const result of results) expect(result).toHaveProperty('entries');
  const joint = (await other.logbook.read('joint', { jointId }))?.joint;
  expect(joint).toMatchObject({ appliedTimes: 3, applied: { applied: { value: 6 } } });
  const { lines } = await one.logbook.read('history', { place: `j:${jointId}`, limit: 50 });
  const seqs = lines.map(({ seq }) => seq);
  expect(new Set(seqs).size).toBe(seqs.length);
  one.logbook.close();
  other.logbook.close();
});

test('[J4] a refusal is given on what the store says, never on what a tab remembers', async () => {
  const one = await openTestLogbook();
  const { jointId } = await aBike(one.logbook);
  const other = await openTestLogbook(one.clock.nowMs, one.name);
  const [first] = await done(one.logbook, tap(jointId, 5));
  await done(other.logbook, { type: 'undo', entryIds: [first?.id ?? ''] });
  // Remembered, it would be a double tap; in the store the first tap no longer counts.
  expect(await one.logbook.run(tap(jointId, 5))).toHaveProperty('entries');
  one.logbook.close();
  other.logbook.close();
});

test('[J1] what the store cannot take is not half written, and the next command works', async () => {
  const { logbook } = await openTestLogbook();
  const { bikeId, jointId } = await aBike(logbook);
  await done(logbook, tap(jointId, 5));
  const before = await logbook.read('size', {});
  const photo = {
    photoId: 'x',
    buf: (() => {}) as unknown as ArrayBuffer,
    type: 'image/jpeg',
    widthPx: 1,
    heightPx: 1,
  };
  await expect(
    logbook.run({ type: 'add-note', bikeId, words: 'with a picture', photoIds: ['x'] }, [photo]),
  ).rejects.toThrow();
  expect(await logbook.read('size', {})).toEqual(before);
  await done(logbook, { type: 'add-note', bikeId, words: 'without' });
  expect((await logbook.read('size', {})).entries).toBe(before.entries + 1);
  logbook.close();
});
