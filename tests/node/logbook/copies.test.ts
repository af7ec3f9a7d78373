import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import { writeArchive } from '../../../src/exchange/archive/writeArchive.ts';
import { addCopy, readCopy } from '../../../src/exchange/copy/restore.ts';
import type { Command } from '../../../src/journal/commands.ts';
import { inOrder } from '../../../src/journal/order.ts';
import { type Logbook, logbookFor } from '../../../src/logbook.ts';
import { openDatabase } from '../../../src/store/database.ts';
import * as writer from '../../../src/store/writer.ts';
import { memory, opened, photoOf } from '../exchange/aCopy.ts';
import { typed } from '../words/history/everyEntry.ts';
import { done, openTestLogbook } from './openTestLogbook.ts';

const NINE = Date.UTC(2026, 4, 3, 9);
const HOUR_MS = 3_600_000;

async function archiveOf({ copies }: Logbook): Promise<Blob> {
  const kept = memory();
  const content = { entries: copies.entries(), photos: copies.photos(), madeAtMs: NINE };
  await writeArchive({ ...content, sheets: (async function* () {})() }, kept.stream);
  return kept.blob();
}

const add = async (from: Logbook, to: Logbook) => addCopy(await opened(await archiveOf(from)), to.copies);

/** All that a store holds, but for what is of one phone only: the number a line came in under. */
async function heldBy(name: string) {
  const db = await openDatabase(name);
  const lines = await db.getAll('journal');
  const held = {
    entries: lines.map(({ entry }) => entry).sort(inOrder),
    places: Object.fromEntries(lines.map(({ entry, places }) => [entry.id, places])),
    rows: (await db.getAll('views')).sort((a, b) => (a.key < b.key ? -1 : 1)),
    photos: await db.getAll('photos'),
  };
  db.close();
  return held;
}

const part = (partId: string, bikeId: string): Command => ({
  type: 'add-part',
  partId,
  place: { on: 'bike', bikeId },
  label: partId,
  name: `Part ${partId}`,
  kind: 'other',
  origin: 'found',
});

/** A bike with a joint that was torqued, and a photo. */
async function phoneWithABike() {
  const phone = await openTestLogbook(NINE);
  const { logbook } = phone;
  await done(logbook, { type: 'start-bike', bikeId: 'b1', name: 'Magpie' });
  await done(logbook, part('p1', 'b1'));
  await done(logbook, part('p2', 'b1'));
  await done(logbook, {
    type: 'make-joint',
    jointId: 'j1',
    bikeId: 'b1',
    name: 'Stem on steerer',
    kind: 'stem-steerer',
    partIds: ['p1', 'p2'],
    between: [],
    fasteners: [{ thread: 'M5', count: 2, hand: 'right' }],
    targets: [],
  });
  const note: Command = { type: 'add-note', bikeId: 'b1', words: 'as found', photoIds: ['ph1'] };
  await logbook.run(note, [photoOf(1)]);
  return phone;
}

const torque = (text: string): Command => ({
  type: 'apply-torque',
  jointId: 'j1',
  applied: typed(text, 'N.m'),
  entered: 'keypad',
  bolts: 2,
  passes: 1,
});

