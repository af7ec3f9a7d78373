import type { ByteSource } from '../byteSource.ts';
import { refuseFile } from '../refusing.ts';
import { cipherOf, keyFor, readHeader, TAG_BYTES } from './lockedFile.ts';

/**
 * What lies inside a locked file, to be read anywhere: each chunk is unlocked as it is asked for, the newest is
 * remembered. A chunk that was changed, moved, left out or cut off does not open.
 */
export async function unlocked(source: ByteSource, passphrase: string | undefined): Promise<ByteSource> {
  const { lock, header } = await readHeader(source);
  if (!passphrase) return refuseFile('passphrase-missing');
  const lockedChunk = lock.chunkBytes + TAG_BYTES;
  const lockedBytes = source.size - header.length;
  const chunks = Math.ceil(lockedBytes / lockedChunk);
  const rest = lockedBytes - (chunks - 1) * lockedChunk;
  if (lockedBytes < TAG_BYTES || rest < TAG_BYTES) return refuseFile('cut-short');
  const key = await keyFor(passphrase, lock);
  let newest: { number: number; bytes: Uint8Array<ArrayBuffer> } | undefined;
  const open = async (number: number): Promise<Uint8Array<ArrayBuffer>> => {
    if (newest?.number === number) return newest.bytes;
    const from = header.length + number * lockedChunk;
    const locked = await source.read(from, Math.min(from + lockedChunk, source.size));
    const cipher = cipherOf(lock, header, number, number === chunks - 1);
    const bytes = await crypto.subtle
      .decrypt(cipher, key, locked)
      .catch(() => refuseFile('passphrase-wrong'));
    newest = { number, bytes: new Uint8Array(bytes) };
    return newest.bytes;
  };
  const size = lockedBytes - chunks * TAG_BYTES;
  // The last chunk alone tells that nothing was cut off, and whether the passphrase is right.
  await open(chunks - 1);
  return {
    size,
    async read(from, to) {
      const end = Math.min(to, size);
      const read = new Uint8Array(Math.max(0, end - from));
      for (let at = from; at < end; ) {
        const number = Math.floor(at / lock.chunkBytes);
        const chunk = await open(number);
        const start = at - number * lock.chunkBytes;
        const part = chunk.subarray(start, start + end - at);
        read.set(part, at - from);
        at += part.length;
      }
      return read;
    },
  };
}
