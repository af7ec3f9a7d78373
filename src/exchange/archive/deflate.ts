import { refuseFile } from '../refusing.ts';

type Transform = CompressionStream | DecompressionStream;

/** Puts bytes through a stream of the browser; each piece that comes out is handed on before the next is asked for. */
async function putThrough(
  { readable, writable }: Transform,
  bytes: Uint8Array<ArrayBuffer>,
  onPiece: (piece: Uint8Array) => void,
): Promise<void> {
  const writer = writable.getWriter();
  const reader = readable.getReader();
  // Both ends fail together; reading is where it is heard of.
  writer.write(bytes).catch(() => {});
  writer.close().catch(() => {});
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return;
      onPiece(value);
    }
  } catch (thrown) {
    await reader.cancel().catch(() => {});
    throw thrown;
  }
}

/** Bytes packed as RFC 1951 asks, by the browser itself. */
export async function deflate(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> {
  const pieces: Uint8Array[] = [];
  let length = 0;
  await putThrough(new CompressionStream('deflate-raw'), bytes, (piece) => {
    pieces.push(piece);
    length += piece.length;
  });
  const packed = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    packed.set(piece, at);
    at += piece.length;
  }
  return packed;
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
  const take = (piece: Uint8Array) => {
    if (at + piece.length > size) throw new RangeError('more than was said');
    unpacked.set(piece, at);
    at += piece.length;
  };
  // What the browser says of broken bytes is not for people.
  await putThrough(new DecompressionStream('deflate-raw'), packed, take).catch(() =>
    refuseFile('damaged', path),
  );
  return at === size ? unpacked : refuseFile('damaged', path);
}
