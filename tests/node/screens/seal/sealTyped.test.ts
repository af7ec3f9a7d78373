import { describe, expect, test } from 'vitest';
import { noSealDraft, readingTyped } from '../../../../src/drafts/sealDraft.ts';

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
