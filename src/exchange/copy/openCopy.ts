import type { RefusedFile } from '../../words/fileRefusals.ts';
import { readArchive } from '../archive/readArchive.ts';
import { type ByteSource, sourceOf } from '../byteSource.ts';
import { orRefused, refuseFile } from '../refusing.ts';
import { LOCKED } from '../seal/lockedFile.ts';
import { unlocked } from '../seal/unlock.ts';
import { readJournalText } from '../text/readJournalText.ts';
import type { Copy, Work } from './copy.ts';

export interface OpenOptions extends Work {
  passphrase?: string | undefined;
}

const startOf = async (source: ByteSource): Promise<string> =>
  String.fromCharCode(...(await source.read(0, Math.min(source.size, 32))));

/** An open copy by its first bytes: a ZIP, or a journal in text. */
async function readOpen(source: ByteSource, work: Work): Promise<Copy> {
  const start = await startOf(source);
  if (start.startsWith('PK\x03\x04')) return readArchive(source, work);
  if (start.startsWith('{')) return readJournalText(source, work);
  return refuseFile(source.size === 0 ? 'cut-short' : 'not-a-copy');
}

/**
 * Reads a copy of a logbook from outside, whatever it is, and trusts nothing in it. Nothing is added anywhere: what
 * comes back can be read again piece by piece, or is one named refusal.
 * @param file chosen by a person, shared by another app, or opened from the file manager
 * @throws the reason of the signal when it is aborted; what the browser throws when the file itself cannot be read
 * @example openCopy(new Blob(['hello'])) //=> Promise of { refused: 'not-a-copy' }
 */
export function openCopy(file: Blob, { passphrase, ...work }: OpenOptions = {}): Promise<Copy | RefusedFile> {
  return orRefused(async () => {
    const source = sourceOf(file);
    const locked = (await startOf(source)).startsWith(`${LOCKED} `);
    return readOpen(locked ? await unlocked(source, passphrase) : source, work);
  });
}
