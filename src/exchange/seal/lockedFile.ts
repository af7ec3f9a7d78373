import type { ByteSource } from '../byteSource.ts';
import { refuseFile } from '../refusing.ts';

/** The first word of a locked file: it says in plain text what it is and how it is locked. */
export const LOCKED = 'pinchbolt-locked';
const LOCK_FORMAT = 1;

/** Plain bytes in one chunk. */
export const CHUNK_BYTES = 262_144;
/** What AES-GCM adds to each chunk: its tag, NIST SP 800-38D. */
export const TAG_BYTES = 16;
/** OWASP, Password Storage, figure for PBKDF2 with SHA-256; from memory. */
export const ITERATIONS = 600_000;
/** A file from outside may ask for no more work than this: on a slow phone a few seconds. */
const MOST_ITERATIONS = 2_000_000;
const LEAST_ITERATIONS = 100_000;
export const SALT_BYTES = 16;
export const PREFIX_BYTES = 7;
const HEADER_BYTES = 512;

/** How a file is locked, as its first line tells. */
export interface Lock {
  iterations: number;
  chunkBytes: number;
  salt: Uint8Array<ArrayBuffer>;
  /** The first bytes of every nonce; the number of the chunk and the end mark follow. */
  prefix: Uint8Array<ArrayBuffer>;
}

const hexOf = (bytes: Uint8Array): string =>
  Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');

function bytesOf(hex: unknown, length: number): Uint8Array<ArrayBuffer> {
  if (typeof hex !== 'string' || hex.length !== length * 2 || !/^[0-9a-f]+$/.test(hex))
    return refuseFile('lock-unknown');
  return Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
}

/** The first line of a locked file. @example headerOf(lock).startsWith('pinchbolt-locked ') //=> true */
export function headerOf({ iterations, chunkBytes, salt, prefix }: Lock): string {
  const described = {
    format: LOCK_FORMAT,
    cipher: 'AES-256-GCM',
    key: 'PBKDF2-HMAC-SHA-256',
    iterations,
    salt: hexOf(salt),
    chunkBytes,
    nonce: 'prefix, chunk number as 4 bytes, 1 for the last chunk else 0',
    prefix: hexOf(prefix),
    chunks: 'each with its tag of 16 bytes; the first line is the additional data of every chunk',
  };
  return `${LOCKED} ${JSON.stringify(described)}\n`;
}

/** The lock and the very bytes of the first line, or a refusal. */
export async function readHeader(
  source: ByteSource,
): Promise<{ lock: Lock; header: Uint8Array<ArrayBuffer> }> {
  const start = await source.read(0, Math.min(source.size, HEADER_BYTES));
  const end = start.indexOf(0x0a);
  if (end < 0) return refuseFile('lock-unknown');
  const header = start.slice(0, end + 1);
  const read = headerFields(new TextDecoder().decode(header.subarray(LOCKED.length)));
  const { format, iterations, chunkBytes } = read;
  if (typeof format === 'number' && format > LOCK_FORMAT) return refuseFile('newer-format');
  if (format !== LOCK_FORMAT || chunkBytes !== CHUNK_BYTES || !Number.isInteger(iterations))
    return refuseFile('lock-unknown');
  const turns = Number(iterations);
  if (turns < LEAST_ITERATIONS || turns > MOST_ITERATIONS) return refuseFile('lock-unknown');
  const salt = bytesOf(read['salt'], SALT_BYTES);
  const prefix = bytesOf(read['prefix'], PREFIX_BYTES);
  return { lock: { iterations: turns, chunkBytes: CHUNK_BYTES, salt, prefix }, header };
}

function headerFields(text: string): Record<string, unknown> {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value === 'object' && value !== null) return value as Record<string, unknown>;
  } catch {
    // Falls through to the refusal: what stands there is none of ours.
  }
  return refuseFile('lock-unknown');
}

/**
 * The key out of a passphrase. One accent typed in two ways is one passphrase.
 * Source: RFC 8018 (PBKDF2), RFC 8265 (a passphrase is compared in normal form C).
 */
export async function keyFor(passphrase: string, { iterations, salt }: Lock): Promise<CryptoKey> {
  const words = new TextEncoder().encode(passphrase.normalize('NFC'));
  const base = await crypto.subtle.importKey('raw', words, 'PBKDF2', false, ['deriveKey']);
  return crypto.subtle.deriveKey(
    { name: 'PBKDF2', hash: 'SHA-256', salt, iterations },
    base,
    { name: 'AES-GCM', length: 256 },
    false,
    ['encrypt', 'decrypt'],
  );
}

/**
 * What AES-GCM needs for one chunk. Its number and whether it is the last one are part of the nonce, so that chunks
 * cannot change places, be left out or be cut off; the header is authenticated with each.
 * Source: the STREAM construction, Hoang, Reyhanitabar, Rogaway and Vizár, CRYPTO 2015.
 */
export function cipherOf(
  { prefix }: Lock,
  header: Uint8Array<ArrayBuffer>,
  chunk: number,
  last: boolean,
): AesGcmParams {
  const iv = new Uint8Array(12);
  iv.set(prefix);
  new DataView(iv.buffer).setUint32(PREFIX_BYTES, chunk);
  iv[11] = last ? 1 : 0;
  return { name: 'AES-GCM', iv, additionalData: header, tagLength: TAG_BYTES * 8 };
}
