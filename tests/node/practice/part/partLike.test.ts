import { expect, test } from 'vitest';
import type { PartRow } from '../../../../src/journal/rows.ts';
import { partLike } from '../../../../src/practice/part/partLike.ts';

const tyre = {
  ...{ partId: 'p1', label: 'P-013', name: 'Tyre, 47-584', kind: 'tyre', origin: 'bought', serial: 'A1' },
  ...{ condition: 'cut in the wall', kmBefore: 900, massG: 610, photoIds: ['x'], position: 'front' },
  faces: [
    {
      ...{ faceId: 'bead', kind: 'tyre-bead', standard: '584', nominal: { diameterMm: 584 } },
      measured: { widthMm: { value: 46.4, unit: 'mm', typed: '46.4' } },
      notes: 'bulges',
    },
    {
      ...{ faceId: 'odd', kind: 'tyre-tread', standard: null, nominal: {} },
      measured: { heightMm: { value: 9, unit: 'mm', typed: '9' } },
    },
  ],
} as unknown as PartRow;

test('the example: the name, kind and standards go over to the second part', () => {
  expect(partLike(tyre, 'P-014')).toEqual({
    ...{ label: 'P-014', name: 'Tyre, 47-584', kind: 'tyre', origin: 'bought', massG: 610 },
    faces: [
      { faceId: 'bead', kind: 'tyre-bead', standard: '584', nominal: { diameterMm: 584 }, measured: {} },
    ],
  });
});

test('what belongs to the first stays with it: serial, wear, photos, place in the bike, measurements', () => {
  const text = JSON.stringify(partLike(tyre, 'P-014'));
  for (const own of ['A1', 'cut in', '900', '"x"', 'front', '46.4', 'bulges'])
    expect(text).not.toContain(own);
});
