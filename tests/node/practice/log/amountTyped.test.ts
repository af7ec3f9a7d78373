import { expect, test } from 'vitest';
import { amountTyped } from '../../../../src/practice/log/amountTyped.ts';

const mm = (value: number, typed: string) => ({ value, unit: 'mm', typed });
const inch = (value: number, typed: string) => ({ value, unit: '[in_i]', typed });

test.each([
  ['2 mm off', { amount: mm(2, '2 mm') }],
  ['2', { amount: mm(2, '2') }],
  ['2mm', { amount: mm(2, '2mm') }],
  ['2,5 mm off', { amount: mm(2.5, '2,5 mm') }],
  ['0.5', { amount: mm(0.5, '0.5') }],
  ['about 1 mm', { amount: mm(1, '1 mm') }],
  ['by 3 mm', { amount: mm(3, '3 mm') }],
  ['2 cm shorter', { amount: { value: 2, unit: 'cm', typed: '2 cm' } }],
  ['0.25 in', { amount: inch(0.25, '0.25 in') }],
  ['10 mm wider', { amount: mm(10, '10 mm') }],
  ['48 to 46', { before: mm(48, '48'), after: mm(46, '46') }],
  ['48 to 46 mm', { before: mm(48, '48 mm'), after: mm(46, '46 mm') }],
  ['from 120 mm to 130 mm', { before: mm(120, '120 mm'), after: mm(130, '130 mm') }],
  ['9.5 → 10', { before: mm(9.5, '9.5'), after: mm(10, '10') }],
  ['9.5->10', { before: mm(9.5, '9.5'), after: mm(10, '10') }],
  ['1 to 0.5 in', { before: inch(1, '1 in'), after: inch(0.5, '0.5 in') }],
])('%s', (typed, size) => {
  expect(amountTyped(typed, 'mm')).toEqual({ ok: true, size });
});

test('a figure alone is in the unit of the settings', () => {
  expect(amountTyped('2', '[in_i]')).toEqual({ ok: true, size: { amount: inch(2, '2') } });
});

test.each([
  ['', /Enter a size/],
  ['a bit', /Enter a size/],
  ['2 to', /Enter a size/],
  ['48 to 46 to 44', /Enter a size/],
  ['2 kg', /Enter a size/],
  ['-2', /Enter a size/],
  ['1,2,3', /Enter a size/],
  ['0', /more than 0/],
  ['46 to 46.0 mm', /the same/],
  ['4 m', /Enter a size/],
  ['4000', /Longer than 3 m/],
  ['4000 to 3999', /Longer than 3 m/],
])('refused: %s', (typed, why) => {
  expect(amountTyped(typed, 'mm')).toEqual({ ok: false, why: expect.stringMatching(why) });
});
