import { expect, test } from 'vitest';
import { correctableOf, draftAt, isAnswered, readCorrection } from '../../../src/drafts/correctable.ts';
import type { Command } from '../../../src/journal/commands.ts';
import { decide } from '../../../src/journal/decide.ts';
import { asItReads } from '../../../src/journal/effective.ts';
import type { Entry } from '../../../src/journal/entries.ts';
import { MemoryRows } from '../../../src/journal/memoryRows.ts';
import { entryHead, entryHeads, isKnownKind } from '../../../src/screens/history/entryHeads.ts';
import { Finder } from '../../../src/screens/history/finder.ts';
import { belongs, byDay, isOfSeveralPhones, isWrittenLate } from '../../../src/screens/history/timeline.ts';
import { entryFields } from '../../../src/words/history/entryFields.ts';
import { entrySentence } from '../../../src/words/history/entrySentence.ts';
import { entryOf, entryTypes, names } from '../words/history/everyEntry.ts';

const line = (entry: Entry, fixes: { reason: string; becomes: Record<string, unknown> | null }[] = []) => ({
  seq: 1,
  entry,
  now: asItReads(entry, fixes),
  fixes: fixes.map((fix) => ({ by: 'e9', atMs: 0, undo: false, ...fix })),
});
const tell = (entry: Entry) => entrySentence(entry, names);
const partsOf = (jointId: string) => (jointId === 'j1' ? ['p1', 'p2'] : []);

// IANA time zone database: at 23:30 UTC it is already the next day in Berlin, and not yet in Santiago.
test('a day is that of the zone an entry was written in', () => {
  const atMs = Date.UTC(2026, 4, 3, 23, 30);
  const zones = ['Europe/Berlin', 'Europe/Berlin', 'America/Santiago'];
  const rows = byDay(zones.map((zone) => line({ ...entryOf('note-added'), happenedAtMs: atMs, zone })));
  expect(rows.map((row) => (row.is === 'day' ? row.day : 'entry'))).toEqual([
    '4 May 2026',
    'entry',
    'entry',
    '3 May 2026',
    'entry',
  ]);
});

test.each([
  [{ sought: '' }, true],
  [{ sought: 'MAGPIE 5,2' }, true],
  [{ sought: 'ferry' }, false],
  [{ sought: '', group: 'joints' }, true],
  [{ sought: '', group: 'parts' }, false],
  [{ sought: '', jointId: 'j1' }, true],
  [{ sought: '', jointId: 'j2' }, false],
  [{ sought: '', partId: 'p2' }, true],
  [{ sought: '', partId: 'p9' }, false],
  [{ sought: '', bikeId: 'b2' }, false],
] as const)('a torque narrowed to %j is shown: %s', (narrowing, shown) => {
  expect(belongs(line(entryOf('torque-applied')), narrowing, partsOf, tell)).toBe(shown);
});

test('a corrected entry is found by its old reading, its new one and the reason', () => {
  const becomes = { applied: { value: 9, unit: 'N.m', typed: '9' } };
  const fixed = line(entryOf('torque-applied'), [{ reason: 'misread', becomes }]);
  for (const sought of ['5,2 n·m', '9 n·m', 'misread'])
    expect(belongs(fixed, { sought }, partsOf, tell)).toBe(true);
  expect(fixed.now).toMatchObject(becomes);
  expect(line(entryOf('torque-applied'), [{ reason: 'twice', becomes: null }]).now).toBeUndefined();
});

test.each(['kind-of-tomorrow', 'constructor', 'toString'])(
  'a line of the unknown kind %s is shown and kept',
  (type) => {
    const unknown = { ...entryOf('note-added'), type } as unknown as Entry;
    expect(entryHead(type).word).toMatch(/newer version/);
    expect(isKnownKind(type)).toBe(false);
    expect(entrySentence(unknown, names)).toMatch(/newer version/);
    expect(belongs(line(unknown), { sought: 'newer', group: 'notes' }, partsOf, tell)).toBe(true);
    expect(byDay([line(unknown)])).toHaveLength(2);
  },
);

test('a known kind in a shape of tomorrow says that it cannot be read, and its other fields are shown', () => {
  const odd = { ...entryOf('torque-applied'), applied: 5.2 } as unknown as Entry;
  expect(entrySentence(odd, names)).toMatch(/newer version/);
  expect(
    entryFields(odd, names)
      .map(({ text }) => text)
      .every(Boolean),
  ).toBe(true);
  expect(entryHead('bike-started').word).toBe(entryHeads['bike-started'].word);
});

