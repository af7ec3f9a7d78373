/** A cache storage in memory, and what can befall it. */
export interface MemoryCaches {
  storage: CacheStorage;
  /** The bytes of each kept answer of the mirror, by path. */
  kept: Map<string, Uint8Array>;
  /** Whether the part of the mirror was ever opened. */
  made: boolean;
  /** From now on nothing can be put, as on a full phone. */
  full: boolean;
}

/** A cache storage as far as the mirror asks for it. */
export function memoryCaches(): MemoryCaches {
  const kept = new Map<string, Uint8Array>();
  const cache = {
    async match(path: string) {
      const bytes = kept.get(path);
      return bytes && new Response(bytes as Uint8Array<ArrayBuffer>);
    },
    async put(path: string, answer: Response) {
      if (memory.full) throw new DOMException('no room', 'QuotaExceededError');
      kept.set(path, new Uint8Array(await answer.arrayBuffer()));
    },
    delete: async (path: string) => kept.delete(path),
    keys: async () => [...kept.keys()].map((path) => ({ url: `https://bench.example${path}` })),
  };
  const memory: MemoryCaches = {
    storage: {
      async open() {
        memory.made = true;
        return cache;
      },
      has: async () => memory.made,
      keys: async () => (memory.made ? ['pinchbolt-mirror'] : []),
    } as unknown as CacheStorage,
    kept,
    made: false,
    full: false,
  };
  return memory;
}
