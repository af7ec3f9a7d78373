/** Where the bytes of a copy go, piece by piece; each piece is waited for, so that none piles up. */
export interface ByteSink {
  write(bytes: Uint8Array<ArrayBuffer>): Promise<void>;
  close(): Promise<void>;
  /** What was written so far is of no use. */
  abort(reason: unknown): Promise<void>;
}

/** A writable stream as a sink: a file, a response, the memory of a test. */
export function sinkOf(stream: WritableStream<Uint8Array<ArrayBuffer>>): ByteSink {
  const writer = stream.getWriter();
  return {
    async write(bytes) {
      await writer.ready;
      await writer.write(bytes);
    },
    close: () => writer.close(),
    abort: (reason) => writer.abort(reason),
  };
}
