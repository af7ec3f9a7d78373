import type { ByteSink } from '../byteSink.ts';
import {
  CHUNK_BYTES,
  cipherOf,
  headerOf,
  ITERATIONS,
  keyFor,
  type Lock,
  PREFIX_BYTES,
  SALT_BYTES,
} from './lockedFile.ts';

/**
 * A sink that locks what goes through it, chunk by chunk.
 * @param passphrase of any length; the key is drawn from it slowly, so that guessing is slow too
 */
export async function lockedSink(sink: ByteSink, passphrase: string): Promise<ByteSink> {
  const lock: Lock = {
    iterations: ITERATIONS,
    chunkBytes: CHUNK_BYTES,
    salt: crypto.getRandomValues(new Uint8Array(SALT_BYTES)),
    prefix: crypto.getRandomValues(new Uint8Array(PREFIX_BYTES)),
  };
  const header = new TextEncoder().encode(headerOf(lock));
  const key = await keyFor(passphrase, lock);
  await sink.write(header);
  let chunk = new Uint8Array(CHUNK_BYTES);
  let filled = 0;
  let number = 0;
  const send = async (last: boolean) => {
    const cipher = cipherOf(lock, header, number, last);
    const locked = await crypto.subtle.encrypt(cipher, key, chunk.subarray(0, filled));
    number += 1;
    filled = 0;
    chunk = new Uint8Array(CHUNK_BYTES);
    await sink.write(new Uint8Array(locked));
  };
  return {
    async write(bytes) {
      let at = 0;
      while (at < bytes.length) {
        // A full chunk waits for the next byte: only then is it known not to be the last.
        if (filled === CHUNK_BYTES) await send(false);
        const part = bytes.subarray(at, at + CHUNK_BYTES - filled);
        chunk.set(part, filled);
        filled += part.length;
        at += part.length;
      }
    },
    async close() {
      await send(true);
      await sink.close();
    },
    abort: (reason) => sink.abort(reason),
  };
}
