import { describe, expect, test } from 'vitest';
import { changedMeanwhile, editOf, formOf, merged, withTyped } from '../../../src/drafts/edit.ts';
import { aboutOfDraft, changedAbout, draftOfPart } from '../../../src/drafts/partDraft.ts';
import type { PartRow } from '../../../src/journal/rows.ts';

test('examples of the docstrings', () => {
  expect(merged({ a: 1, b: 1 }, { a: 1, b: 2 }, { a: 3, b: 1 })).toEqual({ a: 3, b: 2 });
  expect(formOf({ name: 'Fork', note: 'new' }, undefined)).toEqual({ name: 'Fork', note: 'new' });
  expect(withTyped({ name: 'Fork' }, undefined, { name: 'Fork' })).toBeUndefined();
  expect(changedMeanwhile({ name: 'Fork' }, undefined)).toEqual([]);
  expect(editOf({ began: { name: 'Fork' }, typed: {} })?.began).toEqual({ name: 'Fork' });
});

const stem = {
  ...{
    key: 'part/p',
    is: 'part',
    partId: 'p',
    lastMs: 1,
    group: 'part@b',
    place: { on: 'bike', bikeId: 'b' },
  },
  ...{ label: 'P-1', name: 'Stem', kind: 'stem', origin: 'found', serial: '', changes: [], places: [] },
} as unknown as PartRow;
const face = (faceId: string, typed: string) => ({
  ...{ faceId, kind: 'bar-clamp' as const, standard: null, nominal: {} },
  measured: { diameterMm: { value: Number(typed), unit: 'mm' as const, typed, uncertaintyMm: 0.05 } },
});

describe('[E1] an edit that was left and taken up again', () => {
  test('clears none of the facts that were written down elsewhere in between', () => {
    const edit = withTyped(draftOfPart(stem), undefined, { note: 'four bolts' });
    const later: PartRow = { ...stem, condition: 'cracked at the clamp', serial: '208', massG: 143 };
    const form = formOf(draftOfPart(later), JSON.parse(JSON.stringify(edit)));
    expect(form).toMatchObject({ note: 'four bolts', condition: 'cracked at the clamp', mass: '143' });
    expect(changedAbout(later, aboutOfDraft(form, 'P-1', []))).toEqual({ note: 'four bolts' });
  });

  test('says which fields were changed since it began, and which of them it would replace', () => {
    const edit = withTyped(draftOfPart(stem), undefined, { serial: '209' });
    const later = draftOfPart({ ...stem, serial: '208', condition: 'cracked' });
    expect(changedMeanwhile(later, edit)).toEqual([
      { field: 'serial', now: '208', replaced: true },
      { field: 'condition', now: 'cracked', replaced: false },
    ]);
  });

  test('goes on saying so after more was typed', () => {
    const edit = withTyped(draftOfPart(stem), undefined, { serial: '209' });
    const later = draftOfPart({ ...stem, serial: '208' });
    const more = withTyped(later, edit, { serial: '2090' });
    expect(changedMeanwhile(later, more)).toEqual([{ field: 'serial', now: '208', replaced: true }]);
  });

  test('keeps a size measured elsewhere beside a size typed here', () => {
    const began = { ...stem, faces: [face('upper', '31.8'), face('lower', '28.6')] } as PartRow;
    const draft = draftOfPart(began);
    const typed = draft.faces.map((one) =>
      one.faceId === 'upper'
        ? { ...one, sizes: { diameterMm: { typed: '31.7', unit: 'mm' as const } } }
        : one,
    );
    const edit = withTyped(draft, undefined, { faces: typed });
    const later = draftOfPart({ ...began, faces: [face('upper', '31.8'), face('lower', '28.5')] } as PartRow);
    expect(formOf(later, edit).faces.map(({ sizes }) => sizes['diameterMm']?.typed)).toEqual([
      '31.7',
      '28.5',
    ]);
  });
});

test('a field brought back to what is known is no edit any more', () => {
  const edit = withTyped({ name: 'Fork', note: '' }, undefined, { note: 'x' });
  expect(withTyped({ name: 'Fork', note: '' }, edit, { note: '' })).toBeUndefined();
});

test('what is no edit is none', () => {
  for (const stored of [undefined, null, 'x', { name: 'Fork' }, { began: {}, typed: { name: 'Fork' } }])
    expect(editOf(stored)).toBeUndefined();
});
