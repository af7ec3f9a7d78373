import { mirrorFolder, syncFiles } from './files.ts';
import type { Answered, AskedOfWriter } from './inWorker.ts';

/** The dedicated worker: one file is written at a time, in the order it was asked for. */
let before: Promise<unknown> = mirrorFolder();

async function act({ act, name, bytes }: AskedOfWriter): Promise<void> {
  const folder = await mirrorFolder();
  if (!folder) throw new Error('no private files');
  const files = syncFiles(folder);
  // Whether it can write at all is found out by writing.
  await files[act === 'able' ? 'write' : act](name, bytes);
}

self.addEventListener('message', ({ data }: MessageEvent<AskedOfWriter>) => {
  before = before.then(async () => {
    const answer: Answered = { number: data.number };
    await act(data).catch((thrown) => {
      answer.failed = String(thrown);
    });
    self.postMessage(answer);
  });
});
