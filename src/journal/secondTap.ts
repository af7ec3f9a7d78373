import type { Command } from './commands.ts';
import type { Entry } from './entries.ts';

/** Two equal taps within this are one tap of a trembling knuckle. */
const SECOND_TAP_MS = 1500;

/** A value with its keys in one order, so that equal commands read alike. */
function ordered(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(ordered);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, inside]) => inside !== undefined)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, inside]) => [key, ordered(inside)]),
  );
}

/**
 * A short sum of what was asked (FNV-1a, 32 bit), by which a second tap on the same thing is known.
 * Source: draft-eastlake-fnv, test vectors for the 32-bit hash, from memory.
 * @example sumOf('a') //=> 'e40c292c'
 */
export function sumOf(text: string): string {
  let sum = 0x811c9dc5;
  for (const byte of utf8(text)) sum = Math.imul(sum ^ byte, 0x01000193);
  return (sum >>> 0).toString(16).padStart(8, '0');
}

/** The bytes of a text; the pure folders know no TextEncoder. */
function* utf8(text: string): Generator<number> {
  for (const sign of text) {
    const code = sign.codePointAt(0) ?? 0;
    if (code < 0x80) yield code;
    else if (code < 0x800) yield* [0xc0 | (code >> 6), 0x80 | (code & 63)];
    else if (code < 0x10000) yield* [0xe0 | (code >> 12), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63)];
    else
      yield* [0xf0 | (code >> 18), 0x80 | ((code >> 12) & 63), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63)];
  }
}

/** What was asked, as its sum. */
export const askedSum = (asked: Command | readonly Command[]): string =>
  sumOf(JSON.stringify(ordered(asked)));

/**
 * The entry of the same question, asked just now. A span below nothing is no second tap: the clock was set back.
 * @param recent the newest entries of the journal
 */
export function firstTap(recent: readonly Entry[], asked: string, nowMs: number): Entry | undefined {
  return recent.find((entry) => {
    const agoMs = nowMs - entry.writtenAtMs;
    return entry.asked === asked && agoMs >= 0 && agoMs < SECOND_TAP_MS;
  });
}
