import { refuseFile } from '../refusing.ts';

/** Bytes packed as RFC 1951 asks, by the browser itself. */
export async function deflate(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> {
  const packed = new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  return new Uint8Array(await new Response(packed).arrayBuffer());
}

/**
 * Packed bytes unpacked again, never to more than was said beforehand.
 * @param size bytes it must come to
 * @param path told in the refusal when it comes to more, to less, or cannot be unpacked at all
 */
export async function inflate(
  packed: Uint8Array<ArrayBuffer>,
  size: number,
  path: string,
): Promise<Uint8Array<ArrayBuffer>> {
  const unpacked = new Uint8Array(size);
  let at = 0;
  const reader = new Blob([packed]).stream().pipeThrough(new DecompressionStream('deflate-raw')).getReader();
  for (;;) {
    // What the browser says of broken bytes is not for people.
    const { done, value } = await reader.read().catch(() => refuseFile('damaged', path));
    if (done) break;
    if (at + value.length > size) {
      await reader.cancel().catch(() => {});
      return refuseFile('damaged', path);
    }
    unpacked.set(value, at);
    at += value.length;
  }
  return at === size ? unpacked : refuseFile('damaged', path);
}
