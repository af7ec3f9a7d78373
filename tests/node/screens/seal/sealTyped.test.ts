import { describe, expect, test } from 'vitest';
import { noSealDraft, readingTyped } from '../../../../src/drafts/sealDraft.ts';
import type { SealRow } from '../../../../src/journal/rows.ts';
import { pressurePoints } from '../../../../src/practice/seal/pressurePoints.ts';

const units = { pressure: 'bar', temperature: 'Cel' } as const;

describe('a reading as typed', () => {
  test('a decimal comma and the very characters stay', () => {
    expect(readingTyped({ ...noSealDraft, pressure: '2,35' }, units)).toEqual({
      ok: true,
      reading: { pressure: { value: 2.35, unit: 'bar', typed: '2,35' } },
      empty: false,
    });
  });

  test('below zero is a key of its own', () => {
    const typed = readingTyped({ ...noSealDraft, pressure: '2', temperature: '4', below: true }, units);
    expect(typed).toMatchObject({ ok: true, reading: { temperature: { value: -4, unit: 'Cel' } } });
  });

  test('what cannot be taken names its field', () => {
    expect(readingTyped({ ...noSealDraft, pressure: ',' }, units)).toEqual({ ok: false, wrong: 'pressure' });
    expect(readingTyped({ ...noSealDraft, temperature: '.' }, units)).toEqual({
      ok: false,
      wrong: 'temperature',
    });
  });

  test('a gauge alone is no reading', () => {
    expect(readingTyped({ ...noSealDraft, gauge: ' floor pump ' }, units)).toEqual({
      ok: true,
      reading: { gauge: 'floor pump' },
      empty: true,
    });
  });
});

describe('pressures over time', () => {
  const at = (minutes: number, mark: object) =>
    ({ ...mark, entryId: String(minutes), atMs: minutes * 60_000 }) as SealRow['marks'][number];
  const seated = (minutes: number, value: number) =>
    at(minutes, {
      mark: 'seated',
      dry: true,
      beadLine: 'even',
      reading: { pressure: { value, unit: 'bar', typed: '' } },
    });
  const read = (minutes: number, value: number, unit: 'bar' | '[psi]') =>
    at(minutes, { mark: 'reading', reading: { pressure: { value, unit, typed: '' } } });

  test('begin with the last seating and stand in one unit (29.0075 psi are 2 bar)', () => {
    const marks = [seated(0, 3), read(10, 2.9, 'bar'), seated(60, 2.5), read(90, 29.0075, '[psi]')];
    expect(pressurePoints(marks, 'bar')).toEqual({
      points: [
        { x: 0, y: 2.5 },
        { x: 30, y: 2 },
      ],
      xLabel: 'minutes',
    });
  });

  test.each([
    [170, 'minutes'],
    [60 * 24, 'hours'],
    [60 * 24 * 7, 'days'],
  ])('after %d minutes they are drawn over %s', (minutes, xLabel) => {
    expect(pressurePoints([seated(0, 2.5), read(minutes, 2.4, 'bar')], 'bar').xLabel).toBe(xLabel);
  });
});
