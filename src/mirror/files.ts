import { MIRROR } from './trace.ts';

/** Writes files of the mirror. Each promise resolves when the bytes are flushed. */
export interface Files {
  /** Adds bytes at the end of a file, on a line of their own also where the end of the file was torn off. */
  append(name: string, bytes: Uint8Array): Promise<void>;
  /** Makes a file anew. */
  write(name: string, bytes: Uint8Array): Promise<void>;
}

/** Where the mirror lies: files by name, wherever the browser keeps them. */
export interface MirrorPlace extends Files {
  names(): Promise<string[]>;
  has(name: string): Promise<boolean>;
  /** All of a file, in parts that are read as they are needed; undefined where there is none. */
  whole(name: string): Promise<Blob | undefined>;
  /** The last bytes of a file, as many as asked for where it has so many; none where there is no file. */
  tail(name: string, bytes: number): Promise<Uint8Array>;
  remove(name: string): Promise<void>;
}

/** The folder of the mirror; undefined where the browser has no private files. */
export async function mirrorFolder(): Promise<FileSystemDirectoryHandle | undefined> {
  try {
    const top = await navigator.storage.getDirectory();
    return await top.getDirectoryHandle(MIRROR, { create: true });
  } catch {
    return undefined;
  }
}

/** A place in private files, written by `files`. */
export function placeInFiles(folder: FileSystemDirectoryHandle, files: Files): MirrorPlace {
  async function whole(name: string): Promise<Blob | undefined> {
    try {
      return await (await folder.getFileHandle(name)).getFile();
    } catch {
      return undefined;
    }
  }
  return {
    ...files,
    whole,
    has: async (name) => (await whole(name)) !== undefined,
    async names() {
      const names: string[] = [];
      for await (const name of (folder as unknown as { keys(): AsyncIterable<string> }).keys())
        names.push(name);
      return names;
    },
    async tail(name, bytes) {
      const file = await whole(name);
      const end = file?.slice(Math.max(0, file.size - bytes));
      return new Uint8Array((await end?.arrayBuffer()) ?? new ArrayBuffer(0));
    },
    remove: (name) => folder.removeEntry(name),
  };
}

/** Pieces one after another. */
export function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}

const LINE_END = 0x0a;

/** Bytes on a line of their own, where what stands before them was torn off. */
export function onOwnLine(before: Uint8Array, bytes: Uint8Array): Uint8Array {
  const torn = before.length > 0 && before.at(-1) !== LINE_END;
  return torn ? joined([Uint8Array.of(LINE_END), bytes]) : bytes;
}

/** A handle that writes at once; only dedicated workers have it, and one at a time may hold a file. */
interface SyncHandle {
  getSize(): number;
  read(into: Uint8Array, options: { at: number }): number;
  write(bytes: Uint8Array, options: { at: number }): number;
  truncate(size: number): void;
  flush(): void;
  close(): void;
}
type WithSyncHandle = FileSystemFileHandle & { createSyncAccessHandle(): Promise<SyncHandle> };

/** For dedicated workers: writes in place, and flushing is asked of the system itself. */
export function syncFiles(folder: FileSystemDirectoryHandle): Files {
  async function withHandle(name: string, work: (handle: SyncHandle) => void): Promise<void> {
    const file = await folder.getFileHandle(name, { create: true });
    const handle = await (file as WithSyncHandle).createSyncAccessHandle();
    try {
      work(handle);
      handle.flush();
    } finally {
      handle.close();
    }
  }
  return {
    append: (name, bytes) =>
      withHandle(name, (handle) => {
        const size = handle.getSize();
        const last = new Uint8Array(1);
        if (size > 0) handle.read(last, { at: size - 1 });
        handle.write(onOwnLine(size > 0 ? last : new Uint8Array(0), bytes), { at: size });
      }),
    write: (name, bytes) =>
      withHandle(name, (handle) => {
        handle.truncate(0);
        handle.write(bytes, { at: 0 });
      }),
  };
}

/** For pages whose browser gives workers no such handle: the browser copies the file for each change, and swaps it. */
export function asyncFiles(folder: FileSystemDirectoryHandle): Files {
  async function put(name: string, bytes: Uint8Array, keep: boolean): Promise<void> {
    const file = await folder.getFileHandle(name, { create: true });
    const { size } = await file.getFile();
    const last = new Uint8Array(await (await file.getFile()).slice(-1).arrayBuffer());
    const writable = await file.createWritable({ keepExistingData: keep });
    const data = keep ? onOwnLine(last, bytes) : bytes;
    await writable.write({ type: 'write', position: keep ? size : 0, data: data as Uint8Array<ArrayBuffer> });
    await writable.close();
  }
  return { append: (name, bytes) => put(name, bytes, true), write: (name, bytes) => put(name, bytes, false) };
}
