import { type ArchiveContent, writeArchive } from '../../../src/exchange/archive/writeArchive.ts';
import type { Copy } from '../../../src/exchange/copy/copy.ts';
import { openCopy } from '../../../src/exchange/copy/openCopy.ts';
import type { Photo } from '../../../src/journal/commands.ts';
import type { Entry } from '../../../src/journal/entries.ts';
import type { RefusedFile } from '../../../src/words/fileRefusals.ts';
import { allEntries } from './entriesOfEveryKind.ts';

export const MADE_AT = Date.UTC(2026, 4, 4, 9);

/** A stream that keeps what is written to it, and what it was aborted with. */
export function memory() {
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  let aborted: unknown;
  const stream = new WritableStream<Uint8Array<ArrayBuffer>>({
    write: (piece) => void pieces.push(piece),
    abort: (reason) => {
      aborted = reason;
    },
  });
  return { stream, blob: () => new Blob(pieces), aborted: () => aborted };
}

/** A few bytes in place of a photo; those of one number are always the same. */
export function photoOf(number: number, bytes = 900): Photo {
  const buf = Uint8Array.from({ length: bytes }, (_, at) => (at * 31 + number * 17 + (at >> 3)) % 256);
  return { photoId: `ph${number}`, buf: buf.buffer, type: 'image/jpeg', widthPx: 40, heightPx: 30 };
}

export async function* batched<T>(items: readonly T[], size = 7): AsyncGenerator<T[]> {
  for (let at = 0; at < items.length; at += size) yield items.slice(at, at + size);
}

export async function* each<T>(items: readonly T[]): AsyncGenerator<T> {
  yield* items;
}

export const content = (
  entries: readonly Entry[] = allEntries,
  photos: readonly Photo[] = [photoOf(1), photoOf(2)],
): ArchiveContent => ({
  entries: batched(entries),
  photos: each(photos),
  sheets: each([
    { bikeName: 'Magpie', lines: [{ is: 'title', text: 'Magpie, as built' } as const] },
    { bikeName: '../<b>Ferry', lines: [{ is: 'title', text: '<script>alert(1)</script>' } as const] },
  ]),
  madeAtMs: MADE_AT,
});

/** The bytes of an archive of everything above. */
export async function archiveOf(from = content(), passphrase?: string): Promise<Blob> {
  const kept = memory();
  await writeArchive(from, kept.stream, { passphrase });
  return kept.blob();
}

/** All that comes out of an iterable. */
export async function gathered<T>(from: AsyncIterable<T>): Promise<T[]> {
  const items: T[] = [];
  for await (const item of from) items.push(item);
  return items;
}

export async function whole(copy: Copy): Promise<{ entries: Entry[]; photos: Photo[] }> {
  return {
    entries: (await gathered(copy.readEntries())).flat(),
    photos: await gathered(copy.readPhotos()),
  };
}

/** A copy that opens, or an error that shows why not. */
export async function opened(file: Blob, passphrase?: string): Promise<Copy> {
  const copy = await openCopy(file, { passphrase });
  if ('refused' in copy) throw new Error(`refused: ${copy.refused} ${copy.about ?? ''}`);
  return copy;
}

export const refusal = async (file: Blob, passphrase?: string): Promise<RefusedFile | 'read'> => {
  const copy = await openCopy(file, { passphrase });
  return 'refused' in copy ? copy : 'read';
};
