import 'fake-indexeddb/auto';
import { parse } from 'csv-parse/sync';
import { unzipSync } from 'fflate';
import { beforeAll, describe, expect, test } from 'vitest';
import { type HandOver, handOverFiles, writeHandOver } from '../../../src/exchange/handOver.ts';
import type { GoesAlong } from '../../../src/exchange/tables/leavingOut.ts';
import type { Entry } from '../../../src/journal/entries.ts';
import { builtBike, circumstances } from '../documents/builtBike.ts';
import { done } from '../logbook/openTestLogbook.ts';
import { memory } from './aCopy.ts';

const everything: GoesAlong = { prices: true, serials: true, places: true };
let bike: HandOver;

/** Texts that must not be left over, one of each kind hidden in a note as well. */
beforeAll(async () => {
  const { logbook, clock, asBuilt } = await builtBike();
  const bikeId = 'b1';
  await done(logbook, { type: 'start-bike', bikeId: 'b2', name: 'Secret donor' });
  await done(logbook, {
    type: 'add-part',
    partId: 'p9',
    place: { on: 'bike', bikeId: 'b2' },
    label: 'P-009',
    name: '=HYPERLINK("x")',
    kind: 'saddle',
    serial: 'ZX-99817',
    origin: 'bought-used',
    originWords: 'Kowalski, Mill Lane 4',
    note: 'paid 45 EUR, $20 for postage, 3,50 € glue; <img src=x onerror=alert(1)>',
  });
  await done(logbook, { type: 'move-part', partId: 'p9', to: { on: 'bike', bikeId } });
  await done(logbook, {
    type: 'add-note',
    bikeId,
    words: 'ZX-99817 fits; asked at Kowalski, Mill Lane 4; worth CHF 120.-',
  });
  const built = await asBuilt(clock.nowMs + 1);
  const page = await logbook.read('history', { place: `b:${bikeId}`, limit: 500 });
  const entries: Entry[] = page.lines.map(({ entry }) => entry).reverse();
  const bikes: Record<string, string> = { b1: 'Magpie', b2: 'Secret donor' };
  bike = { built, entries, zone: 'UTC', names: { ...circumstances.names, bike: (id) => bikes[id] } };
});

const whole = (along: GoesAlong): string => Object.values(handOverFiles(bike, along)).join('\n');

describe('one bike handed over', () => {
  test('as a page and three tables that a kept parser reads', () => {
    const files = handOverFiles(bike, everything);
    expect(Object.keys(files)).toEqual(['magpie.html', 'parts.csv', 'joints.csv', 'history.csv']);
    const [joint] = parse(files['joints.csv'] ?? '', { columns: true }) as Record<string, string>[];
    expect(joint).toMatchObject({
      Joint: 'Stem on steerer',
      'Target (N·m)': '5',
      'Applied (N·m)': '5.2',
      'Applied, as entered': '5,2 N·m',
      Bolts: '2',
      Passes: '2',
    });
    const history = parse(files['history.csv'] ?? '', { columns: true }) as Record<string, string>[];
    expect(history).toHaveLength(bike.entries.length);
    const parts = parse(files['parts.csv'] ?? '', { columns: true }) as Record<string, string>[];
    expect(parts.find(({ Label }) => Label === 'P-009')?.['Name']).toBe(`'=HYPERLINK("x")`);
  });

  test.each([
    ['serials', ['ZX-99817', '4711']],
    ['places', ['Kowalski', 'Mill Lane', 'Secret donor']],
    ['prices', ['45 EUR', '$20', '3,50 €', 'CHF 120']],
  ] as const)('without %s: they stand in no text, notes and history included', (what, texts) => {
    const all = whole(everything);
    const without = whole({ ...everything, [what]: false });
    for (const text of texts) {
      expect(all).toContain(text);
      expect(without).not.toContain(text);
    }
    expect(without).toContain('left out');
  });

  test('markup in a note stays text', () => {
    const page = handOverFiles(bike, everything)['magpie.html'] ?? '';
    expect(page).toContain('&lt;img src=x onerror=alert(1)&gt;');
    expect(page.match(/<(img|script|svg|iframe)/i)).toBeNull();
  });

  test('as one file', async () => {
    const kept = memory();
    const files = handOverFiles(bike, everything);
    await writeHandOver(files, kept.stream, 1_777_000_000_000);
    const inside = unzipSync(new Uint8Array(await kept.blob().arrayBuffer()));
    expect(Object.keys(inside)).toEqual([...Object.keys(files), 'checksums.sha256']);
    expect(new TextDecoder().decode(inside['parts.csv'])).toBe(files['parts.csv']);
  });

  test('a bike that was not there yet has no files', () => {
    const built = { ...bike.built, bike: undefined };
    expect(handOverFiles({ ...bike, built }, everything)).toEqual({});
  });
});
