import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { sheetLines } from '../../../src/documents/sheetLines.ts';
import { documentPage } from '../../../src/exchange/documentPage.ts';
import { type HandOver, handOverFiles } from '../../../src/exchange/handOver.ts';
import type { Entry } from '../../../src/journal/entries.ts';
import type { Logbook } from '../../../src/logbook.ts';
import { hostileEntries, PAYLOAD, poisoned } from '../../fixtures/hostileText.ts';
import { openTestLogbook } from '../logbook/openTestLogbook.ts';
import { archiveOf, content, opened, whole } from './aCopy.ts';
import { allEntries } from './entriesOfEveryKind.ts';

const entries = hostileEntries();

async function hostileLogbook(): Promise<Logbook> {
  const { logbook } = await openTestLogbook(Date.UTC(2027, 0, 1));
  await logbook.copies.takeIn(entries, () => {});
  return logbook;
}

async function handedOver(logbook: Logbook, bikeId: string): Promise<HandOver> {
  const built = await logbook.read('as-built', { bikeId, atMs: logbook.now() });
  const page = await logbook.read('history', { place: `b:${bikeId}`, limit: 2000 });
  const lines: Entry[] = page.lines.map(({ entry }) => entry).reverse();
  const called = () => PAYLOAD;
  return { built, entries: lines, zone: 'UTC', names: { bike: called, part: called, joint: called } };
}

/** Everything in a page that begins with a sign of markup and is none of the tags that a document is made of. */
const strangeIn = (page: string) =>
  page
    .replaceAll(
      /<!doctype html>|<\/?(html|meta|title|style|h[1-3]|p|b)( (class|lang|charset|http-equiv|name|content)="[^"<>]*")*>/g,
      '',
    )
    .match(/<.{0,40}/g);

test('every kind of entry has a field that takes any text, and each such field holds hostile text', () => {
  const counts = Object.fromEntries(allEntries.map((entry) => [entry.type, poisoned(entry).fields]));
  expect(Object.entries(counts).filter(([, fields]) => fields === 0)).toEqual([]);
  // Names, notes and reasons, and within a part, a joint, a torque as well.
  expect(Object.values(counts).reduce((sum, fields) => sum + fields, 0)).toBeGreaterThan(200);
});

describe('[K3] hostile text in every field', () => {
  test('of an archive comes back as it is, and its sheets hold no markup of it', async () => {
    const { entries: read } = await whole(await opened(await archiveOf(content(entries, []))));
    expect(read).toEqual(entries);
  });

  test('of a bike handed over is text in the page and no formula in the tables', async () => {
    const logbook = await hostileLogbook();
    const bikes = await logbook.read('bikes', {});
    expect(bikes.length).toBeGreaterThan(2);
    let hostile = 0;
    for (const { bikeId } of bikes) {
      const files = handOverFiles(await handedOver(logbook, bikeId), {
        prices: true,
        serials: true,
        places: true,
      });
      for (const [name, text] of Object.entries(files)) {
        expect(name).toMatch(/^[a-z0-9-]+\.(html|csv)$/);
        if (name.endsWith('.html')) {
          expect(strangeIn(text), `${bikeId} ${name}`).toBeNull();
          hostile += text.split('&lt;img src=x').length - 1;
          continue;
        }
        const cells = (parse(text, { relax_column_count: false }) as string[][]).flat();
        expect(cells.filter((cell) => /^[=+\-@\t\r]/.test(cell) && !/^-?[\d.]+$/.test(cell))).toEqual([]);
        hostile += cells.filter((cell) => cell.includes('<script>')).length;
      }
    }
    expect(hostile).toBeGreaterThan(300);
  });

  test('of a build sheet is text, names of parts and joints included', async () => {
    const logbook = await hostileLogbook();
    for (const { bikeId } of await logbook.read('bikes', {})) {
      const { built, names } = await handedOver(logbook, bikeId);
      const page = documentPage(sheetLines(built, { zone: 'UTC', names }));
      expect(page).toContain('&lt;img src=x');
      expect(strangeIn(page)).toBeNull();
    }
  });
});
