import { type DBSchema, openDB } from 'idb';

interface Schema extends DBSchema {
  drafts: { key: string; value: { key: string; text: string } };
}

/** What is being typed and not yet logged. It lies beside the logbook, not in it: nothing of it is an entry. */
export interface Drafts {
  /** What an earlier page left half typed, by key. */
  texts: ReadonlyMap<string, string>;
  /** Keeps a text, or lets it go. Never fails: a form works without a mirror, only a kill would lose it. */
  keep(key: string, text: string | undefined): void;
}

/**
 * Opens the place where drafts lie. It is not localStorage, whose writes browsers hold back: five seconds at
 * least, up to a minute on a busy page, and a browser that is killed meanwhile has never heard of them.
 * @returns what is there, and the way to keep more
 */
export async function openDrafts(name = 'pinchbolt-drafts'): Promise<Drafts> {
  const db = await openDB<Schema>(name, 1, {
    upgrade: (fresh) => void fresh.createObjectStore('drafts', { keyPath: 'key' }),
  });
  const left = await db.getAll('drafts');
  return {
    texts: new Map(left.map(({ key, text }) => [key, text])),
    keep(key, text) {
      const change = text === undefined ? db.delete('drafts', key) : db.put('drafts', { key, text });
      change.catch(() => {});
    },
  };
}
