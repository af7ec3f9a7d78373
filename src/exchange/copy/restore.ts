import type { Photo } from '../../journal/commands.ts';
import type { Entry, Id } from '../../journal/entries.ts';
import type { RefusedFile } from '../../words/fileRefusals.ts';
import { sha256 } from '../archive/digest.ts';
import { orRefused } from '../refusing.ts';
import type { Copy, Work } from './copy.ts';
import { dryRun, type HeldAlready, type WouldAdd } from './dryRun.ts';
import { type OpenOptions, openCopy } from './openCopy.ts';

/** The logbook a copy goes into. */
export interface Receiver {
  entriesUnder(ids: readonly Id[]): Promise<ReadonlyMap<Id, Entry>>;
  photoUnder(photoId: Id): Promise<Photo | undefined>;
  keepPhoto(photo: Photo): Promise<void>;
  takeIn(entries: readonly Entry[], onProgress: (share: number) => void): Promise<number>;
}

const heldBy = (receiver: Receiver): HeldAlready => ({
  entries: (ids) => receiver.entriesUnder(ids),
  async photos(ids) {
    const known = new Map<Id, string>();
    // One at a time: each is heavy.
    for (const id of ids) {
      const photo = await receiver.photoUnder(id);
      if (photo) known.set(id, await sha256(new Uint8Array(photo.buf)));
    }
    return known;
  },
});

/** Reads a copy through and tells what it would add to a logbook; adds nothing. */
export async function readCopy(
  file: Blob,
  receiver: Receiver,
  options: OpenOptions,
): Promise<{ copy: Copy; would: WouldAdd } | RefusedFile> {
  const copy = await openCopy(file, options);
  if ('refused' in copy) return copy;
  const would = await dryRun(copy, heldBy(receiver), { signal: options.signal });
  return 'refused' in would ? would : { copy, would };
}

/**
 * Adds a copy to a logbook: photos first, which mean nothing until an entry names them, then all entries at once. What
 * is there is looked at again before, for it may have changed since the dry run.
 * @returns how many entries and photos were new
 */
export async function addCopy(
  copy: Copy,
  receiver: Receiver,
  { signal, onProgress = () => {} }: { signal?: Work['signal']; onProgress?: (share: number) => void } = {},
): Promise<{ entries: number; photos: number } | RefusedFile> {
  const would = await dryRun(copy, heldBy(receiver), { signal });
  if ('refused' in would) return would;
  return orRefused(async () => {
    for await (const photo of copy.readPhotos()) {
      signal?.throwIfAborted();
      await receiver.keepPhoto(photo);
    }
    const entries: Entry[] = [];
    for await (const batch of copy.readEntries()) for (const entry of batch) entries.push(entry);
    signal?.throwIfAborted();
    return { entries: await receiver.takeIn(entries, onProgress), photos: would.newPhotos };
  });
}
