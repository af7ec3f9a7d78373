import type { Files } from './files.ts';

/** What a page asks of the worker that writes. */
export interface AskedOfWriter {
  number: number;
  act: keyof Files | 'able';
  name: string;
  bytes: Uint8Array;
}
export interface Answered {
  number: number;
  /** Why it was not written. */
  failed?: string;
}

/** Files that a dedicated worker writes. Rejects what the worker could not write. */
export function filesIn(worker: Worker): Files & { able(): Promise<void> } {
  const open = new Map<number, { done(): void; failed(why: Error): void }>();
  let asked = 0;
  worker.addEventListener('message', ({ data }: MessageEvent<Answered>) => {
    const one = open.get(data.number);
    open.delete(data.number);
    if (data.failed === undefined) one?.done();
    else one?.failed(new Error(data.failed));
  });
  worker.addEventListener('error', () => {
    for (const { failed } of open.values())
      failed(new Error('the worker that writes the mirror does not run'));
    open.clear();
  });
  const ask = (act: AskedOfWriter['act'], name: string, bytes: Uint8Array) =>
    new Promise<void>((done, failed) => {
      asked += 1;
      open.set(asked, { done, failed });
      worker.postMessage({ number: asked, act, name, bytes } satisfies AskedOfWriter);
    });
  return {
    append: (name, bytes) => ask('append', name, bytes),
    write: (name, bytes) => ask('write', name, bytes),
    able: () => ask('able', 'able', new Uint8Array(0)),
  };
}
