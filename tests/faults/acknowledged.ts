import { isDeepStrictEqual } from 'node:util';
import type { Stored, StoredEntry } from './stored.ts';
import type { Verdict } from './tally.ts';

/** What a screen said was kept: the fields by which its entry is found again. */
export type Promised = Partial<StoredEntry> & { type: string };

/** Entries and photos that belong to one command: all of them are there, or none. */
export interface Whole {
  what: string;
  parts: (Promised | { photoId: string })[];
}

/**
 * The list of what was acknowledged. The attacking process keeps it itself, from the moment a commit was told to
 * it or a screen said "saved"; nothing of it is ever read from the store.
 */
export class Acknowledged {
  readonly #entries = new Map<string, StoredEntry>();
  #promised: Promised[] = [];
  #wholes: Whole[] = [];

  get size(): number {
    return this.#entries.size + this.#promised.length;
  }

  entries(entries: readonly StoredEntry[]): void {
    for (const entry of entries) this.#entries.set(entry.id, entry);
  }

  /** A screen said so. */
  promise(promised: Promised): void {
    this.#promised.push(promised);
  }

  whole(whole: Whole): void {
    this.#wholes.push(whole);
  }

  /** Entries the product may have taken out on purpose, such as those of the demo. */
  forget(which: (entry: StoredEntry) => boolean): void {
    for (const entry of this.#entries.values()) if (which(entry)) this.#entries.delete(entry.id);
    this.#promised = this.#promised.filter((one) => !which(one as StoredEntry));
  }

  /** A copy to go on from, as a copied phone would. */
  copy(): Acknowledged {
    const copy = new Acknowledged();
    copy.entries([...this.#entries.values()]);
    for (const one of this.#promised) copy.promise(one);
    for (const one of this.#wholes) copy.whole(one);
    return copy;
  }

  /** Looks for everything in what lies in the store. */
  check(stored: Stored): Verdict {
    const entries = stored.lines.map(({ entry }) => entry);
    const byId = new Map(entries.map((entry) => [entry.id, entry]));
    const photos = new Set(stored.photoIds);
    const lost: string[] = [];
    const wrong: string[] = [];
    for (const entry of this.#entries.values()) {
      const found = byId.get(entry.id);
      if (!found) lost.push(`acknowledged, not in the journal: ${shown(entry)}`);
      else if (!isDeepStrictEqual(found, entry))
        lost.push(`no longer what was acknowledged: ${shown(entry)} is now ${shown(found)}`);
    }
    for (const promised of this.#promised) {
      if (!entries.some((entry) => fits(entry, promised)))
        lost.push(`a screen said it was kept, not in the journal: ${shown(promised)}`);
    }
    for (const { what, parts } of this.#wholes) {
      const there = parts.filter((part) =>
        'type' in part ? entries.some((entry) => fits(entry, part)) : photos.has(part.photoId),
      );
      if (there.length > 0 && there.length < parts.length)
        wrong.push(`half-written: ${what}, ${there.length} of ${parts.length}`);
    }
    return { lost, wrong };
  }
}

function fits(entry: StoredEntry, promised: Promised): boolean {
  return Object.entries(promised).every(([field, value]) =>
    isDeepStrictEqual((entry as unknown as Record<string, unknown>)[field], value),
  );
}

function shown(entry: object): string {
  return JSON.stringify(entry).slice(0, 260);
}
