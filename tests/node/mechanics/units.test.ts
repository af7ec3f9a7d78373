import * as fc from 'fast-check';
import { unit as mathjsUnit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  type AnyUnit,
  convert,
  pressureBar,
  pressureFromBar,
  torqueFromNm,
  torqueNm,
  unitLabel,
} from '../../../src/mechanics/units.ts';

describe('examples of the docstrings', () => {
  test('30 psi is 206.84 kPa', () => expect(convert(30, '[psi]', 'kPa')).toBeCloseTo(206.8427, 4));

  test('44 in·lbf is 4.971 N·m', () => expect(torqueNm(44, '[in_i].[lbf_av]')).toBeCloseTo(4.97133, 5));
  test('5 N·m is 44.25 in·lbf', () => expect(torqueFromNm(5, '[in_i].[lbf_av]')).toBeCloseTo(44.2537, 4));
  test('30 psi is 2.068 bar', () => expect(pressureBar(30, '[psi]')).toBeCloseTo(2.06843, 5));
  test('2 bar is 29.007 psi', () => expect(pressureFromBar(2, '[psi]')).toBeCloseTo(29.0075, 4));
});

// An independent witness: the unit tables of the general mathematics library mathjs.
const witness: [AnyUnit, AnyUnit, string, string][] = [
  ['[in_i].[lbf_av]', 'N.m', 'in lbf', 'N m'],
  ['[ft_i].[lbf_av]', 'N.m', 'ft lbf', 'N m'],
  ['kgf.cm', 'N.m', 'kgf cm', 'N m'],
  ['[psi]', 'bar', 'psi', 'bar'],
  ['kPa', 'bar', 'kPa', 'bar'],
  ['[psi]', 'kPa', 'psi', 'kPa'],
  ['[in_i]', 'mm', 'in', 'mm'],
  ['cm', '[in_i]', 'cm', 'in'],
  ['[mi_i]', 'km', 'mi', 'km'],
  ['kgf', 'N', 'kgf', 'N'],
  ['[lbf_av]', 'N', 'lbf', 'N'],
  ['[lb_av]', 'kg', 'lbm', 'kg'],
  ['g', '[lb_av]', 'g', 'lbm'],
  ['[foz_us]', 'mL', 'floz', 'mL'],
  ['[degF]', 'Cel', 'degF', 'degC'],
  ['deg', 'rad', 'deg', 'rad'],
];
describe('against the unit tables of mathjs', () => {
  test.each(witness)('7.5 %s in %s', (from, to, theirFrom, theirTo) => {
    const theirs = mathjsUnit(7.5, theirFrom).toNumber(theirTo);
    // mathjs keeps some factors (psi, kgf) to 8 to 10 digits only.
    expect(convert(7.5, from, to as never) / theirs).toBeCloseTo(1, 7);
  });
});

const kinds: AnyUnit[][] = [
  ['N.m', '[in_i].[lbf_av]', '[ft_i].[lbf_av]', 'kgf.cm'],
  ['bar', '[psi]', 'kPa'],
  ['mm', '[in_i]', 'cm'],
  ['km', '[mi_i]'],
  ['Cel', '[degF]'],
  ['N', 'kgf', '[lbf_av]'],
  ['g', 'kg', '[lb_av]'],
  ['mL', '[foz_us]'],
  ['deg', 'rad'],
];
const pairOfOneKind = fc
  .constantFrom(...kinds)
  .chain((kind) => fc.tuple(fc.constantFrom(...kind), fc.constantFrom(...kind)));
const magnitude = fc.double({ min: -1e9, max: 1e9, noNaN: true });

describe('properties', () => {
  test('there and back again gives the same quantity', () => {
    fc.assert(
      fc.property(pairOfOneKind, magnitude, ([from, to], value) => {
        const back = convert(convert(value, from, to as never), to, from as never);
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
      }),
    );
  });

  test('more stays more', () => {
    fc.assert(
      fc.property(
        pairOfOneKind,
        magnitude,
        fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
        (pair, a, step) => {
          const [from, to] = pair;
          expect(convert(a + step, from, to as never)).toBeGreaterThanOrEqual(convert(a, from, to as never));
        },
      ),
    );
  });

  test('every unit belongs to one of the kinds above and has a label of its own', () => {
    const listed = kinds.flat().sort();
    expect(Object.keys(unitLabel).sort()).toEqual(listed);
    expect(new Set(Object.values(unitLabel)).size).toBe(listed.length);
  });
});

describe('programmer errors', () => {
  test('torque is not pressure, for the compiler and at run time', () => {
    // @ts-expect-error N·m cannot become bar
    expect(() => convert(1, 'N.m', 'bar')).toThrow(RangeError);
    // @ts-expect-error a bench length is not a distance ridden
    expect(() => convert(1, 'mm', 'km')).toThrow(RangeError);
    expect(() => convert(1, 'furlong' as 'mm', 'cm')).toThrow(RangeError);
  });
});
