import { describe, expect, test } from 'vitest';
import { torqueNm } from '../../../../src/mechanics/units.ts';
import { amongBands, bandsFor, torqueBands } from '../../../../src/standards/screws/torqueBands.ts';

test('examples', () => {
  expect(bandsFor('pedal').length).toBe(1);
  expect(amongBands('bar-clamp', 60)).toBe('above-all');
});

// The manuals print inch-pounds; our newton metres must be those, not somebody's conversion of them.
describe('bands printed in in·lbf', () => {
  test.each([
    ['bar-clamp', 'utility, M6 to M8', 174, 260, 'bicycle manual, torque page'],
    ['stem-steerer', 'older, steel', 120, 144, 'bicycle manual, torque page'],
    ['front-axle', 'nuts, 5/16 and 3/8 in', 180, 240, 'bicycle manual 771343 p. 36'],
    ['rear-axle', 'nuts, 3/8 in', 240, 300, 'bicycle manual, 7th edition p. 20'],
    ['bottom-bracket', 'threaded cups', 300, 360, 'shop torque list, which misprints 300 in·lbf as 32.9 N·m'],
  ] as const)('%s, %s: %d to %d (%s)', (joint, variant, lo, hi, _source) => {
    const row = bandsFor(joint).find((candidate) => candidate.variant === variant)!;
    expect(Math.abs(row.loNm - torqueNm(lo, '[in_i].[lbf_av]'))).toBeLessThan(0.06);
    expect(Math.abs(row.hiNm - torqueNm(hi, '[in_i].[lbf_av]'))).toBeLessThan(0.06);
  });
});

test.each([
  ['bar-clamp', 5, 'inside'],
  ['bar-clamp', 7.5, 'between'],
  ['bar-clamp', 3, 'below-all'],
  ['pedal', 60, 'above-all'],
  ['spokes', 5, 'no-band'],
] as const)('%s at %d N·m: %s', (joint, nm, place) => expect(amongBands(joint, nm)).toBe(place));

test.each([0, -5, Number.NaN])('%d N·m is refused', (nm) => {
  expect(() => amongBands('pedal', nm)).toThrow('nm');
});

test('strength C is never called seen, and a seen band never C', () => {
  for (const row of torqueBands) {
    expect(row.strength === 'C', `${row.joint} ${row.variant}`).toBe(row.known !== 'seen');
    expect(row.loNm).toBeGreaterThan(0);
    expect(row.hiNm).toBeGreaterThan(row.loNm);
  }
});
test('a joint names each of its variants once', () => {
  const names = torqueBands.map((row) => `${row.joint}/${row.variant}`);
  expect(new Set(names).size).toBe(names.length);
});
