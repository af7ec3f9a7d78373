import { ENTRY_VERSION, type Entry } from '../../journal/entries.ts';
import { sha256 } from '../archive/digest.ts';
import { piecesOf } from '../archive/piecesOf.ts';
import { sinkOf } from '../byteSink.ts';
import type { CopyProgress, Work } from '../copy/copy.ts';
import { schemaWords } from '../schema/entrySchema.ts';
import { JOURNAL_TEXT, NO_CHECK, TEXT_FORMAT, type TextCheck, type TextHead } from './journalText.ts';

const text = new TextEncoder();

/**
 * Writes the journal, without photos, as one text file.
 * @param entries as they are stored, in the order of the journal, in batches of any size
 * @param stream takes the bytes; aborted when the work fails
 * @returns how much was written
 * @throws the reason of the signal when it is aborted
 */
export async function writeJournalText(
  { entries, madeAtMs }: { entries: AsyncIterable<readonly Entry[]>; madeAtMs: number },
  stream: WritableStream<Uint8Array<ArrayBuffer>>,
  { signal, onProgress }: Work = {},
): Promise<CopyProgress> {
  const sink = sinkOf(stream);
  const written: CopyProgress = { entries: 0, photos: 0, bytes: 0 };
  let before = NO_CHECK;
  const add = async (lines: string, end?: true) => {
    signal?.throwIfAborted();
    before = await sha256(text.encode(before + lines));
    const check: TextCheck = { entriesAbove: written.entries, sha256: before, ...(end ? { end } : {}) };
    const bytes = text.encode(`${lines}${JSON.stringify(check)}\n`);
    await sink.write(bytes);
    written.bytes += bytes.length;
    onProgress?.({ ...written });
  };
  try {
    const head: TextHead = {
      what: JOURNAL_TEXT,
      format: TEXT_FORMAT,
      entryVersion: ENTRY_VERSION,
      schemaWords: schemaWords(),
      madeAtMs,
    };
    await add(`${JSON.stringify(head)}\n`);
    for await (const { lines, count } of piecesOf(entries)) {
      written.entries += count;
      await add(lines);
    }
    await add('', true);
    await sink.close();
    return written;
  } catch (thrown) {
    await sink.abort(thrown).catch(() => {});
    throw thrown;
  }
}
