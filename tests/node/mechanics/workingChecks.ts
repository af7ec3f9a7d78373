import { describe, expect, test } from 'vitest';
import type { Working } from '../../../src/mechanics/working.ts';

/** Name, the working, the result its formula gives when called directly, and the unit. */
export type WorkingCase = readonly [name: string, working: Working, result: Working['result'], unit: string];

/**
 * What every working must keep: it shows the number of the formula itself, and nothing it was computed from is missing.
 * @param derived letters that stand for others in a formula: `{ d2: 'd P' }` says d2 is had from d and P
 */
export function provesWorkings(
  cases: readonly WorkingCase[],
  derived: Readonly<Record<string, string>> = {},
): void {
  describe.each(cases)('%s', (_, working, result, unit) => {
    test('shows the number the formula itself gives', () => {
      expect(working.result).toEqual(result);
      expect(working.unit).toBe(unit);
    });
    test('names a source and every input once, each with a value', () => {
      expect(working.source).toMatch(/\S{3}/);
      const names = working.inputs.map((input) => input.name);
      expect(new Set(names).size).toBe(names.length);
      for (const { value } of working.inputs)
        for (const figure of typeof value === 'number' ? [value] : Object.values(value))
          expect(Number.isFinite(figure)).toBe(true);
    });
    test('every input stands in the formula, or is what a letter of it is had from', () => {
      let formula = working.formula;
      for (const [letter, from] of Object.entries(derived))
        if (formula.includes(letter)) formula += ` ${from}`;
      const letters = formula.split(/[^\p{L}\d′]+/u);
      for (const { name } of working.inputs) expect(letters).toContain(name.split(/[, ]/)[0]);
    });
  });
}
