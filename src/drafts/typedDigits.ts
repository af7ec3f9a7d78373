/** What a key of the keypad is called. */
export type KeypadKey = '0' | '1' | '2' | '3' | '4' | '5' | '6' | '7' | '8' | '9' | 'decimal' | 'erase';

const MOST_SIGNS = 8;
const isSeparator = (sign: string) => sign === ',' || sign === '.';

/**
 * The decimal sign people of a language write.
 * @param locale BCP 47 tag; the browser's own when left out
 * @example decimalSign('de') //=> ','
 */
export function decimalSign(locale?: string): '.' | ',' {
  const sign = new Intl.NumberFormat(locale, { numberingSystem: 'latn' })
    .formatToParts(1.5)
    .find((part) => part.type === 'decimal')?.value;
  return sign === ',' ? ',' : '.';
}

/** A number, and what may stand behind it: a unit, which holds no digit, separator or sign. */
const NUMBER_THEN_UNIT = /^0*(\d*)([.,]?)(\d*)(?:\s*[^\d.,+−-]*)$/;

/**
 * What a text from a keyboard or the clipboard says as a number. A unit behind it is left off. What is no number
 * stays as it was written, so that it can be seen and is refused, never read as another number.
 * @param text what came from a keyboard or the clipboard
 * @example keepTypable('5,2 Nm') //=> '5,2'
 */
export function keepTypable(text: string): string {
  const found = NUMBER_THEN_UNIT.exec(text.trim());
  if (!found) return text.trim();
  const [, whole = '', sign = '', parts = ''] = found;
  if (whole === '' && sign === '' && parts === '') return /0/.test(text) ? '0' : '';
  return `${whole === '' ? '0' : whole}${sign}${parts}`;
}

/**
 * The text after one more key.
 * @param typed text so far
 * @param key the key touched
 * @param sign the decimal sign to write for `decimal`
 * @example pressKey('5', 'decimal', ',') //=> '5,'
 */
export function pressKey(typed: string, key: KeypadKey, sign: '.' | ','): string {
  if (key === 'erase')
    return typed === `0${typed.at(-1)}` && isSeparator(typed.at(-1) ?? '') ? '' : typed.slice(0, -1);
  if (key === 'decimal') return /[.,]/.test(typed) ? typed : keepTypable(typed + sign);
  return typed.length < MOST_SIGNS ? keepTypable(typed + key) : typed;
}
