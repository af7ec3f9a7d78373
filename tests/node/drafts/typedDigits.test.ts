import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decimalSign, type KeypadKey, keepTypable, pressKey } from '../../../src/drafts/typedDigits.ts';
import { parseNumber } from '../../../src/mechanics/quantity.ts';

describe('examples of the docstrings', () => {
  test('German writes a comma', () => expect(decimalSign('de')).toBe(','));
  test("of '5,2 Nm' the number stays", () => expect(keepTypable('5,2 Nm')).toBe('5,2'));
  test('the decimal key after 5', () => expect(pressKey('5', 'decimal', ',')).toBe('5,'));
});

// Unicode CLDR, "Number Symbols: decimal" of each locale.
test.each([
  ['en-GB', '.'],
  ['en-US', '.'],
  ['ja', '.'],
  ['de-CH', '.'],
  ['fr', ','],
  ['es', ','],
  ['nl', ','],
  ['pl', ','],
] as const)('CLDR decimal sign of %s is %s', (locale, sign) => expect(decimalSign(locale)).toBe(sign));

test.each([
  ['', ''],
  ['12.5', '12.5'],
  ['12,5', '12,5'],
  ['1.2.3', '1.2.3'],
  ['1.5.2', '1.5.2'],
  ['-5', '-5'],
  ['−5', '−5'],
  ['5-6', '5-6'],
  ['0', '0'],
  ['0,', '0,'],
  ['Nm', ''],
  [',5', '0,5'],
  ['007', '7'],
  ['0.07', '0.07'],
  ['  44 in·lbf', '44'],
  ['123456789012', '123456789012'],
])('of %j stays %j', (text, kept) => expect(keepTypable(text)).toBe(kept));

describe('erase', () => {
  test('takes the last sign', () => expect(pressKey('12,5', 'erase', ',')).toBe('12,'));
  test('takes a zero the separator had put in along with it', () =>
    expect(pressKey('0,', 'erase', ',')).toBe(''));
  test('leaves an empty text empty', () => expect(pressKey('', 'erase', ',')).toBe(''));
});

const anyKey = fc.constantFrom<KeypadKey>(
  ...(['0', '1', '2', '3', '4', '5', '6', '7', '8', '9', 'decimal', 'erase'] as const),
);
test('whatever is touched, the text stays a decimal number in the making (seed by fast-check)', () => {
  fc.assert(
    fc.property(fc.array(anyKey, { maxLength: 40 }), fc.constantFrom<'.' | ','>('.', ','), (keys, sign) => {
      const typed = keys.reduce((text, key) => pressKey(text, key, sign), '');
      expect(typed).toMatch(/^(?:\d+(?:[.,]\d*)?)?$/);
      expect(typed.length).toBeLessThanOrEqual(8);
    }),
  );
});

test.each(['1.5.2', '-5', '−5', '5-6', '1e3'])('%s is no number and is not read as one', (text) =>
  expect(parseNumber(keepTypable(text)).ok).toBe(false),
);

test('a second decimal sign and a ninth digit change nothing', () => {
  expect(pressKey('1.5', 'decimal', '.')).toBe('1.5');
  expect(pressKey('12345678', '9', '.')).toBe('12345678');
});

test('what has been kept once is kept as it is', () => {
  fc.assert(fc.property(fc.string(), (text) => keepTypable(keepTypable(text)) === keepTypable(text)));
});
