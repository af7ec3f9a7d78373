/**
 * Bytes that one sign takes in UTF-8; half of a pair takes three, as the sign that stands for it would.
 * @param sign one code point
 * @see RFC 3629, section 3
 * @example utf8Bytes('é') //=> 2
 */
export function utf8Bytes(sign: string): number {
  const code = sign.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}
