import { utf8Bytes } from '../../documents/utf8Bytes.ts';

/** Most octets of a line before its CR LF. RFC 5545, section 3.1. */
const MOST_OCTETS = 75;
const BREAK = '\r\n';

/**
 * A text as the value of a property of type TEXT: reverse solidus, semicolon and comma get a reverse solidus before
 * them, a line break becomes `\n`, other control characters go, and half of a pair becomes the sign for it.
 * @see RFC 5545, section 3.3.11
 * @example escapedText('Stem; bar, 5 N·m') //=> 'Stem\\; bar\\, 5 N·m'
 */
export function escapedText(text: string): string {
  return text
    .replaceAll(/\r\n?/g, '\n')
    .replaceAll(/[^\P{Cc}\n]/gu, '')
    .replaceAll(/\p{Cs}/gu, '\ufffd')
    .replaceAll(/[\\;,]/g, '\\$&')
    .replaceAll('\n', '\\n');
}

/**
 * One content line, folded where it is longer than 75 octets: CR LF and a space, never within a sign or an escape.
 * @param name of the property, with its parameters
 * @param value as it is to be read, escaped where its type asks for that
 * @returns the line with its CR LF
 * @see RFC 5545, section 3.1
 * @example contentLine('VERSION', '2.0') //=> 'VERSION:2.0\r\n'
 */
export function contentLine(name: string, value: string): string {
  let folded = '';
  let octets = 0;
  // An escape is two signs that belong together.
  for (const [unit] of `${name}:${value}`.matchAll(/\\[\\;,n]|./gsu)) {
    const size = [...unit].reduce((sum, sign) => sum + utf8Bytes(sign), 0);
    if (octets + size > MOST_OCTETS) {
      folded += `${BREAK} `;
      octets = 1;
    }
    folded += unit;
    octets += size;
  }
  return folded + BREAK;
}
