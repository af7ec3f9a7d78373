import { describe, expect, test } from 'vitest';
import type { Face } from '../../../../src/fit/faces/face.ts';
import { sealCeiling, withSealant } from '../../../../src/fit/tyreCeiling.ts';
import { sealantHint } from '../../../../src/practice/seal/tyreOnRim.ts';
import { atMost } from '../../../../src/words/atMost.ts';

const face = (
  kind: Face['kind'],
  nominal: Face['nominal'],
  traits: Record<string, string> = {},
): { faces: Face[] } => ({
  faces: [{ faceId: kind, kind, standard: null, nominal, measured: {}, traits }],
});
const sizes = { widthMm: 47, beadSeatMm: 584 };
const rim = (maxPressureBar?: number, bead = 'hooked') =>
  face(
    'rim-seat',
    { beadSeatMm: 584, ...(maxPressureBar === undefined ? {} : { maxPressureBar }) },
    { bead },
  );
const tyre = (nominal: Face['nominal'], traits: Record<string, string> = {}) =>
  face('tyre-bead', nominal, traits);

describe('the most a tyre on its rim may see', () => {
  test.each([
    [
      'the lower of two printed figures (common practice, no source)',
      [tyre({ ...sizes, maxPressureBar: 3.5 }, { tubeless: 'yes', run: 'sealant' }), rim(4)],
      3.5,
    ],
    [
      'the lower of two, the rim this time (common practice, no source)',
      [tyre({ ...sizes, maxPressureBar: 4.5 }, { tubeless: 'yes', run: 'sealant' }), rim(3.8)],
      3.8,
    ],
    [
      '5 bar on straight walls (a tyre maker’s page)',
      [tyre({ ...sizes, maxPressureBar: 6 }, { tubeless: 'yes' }), rim(7, 'straight')],
      5,
    ],
    [
      '40 psi, cut to 2.75 bar, for sealant in a tyre not marked for it (a workshop page)',
      [tyre({ ...sizes, maxPressureBar: 3.5 }, { tubeless: 'no', run: 'sealant' }), rim(4)],
      2.75,
    ],
    ['the tyre alone where the rim says nothing', [tyre({ maxPressureBar: 3.5 }), rim()], 3.5],
    ['the rim alone where the tyre says nothing', [tyre(sizes), rim(4)], 4],
  ])('%s', (_, parts, ceilingBar) => {
    expect(sealCeiling(parts)).toMatchObject({ ok: true, ceilingBar });
  });

  test('nothing printed gives no figure', () => {
    expect(sealCeiling([])).toEqual({ ok: false, reason: 'nothing-printed' });
    expect(sealCeiling([tyre(sizes), rim()])).toEqual({ ok: false, reason: 'nothing-printed' });
  });

  test('a tyre not marked tubeless on straight walls gets no pressure at all (a tyre maker’s page)', () => {
    expect(
      sealCeiling([tyre({ ...sizes, maxPressureBar: 4 }, { tubeless: 'no' }), rim(4, 'straight')]),
    ).toEqual({ ok: false, reason: 'straight-side-needs-a-tubeless-tyre' });
  });

  // 1 bar = 14.5038 psi: 2.75 bar is 39.88 psi.
  test.each([
    [2.75, '[psi]', '39 psi'],
    [2.75, 'kPa', '275 kPa'],
    [3.5, 'bar', `${(3.5).toLocaleString()} bar`],
  ] as const)('%s bar in %s is never rounded up: %s', (bar, unit, text) => {
    expect(atMost(bar, unit)).toBe(text);
  });
});

describe('sealant for a size (published doses: 28-622 takes 50 mL, a top-up half of it)', () => {
  const road = [face('tyre-bead', { widthMm: 28, beadSeatMm: 622 }, { tubeless: 'yes' })];

  test('first fill and top-up', () => {
    expect(sealantHint(road, false)?.mid).toBeCloseTo(50, 0);
    expect(sealantHint(road, true)?.mid).toBeCloseTo(25, 0);
  });

  test('the bead seat of the rim serves where the tyre’s is missing', () => {
    const parts = [
      face('tyre-bead', { widthMm: 28 }, { tubeless: 'yes' }),
      face('rim-seat', { beadSeatMm: 622 }),
    ];
    expect(sealantHint(parts, false)).toEqual(sealantHint(road, false));
  });

  test('no width, no hint', () => {
    expect(sealantHint([face('tyre-bead', { beadSeatMm: 622 })], false)).toBeUndefined();
  });

  test('only a tyre said to run with a tube does without', () => {
    expect(withSealant([])).toBe(true);
    expect(withSealant([tyre(sizes, { run: 'sealant' })])).toBe(true);
    expect(withSealant([tyre(sizes, { run: 'tube' })])).toBe(false);
  });
});
