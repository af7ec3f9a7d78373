import { describe, expect, test } from 'vitest';
import { emptyChange, readChange } from '../../../src/drafts/changeDraft.ts';
import { draftOfFace, emptyFace, faceOfDraft, faceState } from '../../../src/drafts/faceDraft.ts';
import {
  aboutOfDraft,
  changedAbout,
  draftOfPart,
  emptyPart,
  saidAbout,
  troubleOf,
} from '../../../src/drafts/partDraft.ts';
import { readSize } from '../../../src/drafts/sizeDraft.ts';
import type { PartRow } from '../../../src/journal/rows.ts';
import { nextLabel } from '../../../src/practice/part/nextLabel.ts';
import { shelfRows } from '../../../src/practice/part/shelfRows.ts';
import { stays } from '../../../src/practice/release/stays.ts';

const part = (change: Partial<PartRow> = {}): PartRow => ({
  key: 'part/p1',
  is: 'part',
  partId: 'p1',
  label: 'P-001',
  name: 'Fork',
  kind: 'fork',
  origin: 'found',
  place: { on: 'shelf' },
  addedAtMs: 0,
  lastMs: 0,
  lastId: '',
  changes: [],
  moves: [],
  ...change,
});

describe('the next label', () => {
  test.each([
    [['P-013', 'P-002'], 'P-014'],
    [[], 'P-001'],
    [['', 'red'], 'P-001'],
    [['F9', 'F10', 'P-300'], 'F11'],
    [['P-999'], 'P-1000'],
  ])('after %j it is %s', (labels, next) => {
    expect(nextLabel(labels)).toBe(next);
  });
});

describe('a size as it was typed', () => {
  // Steerers are 25.4, 28.6 and 31.8 mm: shop table of headset sizes.
  test.each([
    ['28,6', 'mm', 'good', undefined],
    ['286', 'mm', 'doubt', '28.6'],
    ['286,0', 'mm', 'doubt', '28,6'],
    ['1 1/8', '[in_i]', 'good', undefined],
    ['1.125', 'mm', 'doubt', '28.575'],
    ['fat', 'mm', 'wrong', undefined],
    ['1.2.3', 'mm', 'wrong', undefined],
    ['', 'mm', 'empty', undefined],
  ] as const)('%s %s is %s', (typed, unit, is, suggested) => {
    const read = readSize('steerer', 'diameterMm', { typed, unit });
    expect(read.is).toBe(is);
    if (read.is === 'doubt') expect(read.suggestion?.typed).toBe(suggested);
    if (read.is === 'doubt' || read.is === 'good') {
      expect(read.measured.typed.startsWith(typed)).toBe(true);
      expect(read.measured.uncertaintyMm).toBeGreaterThan(0);
    }
  });

  test('a doubtful size is kept as typed, a printed one as a figure of the maker, and both come back', () => {
    const face = faceOfDraft({
      ...emptyFace('f1', 'steerer'),
      sizes: {
        diameterMm: { typed: '286', unit: 'mm' },
        lengthMm: { typed: '1', unit: '[in_i]', printed: true },
      },
    });
    expect(face.measured['diameterMm']).toMatchObject({ value: 286, typed: '286', unit: 'mm' });
    // One inch is 25.4 mm, exact by international agreement.
    expect(face.nominal['lengthMm']).toBe(25.4);
    expect(faceOfDraft(draftOfFace(face))).toEqual(face);
  });

  test('an untouched face says so', () => {
    expect(faceState(emptyFace('f1', 'steerer'))).toBe('not measured');
  });
});

describe('the form of a part', () => {
  test('name and kind are enough', () => {
    expect(troubleOf(emptyPart, undefined)).toEqual({ name: expect.any(String), kind: expect.any(String) });
    expect(troubleOf({ ...emptyPart, name: 'Fork', kind: 'fork' }, undefined)).toEqual({});
    expect(troubleOf({ ...emptyPart, name: 'Fork', kind: 'fork' }, 'Stem')).toEqual({
      label: expect.stringContaining('Stem'),
    });
    const about = aboutOfDraft({ ...emptyPart, name: ' Fork ', kind: 'fork' }, 'P-002', []);
    expect(saidAbout(about)).toEqual({ label: 'P-002', name: 'Fork', kind: 'fork', origin: 'unknown' });
  });

  test.each([
    ['mass', '820 g', 'digits'],
    ['mass', '0', 'digits'],
    ['mass', '99999999', '100 kg'],
    ['km', '-5', 'digits'],
    ['km', '99999999', 'million'],
  ] as const)('%s %s is told at its field', (field, typed, word) => {
    const draft = { ...emptyPart, name: 'Fork', kind: 'fork' };
    expect(troubleOf({ ...draft, [field]: typed }, undefined)).toEqual({
      [field]: expect.stringContaining(word),
    });
    expect(troubleOf({ ...draft, [field]: '820,5' }, undefined)).toEqual({});
  });

  test('a part opened and closed again has not changed; what is emptied is cleared', () => {
    const row = part({ serial: '47', kmBefore: 'unknown', massG: 820 });
    const draft = draftOfPart(row);
    expect(changedAbout(row, aboutOfDraft(draft, 'P-001', []))).toEqual({});
    expect(changedAbout(row, aboutOfDraft({ ...draft, serial: '' }, 'P-001', []))).toEqual({
      cleared: ['serial'],
    });
    // Said empty by an older version, empty now: the same.
    expect(changedAbout(part({ serial: '' }), aboutOfDraft(draftOfPart(part()), 'P-001', []))).toEqual({});
    expect(changedAbout(row, aboutOfDraft({ ...draft, mass: '', kmUnknown: false }, 'P-001', []))).toEqual({
      cleared: ['massG', 'kmBefore'],
    });
    const front = part({
      position: 'front',
      faces: [faceOfDraft({ ...emptyFace('f1', 'steerer'), notes: 'plain' })],
    });
    expect(
      changedAbout(front, aboutOfDraft({ ...draftOfPart(front), position: '', faces: [] }, 'P-001', [])),
    ).toEqual({ cleared: ['faces', 'position'] });
    expect(
      changedAbout(row, aboutOfDraft({ ...draft, kmUnknown: false, km: '1200,5' }, 'P-001', [])),
    ).toEqual({ kmBefore: 1200.5 });
  });
});

