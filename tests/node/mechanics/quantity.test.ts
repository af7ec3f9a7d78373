import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseNumber, parseTyped } from '../../../src/mechanics/quantity.ts';
import { type TorqueUnit, unitLabel } from '../../../src/mechanics/units.ts';

const torqueUnits: TorqueUnit[] = ['N.m', '[in_i].[lbf_av]', '[ft_i].[lbf_av]', 'kgf.cm'];

describe('parseNumber', () => {
  test.each([
    ['5,2', 5.2],
    ['5.2', 5.2],
    ['  7 ', 7],
    ['+7', 7],
    [',5', 0.5],
    ['5,', 5],
    ['007', 7],
    ['0', 0],
  ])('%j is %d', (text, value) => {
    expect(parseNumber(text)).toEqual({ ok: true, value, typed: text.trim() });
  });

  test.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['five', 'not-a-number'],
    ['5 6', 'not-a-number'],
    ['1 234', 'not-a-number'],
    ["1'234", 'not-a-number'],
    ['5..', 'two-separators'],
    ['1,234.5', 'two-separators'],
    ['1.234,5', 'two-separators'],
    ['1,234,567', 'two-separators'],
    ['.', 'not-a-number'],
    ['-', 'not-a-number'],
    ['NaN', 'not-a-number'],
    ['1e3', 'not-a-number'],
    ['0x10', 'not-a-number'],
    ['Infinity', 'not-finite'],
    ['-∞', 'not-finite'],
    ['9'.repeat(400), 'not-finite'],
    ['-5', 'negative'],
    ['−5', 'negative'],
  ])('%j is refused as %s', (text, reason) => expect(parseNumber(text)).toEqual({ ok: false, reason }));

  test('a length below zero where it may lie to either side, and nowhere else', () => {
    for (const typed of ['-0,5 mm', '− 0.5', ' −0.5 '])
      expect(parseTyped(typed, ['mm'], 'mm', 'allow')).toEqual({
        ok: true,
        quantity: { value: -0.5, unit: 'mm', typed: typed.trim() },
      });
    expect(parseTyped('-0.5', ['mm'], 'mm')).toEqual({ ok: false, reason: 'negative' });
  });
  test('below zero where it is allowed', () => {
    expect(parseNumber('−4,5', 'allow')).toEqual({ ok: true, value: -4.5, typed: '−4,5' });
  });
});

describe('parseTyped, a torque', () => {
  test.each([
    ['5,2 Nm', 5.2, 'N.m'],
    ['5.2N·m', 5.2, 'N.m'],
    ['5.2 N.m', 5.2, 'N.m'],
    ['5,2', 5.2, 'N.m'],
    ['44 in-lb', 44, '[in_i].[lbf_av]'],
    ['44 in lbs', 44, '[in_i].[lbf_av]'],
    ['44 lbf·in', 44, '[in_i].[lbf_av]'],
    ['44 inch pounds', 44, '[in_i].[lbf_av]'],
    ['3 ft lb', 3, '[ft_i].[lbf_av]'],
    ['3 FT-LBS', 3, '[ft_i].[lbf_av]'],
    ['3 foot-pounds', 3, '[ft_i].[lbf_av]'],
    ['50 kgcm', 50, 'kgf.cm'],
    ['50 kgf·cm', 50, 'kgf.cm'],
  ])('%j', (text, value, unit) => {
    expect(parseTyped(text, torqueUnits, 'N.m')).toEqual({
      ok: true,
      quantity: { value, unit, typed: text },
    });
  });

  test.each([
    ['', 'empty'],
    ['Nm', 'empty'],
    ['five Nm', 'not-a-number'],
    ['Infinity', 'not-finite'],
    ['5 furlong', 'unknown-unit'],
    ['5 bar', 'unit-of-another-kind'],
    ['5 mm', 'unit-of-another-kind'],
    ['-5 Nm', 'negative'],
    ['1,234.5 Nm', 'two-separators'],
  ])('%j is refused as %s', (text, reason) => {
    expect(parseTyped(text, torqueUnits, 'N.m')).toEqual({ ok: false, reason });
  });

  test('a unit this field does not take is refused even when it is a torque', () => {
    expect(parseTyped('50 kgcm', ['N.m'], 'N.m')).toEqual({ ok: false, reason: 'unit-of-another-kind' });
  });
});

describe('parseTyped, other quantities', () => {
  test.each([
    ['30 psi', ['bar', '[psi]'], 'bar', 30, '[psi]'],
    ['−4 °C', ['Cel', '[degF]'], 'Cel', -4, 'Cel'],
    ['-4', ['Cel', '[degF]'], '[degF]', -4, '[degF]'],
    ['7/8', ['mm'], 'mm', undefined, 'not-a-number'],
    ['1"', ['mm', '[in_i]'], 'mm', 1, '[in_i]'],
    ['2 inches', ['mm', '[in_i]'], 'mm', 2, '[in_i]'],
    ['4 miles', ['km', '[mi_i]'], 'km', 4, '[mi_i]'],
    ['20 lbs', ['N', '[lbf_av]'], 'N', 20, '[lbf_av]'],
    ['20 lbs', ['kg', '[lb_av]'], 'kg', 20, '[lb_av]'],
    ['2 fl. oz', ['mL', '[foz_us]'], 'mL', 2, '[foz_us]'],
    ['45°', ['deg', 'rad'], 'deg', 45, 'deg'],
  ] as const)('%j among %j', (text, allowed, fallback, value, unit) => {
    const parsed = parseTyped(text, allowed, fallback as never);
    if (value === undefined) expect(parsed).toEqual({ ok: false, reason: unit });
    else expect(parsed).toEqual({ ok: true, quantity: { value, unit, typed: text } });
  });
});

describe('properties', () => {
  test('whatever is typed, the answer is a finite number or a named reason', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const parsed = parseTyped(text, torqueUnits, 'N.m');
        if (parsed.ok) expect(Number.isFinite(parsed.quantity.value)).toBe(true);
        else expect(parsed.reason).toMatch(/^[a-z-]+$/);
      }),
    );
  });

  test('a number with the label of its unit reads back as itself', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99999 }), fc.constantFrom(...torqueUnits), (tenths, unit) => {
        const typed = `${tenths / 10} ${unitLabel[unit]}`;
        expect(parseTyped(typed, torqueUnits, 'N.m')).toEqual({
          ok: true,
          quantity: { value: tenths / 10, unit, typed },
        });
      }),
    );
  });
});
