import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { bareNumber, numberText } from '../../../src/mechanics/numberText.ts';

// The examples of the docstrings.
test('a number has the decimals asked for and none for show', () => {
  expect(numberText(8.25)).toBe('8.3');
  expect(bareNumber(1234.5)).toBe('1234.5');
  expect(bareNumber(26)).toBe('26');
});

const Own = Intl.NumberFormat;

/** As on a phone of that language: what asks for no language gets this one. */
function onPhone(language: string): void {
  class Phone extends Own {
    constructor(asked?: string, options?: Intl.NumberFormatOptions) {
      super(asked ?? language, options);
    }
  }
  vi.stubGlobal('Intl', Object.assign(Object.create(Intl), { NumberFormat: Phone }));
}

beforeEach(() => vi.resetModules());
afterEach(() => vi.unstubAllGlobals());

// Unicode CLDR: German writes a decimal comma; the usual digits of Arabic in Egypt are not Latin ones.
test.each([
  ['de', /^5,25$/],
  ['ar-EG', /^5[.,٫]25$/],
])('on a phone in %s the decimal sign is the phone’s and the digits are Latin', async (language, written) => {
  onPhone(language);
  const anew = await import('../../../src/mechanics/numberText.ts');
  expect(anew.bareNumber(5.25)).toMatch(written);
  expect(anew.numberText(5.25, 2)).toMatch(written);
});

/** What is stamped on a part is told as it is stamped, and a page's number is no figure. */
const printed = /M\d+ × [\d.]+|[\d.]+ in\b|\b[\d./-]+ in × \d+|ISO [\d-]+/g;

test('on a phone with a decimal comma the fit check writes no point', async () => {
  onPhone('de');
  const { checkPile } = await import('../../../src/fit/checkPile.ts');
  const { magpie } = await import('../../fixtures/magpie.ts');
  const { quantityText } = await import('../../../src/words/quantityText.ts');
  const { findings, toMeasure } = checkPile([...magpie]);
  const sentences = [...findings, ...toMeasure].flatMap(({ because, bridges, notes }) => [
    because,
    ...notes,
    ...bridges.flatMap(({ discouraged }) => discouraged),
  ]);
  expect(sentences.filter((words) => /\d,\d/.test(words)).length).toBeGreaterThan(3);
  expect(sentences.filter((words) => /\d\.\d/.test(words.replace(printed, '')))).toEqual([]);
  // The same sign in what stands on the same page.
  expect(quantityText({ value: 5.5, unit: 'N.m', typed: '5,5' }, '[in_i].[lbf_av]')).toBe(
    '5,5 N·m (48,7 in·lbf)',
  );
});
