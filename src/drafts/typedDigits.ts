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

/**
 * Keeps of a text what can stand in a number: digits and the first separator, comma or dot as typed.
 * @param text what came from a keyboard or the clipboard
 * @returns at most 8 signs
 * @example keepTypable('5,2 Nm') //=> '5,2'
 */
export function keepTypable(text: string): string {
  let kept = '';
  let separated = false;
  for (const sign of text.trim()) {
    if (isSeparator(sign) && !separated) {
      separated = true;
      kept += kept === '' ? `0${sign}` : sign;
    } else if (/^[0-9]$/.test(sign)) kept = kept === '0' ? sign : kept + sign;
  }
  return kept.slice(0, MOST_SIGNS);
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
  return keepTypable(typed + (key === 'decimal' ? sign : key));
}
