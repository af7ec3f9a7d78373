import type { Entry, Id } from '../../journal/entries.ts';
import { upcast } from '../../journal/upcasts.ts';
import type { RefusedFile } from '../../words/fileRefusals.ts';
import { wrongInCorrection } from '../entries/journalCheck.ts';
import { orRefused, refuseFile } from '../refusing.ts';
import { entryTypes } from '../schema/entryShapes.ts';
import type { Copy, Work } from './copy.ts';
import { sameContent } from './merge.ts';

/** What the logbook that a copy goes into already holds, asked a batch at a time. */
export interface HeldAlready {
  /** Those of the ids that are there, with the entry under each. */
  entries(ids: readonly Id[]): Promise<ReadonlyMap<Id, Entry>>;
  /** Those of the ids that are there, with the SHA-256 of the photo under each, as `sha256` gives it. */
  photos(ids: readonly Id[]): Promise<ReadonlyMap<Id, string>>;
}

/** What adding a copy would do. */
export interface WouldAdd {
  newEntries: number;
  knownEntries: number;
  newPhotos: number;
  knownPhotos: number;
  /** Bikes that begin in the copy and are not here yet, by name. */
  newBikes: string[];
  /** When the first and the last of the new entries happened; absent when there are none. */
  happened?: { firstMs: number; lastMs: number };
}

const PHOTO_BATCH = 500;

/**
 * Tells what a copy would add to a logbook, and adds nothing. Entries are known by their id and must then say the
 * same; photos likewise.
 * @returns counts, or the refusal that adding it would end with
 */
export function dryRun(
  copy: Copy,
  known: HeldAlready,
  { signal, onProgress }: Work = {},
): Promise<WouldAdd | RefusedFile> {
  return orRefused(async () => {
    const would: WouldAdd = { newEntries: 0, knownEntries: 0, newPhotos: 0, knownPhotos: 0, newBikes: [] };
    for await (const batch of copy.readEntries()) {
      signal?.throwIfAborted();
      const here = await known.entries(batch.map(({ id }) => id));
      for (const entry of batch) countEntry(would, entry, here.get(entry.id));
      onProgress?.({ entries: would.newEntries + would.knownEntries, photos: 0, bytes: 0 });
    }
    for (let at = 0; at < copy.photos.length; at += PHOTO_BATCH) {
      signal?.throwIfAborted();
      const batch = copy.photos.slice(at, at + PHOTO_BATCH);
      const here = await known.photos(batch.map(({ photoId }) => photoId));
      for (const { photoId, sha256 } of batch) {
        const there = here.get(photoId);
        if (there === undefined) would.newPhotos += 1;
        else if (there === sha256) would.knownPhotos += 1;
        else refuseFile('same-photo-other-picture', photoId);
      }
    }
    await checkAstray(copy, known);
    return would;
  });
}

function countEntry(would: WouldAdd, stored: Entry, here: Entry | undefined): void {
  if (here) {
    if (!sameContent(here, stored)) refuseFile('same-id-other-content', stored.id);
    would.knownEntries += 1;
    return;
  }
  const entry = upcast(stored);
  would.newEntries += 1;
  if (entry.type === 'bike-started') would.newBikes.push(entry.name);
  const { firstMs, lastMs } = would.happened ?? {
    firstMs: entry.happenedAtMs,
    lastMs: entry.happenedAtMs,
  };
  would.happened = {
    firstMs: Math.min(firstMs, entry.happenedAtMs),
    lastMs: Math.max(lastMs, entry.happenedAtMs),
  };
}

/**
 * Corrections of entries that only this logbook holds are judged here, where those are. One of an entry whose
 * line was lost must at least fit some kind of entry.
 */
async function checkAstray({ astray }: Copy, known: HeldAlready): Promise<void> {
  const here = await known.entries(astray.map(({ corrects }) => corrects));
  for (const { where, corrects, becomes } of astray) {
    const original = here.get(corrects);
    const kinds = original ? [upcast(original).type] : entryTypes;
    if (!kinds.some((type) => wrongInCorrection(type, becomes) === undefined))
      refuseFile('correction-astray', where);
  }
}