test('late is what was written well after it happened', () => {
  expect(isWrittenLate({ writtenAtMs: 3_600_000, happenedAtMs: 0 })).toBe(true);
  expect(isWrittenLate({ writtenAtMs: 60_000, happenedAtMs: 0 })).toBe(false);
});

test('a value inside a mark is corrected without losing the rest of the mark', () => {
  const entry = entryOf('seal-marked');
  const read = readCorrection(entry, { 'mark.reading.pressure': { typed: '36', unit: '[psi]' } });
  expect(read).toEqual({
    ok: true,
    becomes: {
      mark: {
        mark: 'seated',
        dry: true,
        beadLine: 'even',
        reading: { pressure: { value: 36, unit: '[psi]', typed: '36' } },
      },
    },
  });
  expect(entry.mark).toMatchObject({ reading: { pressure: { typed: '2,5' } } });
});

test('what is no number is refused by its field, what was not touched is left out', () => {
  const entry = entryOf('torque-applied');
  expect(readCorrection(entry, { applied: { typed: 'five', unit: 'N.m' } })).toEqual({
    ok: false,
    field: 'applied',
    reason: 'not-a-number',
  });
  expect(readCorrection(entry, { applied: { typed: '', unit: 'N.m' } })).toMatchObject({ reason: 'empty' });
  const untouched = Object.fromEntries(
    correctableOf(entry).map((item) => [item.field, draftAt(entry, item)]),
  );
  expect(readCorrection(entry, untouched)).toEqual({ ok: true, becomes: {} });
});

test.each(entryTypes)('%s is offered for correction only where the journal takes one', (type) => {
  const entry = entryOf(type);
  const rows = new MemoryRows();
  rows.append(entry, []);
  const strikeOut: Command = { type: 'correct', entryId: entry.id, reason: 'a slip', becomes: null };
  const now = { nowMs: entry.writtenAtMs, zone: entry.zone, newId: () => 'e9' };
  const ruling = decide(rows, strikeOut, now);
  expect('refused' in ruling && ruling.refused === 'cannot-be-corrected').toBe(isAnswered(entry));
});

test.each(entryTypes)('%s is answered by a new entry or has only fields of its own to correct', (type) => {
  const entry = entryOf(type);
  const items = correctableOf(entry);
  if (isAnswered(entry)) expect(items).toEqual([]);
  for (const item of items) expect(draftAt(entry, item).typed).not.toMatch(/undefined|object/);
});

test('words found page by page are those found at once, and no line is read twice', () => {
  const all = Array.from({ length: 60 }, (_, at) =>
    line({
      ...entryOf('note-added'),
      words: `turn ${at % 7}`,
      happenedAtMs: -at * 5 * 3_600_000,
      zone: 'UTC',
    } as Entry),
  );
  let sentences = 0;
  const counting = (entry: Entry) => {
    sentences += 1;
    return tell(entry);
  };
  const finder = new Finder({ sought: 'turn 3' }, counting);
  const pages = [10, 20, 21, 60].map((end) => finder.in(all.slice(0, end), partsOf));
  const atOnce = byDay(all.filter((one) => belongs(one, { sought: 'turn 3' }, partsOf, tell)));
  expect(pages.at(-1)).toEqual(atOnce);
  expect(sentences).toBe(60);
  // A page without a find changes nothing that is shown.
  expect(pages[2]).toBe(pages[1]);
  // After a commit everything is read anew.
  const again = all.map((one) => ({ ...one }));
  expect(finder.in(again, partsOf)).toEqual(atOnce);
});

const onPhone = (phone?: string) => line({ ...entryOf('note-added'), ...(phone ? { phone } : {}) });

test.each([
  [[undefined, undefined], undefined, false],
  [[undefined, undefined], 'Bench', false],
  [[undefined, 'Bench'], 'Bench', false],
  [['Bench', 'Garage'], 'Bench', true],
  [['Garage'], 'Bench', true],
  [[undefined, 'Garage'], undefined, true],
])('lines written on %j, on the phone %j: of several phones %s', (phones, own, several) => {
  expect(isOfSeveralPhones(phones.map(onPhone), own)).toBe(several);
});
