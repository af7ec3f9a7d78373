import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readDimension } from '../../../../src/fit/faces/readDimension.ts';
import { faceKindIds, faceKinds } from '../../../../src/standards/faces/faceKinds.ts';

describe('what people type', () => {
  test('example of the docstring', () => {
    expect(readDimension('steerer', 'diameterMm', '286')).toEqual({
      ok: false,
      reason: 'decimal-point-slipped',
      suggestion: 28.6,
      range: [20, 39],
    });
  });

  test.each([
    ['a point', '28.6', 28.6, 'mm'],
    ['a comma', '28,6', 28.6, 'mm'],
    ['a unit', '28.6 mm', 28.6, 'mm'],
    ['centimetres said so', '2.86 cm', 2.86, 'cm'],
    ['inches said so', '1.125 in', 1.125, '[in_i]'],
    ['a fraction of an inch', '1 1/8', 1.125, '[in_i]'],
    ['with a hyphen', '1-1/8"', 1.125, '[in_i]'],
  ])('%s: %s', (_, typed, value, unit) => {
    expect(readDimension('steerer', 'diameterMm', typed)).toEqual({
      ok: true,
      measured: { value, unit, typed, uncertaintyMm: 0.05 },
    });
  });

  test.each([
    ['28.6 as 286', 'steerer', 'diameterMm', '286', 'decimal-point-slipped', 28.6],
    ['130 as 13', 'hub-spacing', 'spacingMm', '13', 'centimetres-meant', 130],
    ['centimetres without saying so', 'steerer', 'diameterMm', '2.86', 'centimetres-meant', 28.6],
    ['inches without saying so', 'steerer', 'diameterMm', '1.125', 'inches-meant', 28.575],
    ['a fraction where no inch fits', 'hub-spacing', 'spacingMm', '1/2', 'decimal-point-slipped', 127],
    ['half a hole', 'hub-holes', 'holesCount', '32.5', 'not-a-whole-number', 33],
    ['320 holes', 'hub-holes', 'holesCount', '320', 'decimal-point-slipped', 32],
    ['a bottom bracket of a metre', 'shell', 'boreMm', '100000', 'impossible', null],
    ['35 bar', 'tyre-bead', 'maxPressureBar', '35', 'decimal-point-slipped', 3.5],
  ] as const)('%s', (_, kind, key, typed, reason, suggestion) => {
    expect(readDimension(kind, key, typed)).toMatchObject({ ok: false, reason, suggestion });
  });

  test('a pressure in psi is kept in bar', () => {
    const read = readDimension('tyre-bead', 'maxPressureBar', '50 psi');
    // Owner's manual table: 50 psi is printed as 3.5 bar; exactly 3.447.
    expect(read.ok && read.measured.value).toBeCloseTo(3.4474, 3);
    expect(read.ok && read.measured.unit).toBe('bar');
  });

  test.each([
    ['', 'empty'],
    ['abc', 'not-a-number'],
    ['28.6 Nm', 'unit-of-another-kind'],
    ['1,234.5', 'two-separators'],
    ['-28', 'negative'],
    ['1/0', 'not-a-number'],
  ])('"%s" is refused as %s', (typed, reason) => {
    expect(readDimension('steerer', 'diameterMm', typed)).toMatchObject({ ok: false, reason });
  });

  test('an unknown dimension', () => {
    expect(readDimension('steerer', 'boreMm', '28.6')).toMatchObject({
      ok: false,
      reason: 'no-such-dimension',
    });
  });
});

test('every plausible size is taken as typed, every other gets a reason, and a suggestion is plausible', () => {
  const kinds = faceKindIds.filter((kind) => faceKinds[kind].dimensions.length > 0);
  expect(kinds.length).toBeGreaterThan(30);
  fc.assert(
    fc.property(
      fc
        .constantFrom(...kinds)
        .chain((kind) =>
          fc.record({ kind: fc.constant(kind), row: fc.constantFrom(...faceKinds[kind].dimensions) }),
        ),
      fc.integer({ min: 1, max: 100_000 }),
      ({ kind, row }, hundredths) => {
        const value = hundredths / 100;
        const read = readDimension(kind, row.key, String(value));
        const plausible = value >= row.min && value <= row.max;
        const whole = !row.key.endsWith('Count') || Number.isInteger(value);
        expect(read.ok).toBe(plausible && whole);
        if (read.ok) expect(read.measured.value).toBe(value);
        else if (read.suggestion !== null) {
          expect(read.suggestion).toBeGreaterThanOrEqual(Math.floor(row.min));
          expect(read.suggestion).toBeLessThanOrEqual(Math.ceil(row.max));
        }
      },
    ),
  );
});