describe('a copy from one phone to another', () => {
  test('[K1] into an empty logbook: the same entries, rows, places and photos', async () => {
    const one = await phoneWithABike();
    const other = await openTestLogbook(NINE);
    expect(await add(one.logbook, other.logbook)).toMatchObject({ photos: 1 });
    expect(await heldBy(other.name)).toEqual(await heldBy(one.name));
  });

  test('[K2] two phones that exchanged copies both ways hold the same, late entries and corrections included', async () => {
    const one = await phoneWithABike();
    const other = await openTestLogbook(NINE);
    await add(one.logbook, other.logbook);
    one.clock.nowMs += 3 * HOUR_MS;
    await done(one.logbook, torque('5'));
    const ridden = await done(one.logbook, { type: 'log-ride', bikeId: 'b1', km: 8 });
    const ride = ridden.find(({ type }) => type === 'ride-logged');
    other.clock.nowMs += 5 * HOUR_MS;
    await done(other.logbook, { ...torque('6'), happenedAtMs: NINE + HOUR_MS });
    await done(other.logbook, { type: 'start-bike', bikeId: 'b2', name: 'Ferry' });
    one.clock.nowMs += HOUR_MS;
    await done(one.logbook, {
      type: 'correct',
      entryId: ride?.id ?? '',
      reason: 'misread',
      becomes: { km: 9 },
    });
    await add(one.logbook, other.logbook);
    await add(other.logbook, one.logbook);
    const held = await heldBy(one.name);
    expect(await heldBy(other.name)).toEqual(held);
    expect(held.rows.find(({ key }) => key === 'joint/j1')).toMatchObject({
      applied: { applied: { value: 5 } },
    });
    expect(held.rows.find(({ key }) => key === 'rides/b1')).toMatchObject({ km: 9 });
    expect((await one.logbook.read('bikes', {})).map(({ name }) => name).sort()).toEqual(['Ferry', 'Magpie']);
  });

  test('[K2] a second time changes nothing', async () => {
    const one = await phoneWithABike();
    const other = await openTestLogbook(NINE);
    await add(one.logbook, other.logbook);
    const held = await heldBy(other.name);
    expect(await add(one.logbook, other.logbook)).toEqual({ entries: 0, photos: 0 });
    expect(await heldBy(other.name)).toEqual(held);
  });

  test('[K1] a copy that is refused, or given up, leaves the logbook as it is', async () => {
    const one = await phoneWithABike();
    const other = await phoneWithABike();
    const held = await heldBy(other.name);
    const bytes = new Uint8Array(await (await archiveOf(one.logbook)).arrayBuffer());
    bytes[bytes.length >> 1] = (bytes[bytes.length >> 1] ?? 0) ^ 1;
    expect(await readCopy(new Blob([bytes]), other.logbook.copies, {})).toHaveProperty('refused');
    const signal = AbortSignal.abort(new Error('given up'));
    const copy = await opened(await archiveOf(one.logbook));
    await expect(addCopy(copy, other.logbook.copies, { signal })).rejects.toThrow('given up');
    expect(await heldBy(other.name)).toEqual(held);
  });

  test('it can be worked on afterwards', async () => {
    const one = await phoneWithABike();
    const copy = await opened(await archiveOf(one.logbook));
    // Both share one channel, as two tabs do: the first is closed before the second listens.
    one.logbook.close();
    const other = await openTestLogbook(NINE + HOUR_MS);
    let heard = 0;
    other.logbook.watch(() => {
      heard += 1;
    });
    await addCopy(copy, other.logbook.copies);
    expect(heard).toBeGreaterThan(0);
    await done(other.logbook, torque('5'));
    const seen = await other.logbook.read('joint', { jointId: 'j1' });
    expect(seen?.joint.state).toBe('torqued');
  });
});

test('[K2] [K7] each entry says on which phone it was written, also after both journals were merged both ways', async () => {
  const phones = ['Bench', undefined, 'Garage'].map((phone, at) => {
    const name = `named-${at}`;
    const logbook = logbookFor({
      ...{ name, now: () => NINE + at * HOUR_MS, zone: () => 'UTC', phone: () => phone },
      loadWriter: async () => writer,
    });
    return { name, logbook };
  });
  for (const [at, { logbook }] of phones.entries())
    await done(logbook, { type: 'start-bike', bikeId: `b${at}`, name: `Bike ${at}` });
  const [bench, bare, garage] = phones.map(({ logbook }) => logbook) as [Logbook, Logbook, Logbook];
  await add(bench, garage);
  await add(bare, garage);
  await add(garage, bench);
  const held = await heldBy('named-0');
  expect(held.entries.map((entry) => 'phone' in entry && entry.phone)).toEqual(['Bench', false, 'Garage']);
  expect(held).toEqual(await heldBy('named-2'));
});

test('[K2] the line that says the demo was taken out names the phone as well', async () => {
  const logbook = logbookFor({
    ...{ name: 'named-demo', now: () => NINE, zone: () => 'UTC', phone: () => ' Bench ' },
    loadWriter: async () => writer,
  });
  await done(logbook, { type: 'start-bike', bikeId: 'demo-1', name: 'Magpie' });
  expect(await logbook.removeDemo()).toEqual({ removed: 1 });
  const { entries } = await heldBy('named-demo');
  expect(entries).toEqual([expect.objectContaining({ type: 'demo-removed', phone: 'Bench', zone: 'UTC' })]);
  logbook.close();
});

test('a note on this phone lies beside the journal: no entry, no harm to the check, and sorting anew leaves it', async () => {
  const { logbook } = await openTestLogbook();
  await done(logbook, { type: 'start-bike', name: 'Wagtail' });
  expect(await logbook.copies.noted('copy-folder')).toBeUndefined();
  await logbook.copies.note('copy-folder', { files: ['a.zip'], atMs: 5 });
  expect(await logbook.copies.noted('copy-folder')).toEqual({ files: ['a.zip'], atMs: 5 });
  const before = await logbook.check();
  await logbook.sortAnew(() => {});
  expect(await logbook.copies.noted('copy-folder')).toEqual({ files: ['a.zip'], atMs: 5 });
  expect(await logbook.check()).toEqual(before);
  expect(await logbook.copies.counts()).toEqual({ entries: 1, photos: 0 });
  await logbook.copies.note('copy-folder', undefined);
  expect(await logbook.copies.noted('copy-folder')).toBeUndefined();
});
