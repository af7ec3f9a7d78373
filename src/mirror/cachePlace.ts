import { joined, type MirrorPlace, onOwnLine } from './files.ts';
import { MIRROR } from './trace.ts';

/** A file is a row of pieces, since a kept answer cannot be added to: `/:mirror/journal-1/0000`, and so on. */
const ADDRESS = /^\/:mirror\/([\w-]+)\/(\d+)$/;
/** The last piece is written again for each addition until it is this long. */
const PIECE_BYTES = 65_536;

const addressOf = (name: string, piece: number) => `/:mirror/${name}/${String(piece).padStart(4, '0')}`;

/**
 * A place in the cache storage, for browsers without private files.
 * @returns undefined where the browser has no cache storage either, or keeps nothing in it, as in a private window
 */
export async function cachePlace(caches: CacheStorage | undefined): Promise<MirrorPlace | undefined> {
  try {
    return caches && piecesInCache(await caches.open(MIRROR));
  } catch {
    return undefined;
  }
}

function piecesInCache(cache: Cache): MirrorPlace {
  const bytesOf = async (address: string) =>
    new Uint8Array((await (await cache.match(address))?.arrayBuffer()) ?? new ArrayBuffer(0));
  const put = (address: string, bytes: Uint8Array) =>
    cache.put(address, new Response(bytes as Uint8Array<ArrayBuffer>));

  async function pieces(): Promise<{ name: string; piece: number }[]> {
    const paths = (await cache.keys()).map(({ url }) => new URL(url).pathname);
    return paths.flatMap((path) => {
      const [, name, piece] = ADDRESS.exec(path) ?? [];
      return name === undefined ? [] : [{ name, piece: Number(piece) }];
    });
  }
  /** The pieces of a file, in order. */
  async function piecesOf(name: string): Promise<number[]> {
    const numbers = (await pieces()).flatMap((one) => (one.name === name ? one.piece : []));
    return numbers.sort((a, b) => a - b);
  }
  /** The last piece first: killed on the way, what is left of the file is its beginning. */
  async function drop(name: string, from: number): Promise<void> {
    for (const piece of (await piecesOf(name)).reverse())
      if (piece >= from) await cache.delete(addressOf(name, piece));
  }

  return {
    names: async () => [...new Set((await pieces()).map(({ name }) => name))],
    has: async (name) => (await piecesOf(name)).length > 0,
    async whole(name) {
      const answers = await Promise.all(
        (await piecesOf(name)).map((piece) => cache.match(addressOf(name, piece))),
      );
      const parts = await Promise.all(answers.map((answer) => answer?.blob()));
      return parts.length === 0 ? undefined : new Blob(parts.flatMap((part) => part ?? []));
    },
    async tail(name, bytes) {
      let end: Uint8Array = new Uint8Array(0);
      for (const piece of (await piecesOf(name)).reverse()) {
        end = joined([await bytesOf(addressOf(name, piece)), end]);
        if (end.length >= bytes) return end.slice(-bytes);
      }
      return end;
    },
    async append(name, bytes) {
      const last = (await piecesOf(name)).at(-1) ?? 0;
      const before = await bytesOf(addressOf(name, last));
      const added = onOwnLine(before, bytes);
      if (before.length >= PIECE_BYTES) return put(addressOf(name, last + 1), added);
      await put(addressOf(name, last), joined([before, added]));
    },
    async write(name, bytes) {
      // The pieces behind go first, so that the file is shorter for a while and never a mixture.
      await drop(name, 1);
      await put(addressOf(name, 0), bytes);
    },
    remove: (name) => drop(name, 0),
  };
}
