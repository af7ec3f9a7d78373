import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, test } from 'vitest';
import { loadDemo } from '../../../../src/demo/loadDemo.ts';
import { onlyHere, savedCopy } from '../../../../src/exchange/copy/savedCopy.ts';
import { done, openTestLogbook } from '../../logbook/openTestLogbook.ts';

beforeEach(() => {
  const texts = new Map<string, string>();
  Object.assign(globalThis, {
    localStorage: {
      getItem: (key: string) => texts.get(key) ?? null,
      setItem: (key: string, text: string) => void texts.set(key, text),
    },
  });
});

type Phone = Awaited<ReturnType<typeof openTestLogbook>>;

async function startBike({ logbook, clock }: Phone, bikeId: string): Promise<number> {
  clock.nowMs += 5000;
  await done(logbook, { type: 'start-bike', bikeId, name: bikeId });
  return clock.nowMs;
}

async function save({ logbook }: Phone, whole = true): Promise<void> {
  const saved = savedCopy(logbook.now());
  for await (const _batch of saved.passing(logbook.copies.entries())) {
    // A copy reads each batch and writes it.
  }
  if (whole) saved.note();
}

describe('entries that no saved copy holds', () => {
  test('all of them before the first copy, since the first was written', async () => {
    const phone = await openTestLogbook();
    expect(await onlyHere(phone.logbook.copies)).toBeUndefined();
    const sinceMs = await startBike(phone, 'b1');
    await startBike(phone, 'b2');
    expect(await onlyHere(phone.logbook.copies)).toEqual({ entries: 2, sinceMs });
  });

  test('none after one was saved, and then those that came later', async () => {
    const phone = await openTestLogbook();
    await startBike(phone, 'b1');
    await save(phone);
    expect(await onlyHere(phone.logbook.copies)).toBeUndefined();
    const sinceMs = await startBike(phone, 'b2');
    expect(await onlyHere(phone.logbook.copies)).toEqual({ entries: 1, sinceMs });
  });

  test('none after the demo left with the last entry of the copy', async () => {
    const phone = await openTestLogbook();
    await startBike(phone, 'b1');
    await loadDemo(phone.logbook);
    await save(phone);
    phone.clock.nowMs += 5000;
    await phone.logbook.removeDemo();
    expect(await onlyHere(phone.logbook.copies)).toBeUndefined();
  });

  test('a copy that was cancelled on the way does not count', async () => {
    const phone = await openTestLogbook();
    await startBike(phone, 'b1');
    await save(phone, false);
    expect((await onlyHere(phone.logbook.copies))?.entries).toBe(1);
  });

  test('those of the demo are not counted, nor its removal', async () => {
    const phone = await openTestLogbook();
    await loadDemo(phone.logbook);
    expect(await onlyHere(phone.logbook.copies)).toBeUndefined();
    const sinceMs = await startBike(phone, 'b1');
    expect(await onlyHere(phone.logbook.copies)).toEqual({ entries: 1, sinceMs });
    phone.clock.nowMs += 5000;
    await phone.logbook.removeDemo();
    expect(await onlyHere(phone.logbook.copies)).toEqual({ entries: 1, sinceMs });
  });
});