test('a part is shown place by place, newest first, with the reason it left', () => {
  const bike = { on: 'bike' as const, bikeId: 'b1' };
  const shelf = { on: 'shelf' as const };
  const moves = [
    { from: bike, to: shelf, atMs: 20, entryId: 'e2', why: 'sold bike' },
    { from: shelf, to: bike, atMs: 10, entryId: 'e1' },
  ];
  expect(stays(part({ place: shelf, addedAtMs: 5, moves }))).toEqual([
    { place: shelf, fromMs: 20 },
    { place: bike, fromMs: 10, untilMs: 20, why: 'sold bike' },
    { place: shelf, fromMs: 5, untilMs: 10 },
  ]);
});

test('a change that cannot be undone wants both sizes and says what is missing', () => {
  expect(readChange(emptyChange, 'mm', [])).toMatchObject({ ok: false });
  const typed = {
    cut: 'cold-set' as const,
    where: 'ends',
    before: '120',
    after: '130,0',
    how: 'rod',
    why: 'hub',
  };
  const full = { ...emptyChange, ...typed, inspectWords: 'cracks' };
  const read = readChange(full, 'mm', ['ph1']);
  expect(read).toMatchObject({
    ok: true,
    change: {
      before: { value: 120, unit: 'mm', typed: '120' },
      after: { value: 130, typed: '130,0' },
      inspection: { everyDays: 90, everyKm: 500, words: 'cracks' },
      photoIds: ['ph1'],
    },
  });
  expect(readChange({ ...full, after: '12 cm', before: '120' }, 'mm', [])).toMatchObject({
    ok: false,
    trouble: { after: 'Before and after are the same.' },
  });
  for (const left of ['99999999', '400 cm'])
    expect(readChange({ ...full, left }, 'mm', [])).toMatchObject({
      ok: false,
      trouble: { left: expect.stringContaining('3 m') },
    });
  // What stands in one of two fields is not dropped because the other would do.
  for (const everyDays of ['often', '-9', '0', '99999'])
    expect(readChange({ ...full, everyDays }, 'mm', [])).toMatchObject({
      ok: false,
      trouble: { everyDays: expect.stringContaining('3660') },
    });
  expect(readChange({ ...full, everyDays: '' }, 'mm', [])).toMatchObject({
    ok: true,
    change: { inspection: { everyKm: 500 } },
  });
  expect(readChange({ ...full, inspect: false, everyDays: 'often' }, 'mm', [])).toMatchObject({ ok: true });
});

test('the shelf stands in groups, labels in the order of their numbers, found by every word', () => {
  const parts = [
    part({ partId: 'a', label: 'P-10', name: 'Stem', kind: 'stem' }),
    part({ partId: 'b', label: 'P-9', name: 'Old fork' }),
    part({ partId: 'c', label: 'P-1', place: { on: 'sold' } }),
    part({ partId: 'd', label: 'P-2', place: { on: 'quarantine', why: 'dent' } }),
    part({ partId: 'e', label: 'P-3', place: { on: 'bike', bikeId: 'b1' } }),
  ];
  const told = (rows: ReturnType<typeof shelfRows>) =>
    rows.map((row) => (row.is === 'heading' ? `${row.group} ${row.count}` : row.part.partId));
  expect(told(shelfRows(parts, '', undefined, String))).toEqual([
    'shelf 2',
    'b',
    'a',
    'quarantine 1',
    'd',
    'gone 1',
    'c',
  ]);
  expect(told(shelfRows(parts, 'OLD fork', undefined, String))).toEqual(['shelf 1', 'b']);
  expect(told(shelfRows(parts, '', 'stem', String))).toEqual(['shelf 1', 'a']);
  expect(shelfRows(parts, 'nothing', undefined, String)).toEqual([]);
});
