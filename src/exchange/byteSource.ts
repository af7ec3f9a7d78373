/** Bytes that can be read anywhere: a file, or what lies inside a locked one. */
export interface ByteSource {
  readonly size: number;
  /** Bytes from one place up to another; fewer only at the end. */
  read(from: number, to: number): Promise<Uint8Array<ArrayBuffer>>;
}

export function sourceOf(file: Blob): ByteSource {
  return {
    size: file.size,
    read: async (from, to) => new Uint8Array(await file.slice(from, to).arrayBuffer()),
  };
}
