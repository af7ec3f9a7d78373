import { writeJournalText } from '../../../../src/exchange/text/writeJournalText.ts';
import type { Entry } from '../../../../src/journal/entries.ts';
import { archiveOf, batched, content, MADE_AT, memory, photoOf } from '../aCopy.ts';
import { allEntries, idOf } from '../entriesOfEveryKind.ts';
import { type Bytes, type Files, filesOf } from './rebuilt.ts';

export const PASSPHRASE = 'blue spoke key';

/** Sound copies, from which the mutated ones are made. */
export interface Material {
  archive: Bytes;
  files: Files;
  locked: Bytes;
  text: Bytes;
  entries: readonly Entry[];
}

const note = (at: number): Entry => ({
  id: idOf(at + 500),
  v: 1,
  writtenAtMs: MADE_AT + at,
  happenedAtMs: MADE_AT + at,
  zone: 'Europe/Berlin',
  type: 'note-added',
  noteId: `n${at}`,
  words: `Looked at it, ${at}. ${'–'.repeat(at % 9)}`,
});

const bytesOfBlob = async (blob: Blob): Promise<Bytes> => new Uint8Array(await blob.arrayBuffer());

export async function soundCopies(): Promise<Material> {
  const entries = [...allEntries, ...Array.from({ length: 200 }, (_, at) => note(at))];
  const photos = [photoOf(1, 3000), photoOf(2, 5000), photoOf(3, 800)];
  const archive = await bytesOfBlob(await archiveOf(content(entries, photos)));
  // Larger than one chunk of the lock, so that chunks can change places.
  const many = [...photos, photoOf(4, 400_000), photoOf(5, 300_000)];
  const locked = await bytesOfBlob(await archiveOf(content(entries, many), PASSPHRASE));
  const kept = memory();
  await writeJournalText({ entries: batched(entries), madeAtMs: MADE_AT }, kept.stream);
  return { archive, files: filesOf(archive), locked, text: await bytesOfBlob(kept.blob()), entries };
}
