import type { AnyUnit, Typed } from './units.ts';

export type NumberRefusal = 'empty' | 'not-a-number' | 'not-finite' | 'negative' | 'two-separators';
export type QuantityRefusal = NumberRefusal | 'unknown-unit' | 'unit-of-another-kind';

export type ParsedNumber = { ok: true; value: number; typed: string } | { ok: false; reason: NumberRefusal };
export type ParsedQuantity<U extends AnyUnit> =
  | { ok: true; quantity: Typed<U> }
  | { ok: false; reason: QuantityRefusal };

/**
 * A number as a person types it, with a decimal point or a decimal comma.
 * Thousands separators are refused rather than guessed at: "1,234.5" is `two-separators`.
 * @param below what to do with a number under zero; temperatures and distances to either side want it allowed
 * @returns the value and the characters typed, or a named reason
 * @example parseNumber('5,2') //=> { ok: true, value: 5.2, typed: '5,2' }
 */
export function parseNumber(text: string, below: 'refuse' | 'allow' = 'refuse'): ParsedNumber {
  const typed = text.trim();
  if (typed === '') return { ok: false, reason: 'empty' };
  if (/^[+\-−]?(∞|inf|infinity)$/i.test(typed)) return { ok: false, reason: 'not-finite' };
  const parts = /^([+\-−]?)\s*([\d.,]*\d[\d.,]*)$/.exec(typed);
  if (!parts) return { ok: false, reason: 'not-a-number' };
  const [, sign, digits = ''] = parts;
  if ((digits.match(/[.,]/g) ?? []).length > 1) return { ok: false, reason: 'two-separators' };
  const value = Number(digits.replace(',', '.'));
  if (!Number.isFinite(value)) return { ok: false, reason: 'not-finite' };
  const negative = sign === '-' || sign === '−';
  if (negative && below === 'refuse') return { ok: false, reason: 'negative' };
  return { ok: true, value: negative ? -value : value, typed };
}

/** What people write behind a number, letters only and in lower case; a bare "lb" or "kg" may be a mass or a force. */
const spellings: Partial<Record<string, readonly AnyUnit[]>> = {
  nm: ['N.m'],
  newtonmetre: ['N.m'],
  newtonmeter: ['N.m'],
  inlb: ['[in_i].[lbf_av]'],
  inlbf: ['[in_i].[lbf_av]'],
  lbin: ['[in_i].[lbf_av]'],
  lbfin: ['[in_i].[lbf_av]'],
  inchpound: ['[in_i].[lbf_av]'],
  ftlb: ['[ft_i].[lbf_av]'],
  ftlbf: ['[ft_i].[lbf_av]'],
  lbft: ['[ft_i].[lbf_av]'],
  lbfft: ['[ft_i].[lbf_av]'],
  footpound: ['[ft_i].[lbf_av]'],
  kgcm: ['kgf.cm'],
  kgfcm: ['kgf.cm'],
  bar: ['bar'],
  psi: ['[psi]'],
  kpa: ['kPa'],
  mm: ['mm'],
  cm: ['cm'],
  in: ['[in_i]'],
  inch: ['[in_i]'],
  inche: ['[in_i]'],
  '"': ['[in_i]'],
  '″': ['[in_i]'],
  km: ['km'],
  mi: ['[mi_i]'],
  mile: ['[mi_i]'],
  c: ['Cel'],
  '°c': ['Cel'],
  f: ['[degF]'],
  '°f': ['[degF]'],
  n: ['N'],
  kgf: ['kgf'],
  lbf: ['[lbf_av]'],
  g: ['g'],
  kg: ['kg', 'kgf'],
  lb: ['[lb_av]', '[lbf_av]'],
  ml: ['mL'],
  floz: ['[foz_us]'],
  '°': ['deg'],
  deg: ['deg'],
  rad: ['rad'],
};

/** "ft. lbs", "ft-lb" and "FT·LB" are one spelling; a plural s is dropped. */
const spelling = (suffix: string): string =>
  suffix
    .toLowerCase()
    .replace(/[\s.·*×-]/g, '')
    .replace(/(?<=lb|lbf|pound|metre|meter|mile|inche)s/g, '');

/**
 * A quantity as a person types it: a number, and after it a unit or nothing.
 * @param allowed the units this field takes
 * @param defaultUnit the unit meant when none is typed
 * @param below what to do with a quantity under zero; a temperature may always lie there
 * @returns the quantity as typed, or a named reason; `unit-of-another-kind` is a known unit that does not belong here
 * @example parseTyped('5,2 Nm', ['N.m', '[in_i].[lbf_av]'], 'N.m') //=> { ok: true, quantity: { value: 5.2, unit: 'N.m', typed: '5,2 Nm' } }
 */
export function parseTyped<U extends AnyUnit>(
  text: string,
  allowed: readonly U[],
  defaultUnit: NoInfer<U>,
  below: 'refuse' | 'allow' = 'refuse',
): ParsedQuantity<U> {
  const typed = text.trim();
  const [, digits = '', suffix = ''] = /^([^\p{L}°"″]*)(.*)$/su.exec(typed) ?? [];
  const key = spelling(suffix);
  let unit: U | undefined = defaultUnit;
  if (key !== '') {
    const meant = spellings[key];
    // "Infinity" and "five" are complaints about the number, not about a unit.
    if (!meant && digits.trim() === '') return parseNumber(typed) as { ok: false; reason: NumberRefusal };
    if (!meant) return { ok: false, reason: 'unknown-unit' };
    unit = allowed.find((candidate) => meant.includes(candidate));
    if (!unit) return { ok: false, reason: 'unit-of-another-kind' };
  }
  const number = parseNumber(digits, unit === 'Cel' || unit === '[degF]' ? 'allow' : below);
  return number.ok ? { ok: true, quantity: { value: number.value, unit, typed } } : number;
}
