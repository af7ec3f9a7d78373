import { isDemo } from '../../journal/demoIds.ts';
import type { Entry, Id } from '../../journal/entries.ts';
import { COUNTED_MOST } from '../../words/safetyWords.ts';

const KEY = 'pinchbolt:saved-copy';

/** The last copy that was saved from this phone. */
export interface SavedCopy {
  atMs: number;
  /** The last entry in it. */
  lastId: Id;
}

/** Watches a copy being written, and notes how far the journal is in it once it is saved. */
export function savedCopy(atMs: number): {
  passing(entries: AsyncIterable<readonly Entry[]>): AsyncGenerator<readonly Entry[]>;
  note(): void;
} {
  let lastId: Id | undefined;
  return {
    async *passing(entries) {
      for await (const batch of entries) {
        lastId = batch.at(-1)?.id ?? lastId;
        yield batch;
      }
    },
    note() {
      if (lastId === undefined) return;
      try {
        localStorage.setItem(KEY, JSON.stringify({ atMs, lastId } satisfies SavedCopy));
      } catch {
        // Then the first screen asks for a copy sooner than it need.
      }
    },
  };
}

function lastSaved(): SavedCopy | undefined {
  try {
    const saved = JSON.parse(localStorage.getItem(KEY) ?? '') as SavedCopy;
    return typeof saved?.lastId === 'string' ? saved : undefined;
  } catch {
    return undefined;
  }
}

/** Entries of the person's own that no saved copy holds, and since when. */
export interface UnsavedEntries {
  entries: number;
  sinceMs: number;
}

/** The journal, as far as it is asked here. */
interface Lines {
  linesAfter(seq: number): Promise<{ seq: number; entry: Entry }[]>;
  seqUnder(entryId: Id): Promise<number | undefined>;
}

/** Counts the entries that exist on this phone alone, without those of the demo; not much further than is told. */
export async function onlyHere(copies: Lines): Promise<UnsavedEntries | undefined> {
  const saved = lastSaved();
  let found: UnsavedEntries | undefined;
  const savedSeq = saved && (await copies.seqUnder(saved.lastId));
  // The last entry of the copy may have left with the demo.
  const savedMs = saved && savedSeq === undefined ? saved.atMs : Number.NEGATIVE_INFINITY;
  for (let seq = savedSeq ?? 0; ; ) {
    const lines = await copies.linesAfter(seq);
    const last = lines.at(-1);
    if (!last || (found?.entries ?? 0) > COUNTED_MOST) return found;
    for (const { entry } of lines) {
      const ids = Object.entries(entry).flatMap(([field, value]) => (/Id$/.test(field) ? [value] : []));
      if (ids.some((id) => typeof id === 'string' && isDemo(id))) continue;
      if (entry.type === 'demo-removed' || entry.writtenAtMs <= savedMs) continue;
      found = {
        entries: (found?.entries ?? 0) + 1,
        sinceMs: Math.min(found?.sinceMs ?? entry.writtenAtMs, entry.writtenAtMs),
      };
    }
    seq = last.seq;
  }
}
