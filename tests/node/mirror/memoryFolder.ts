import type { Turns } from '../../../src/mirror/mirror.ts';

/** Private files in memory, and what can befall them. */
export interface MemoryFolder {
  handle: FileSystemDirectoryHandle;
  /** The bytes of each file, by name. */
  files: Map<string, Uint8Array>;
  /** The newest file of lines. */
  journal(): string;
  /** From now on writing fails, as on a full phone; only of files whose name begins so. */
  full: string | undefined;
}

/** A folder as the browser's private files give it, as far as the mirror asks for it. */
export function memoryFolder(): MemoryFolder {
  const files = new Map<string, Uint8Array>();
  const absent = () => new DOMException('no such file', 'NotFoundError');
  const fileHandle = (name: string) => ({
    kind: 'file',
    name,
    getFile: async () => {
      const bytes = files.get(name);
      if (!bytes) throw absent();
      return new File([bytes as Uint8Array<ArrayBuffer>], name);
    },
    async createWritable({ keepExistingData = false } = {}) {
      let bytes: Uint8Array = keepExistingData ? (files.get(name) ?? new Uint8Array(0)) : new Uint8Array(0);
      return {
        async write({ position, data }: { position: number; data: Uint8Array }) {
          if (folder.full !== undefined && name.startsWith(folder.full))
            throw new DOMException('no room', 'QuotaExceededError');
          const next = new Uint8Array(Math.max(bytes.length, position + data.length));
          next.set(bytes);
          next.set(data, position);
          bytes = next;
        },
        async close() {
          files.set(name, bytes);
        },
      };
    },
  });
  const handle = {
    async getFileHandle(name: string, { create = false } = {}) {
      if (!files.has(name)) {
        if (!create) throw absent();
        files.set(name, new Uint8Array(0));
      }
      return fileHandle(name);
    },
    async removeEntry(name: string) {
      if (!files.delete(name)) throw absent();
    },
    async *keys() {
      yield* [...files.keys()];
    },
  };
  const folder: MemoryFolder = {
    handle: handle as unknown as FileSystemDirectoryHandle,
    files,
    journal() {
      const numbers = [...files.keys()].flatMap((name) => /^journal-(\d+)$/.exec(name)?.[1] ?? []);
      return `journal-${Math.max(...numbers.map(Number))}`;
    },
    full: undefined,
  };
  return folder;
}

/** Lets one piece of work through at a time, as the browser's locks do over all pages. */
export function turnsInMemory(): Turns {
  let before: Promise<unknown> = Promise.resolve();
  return (work) => {
    const mine = before.then(work);
    before = mine.catch(() => {});
    return mine;
  };
}
