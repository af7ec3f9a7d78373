/** Writes files of the origin's private file system. Each promise resolves when the bytes are flushed. */
export interface Files {
  /** Adds bytes at the end of a file, on a line of their own also where the end of the file was torn off. */
  append(name: string, bytes: Uint8Array): Promise<void>;
  /** Makes a file anew. */
  write(name: string, bytes: Uint8Array): Promise<void>;
}

/** The folder of the mirror; undefined where the browser has no private files. */
export async function mirrorFolder(): Promise<FileSystemDirectoryHandle | undefined> {
  try {
    const top = await navigator.storage.getDirectory();
    return await top.getDirectoryHandle('pinchbolt-mirror', { create: true });
  } catch {
    return undefined;
  }
}

const LINE_END = 0x0a;
const withLineEnd = (bytes: Uint8Array) => Uint8Array.of(LINE_END, ...bytes);

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
        const torn = size > 0 && last[0] !== LINE_END;
        handle.write(torn ? withLineEnd(bytes) : bytes, { at: size });
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
    const torn = keep && size > 0 && last[0] !== LINE_END;
    const writable = await file.createWritable({ keepExistingData: keep });
    const data = torn ? withLineEnd(bytes) : bytes;
    await writable.write({ type: 'write', position: keep ? size : 0, data: data as Uint8Array<ArrayBuffer> });
    await writable.close();
  }
  return { append: (name, bytes) => put(name, bytes, true), write: (name, bytes) => put(name, bytes, false) };
}
