import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Photo } from '../journal/commands.ts';

/** Words of a form, or the photos taken in it; each lies under a key of its own. */
type Draft = { key: string; text: string } | { key: string; photos: Photo[] };

interface DraftSchema extends DBSchema {
  drafts: { key: string; value: Draft };
}

/** What is typed or taken and not yet logged. It lies beside the logbook, not in it: nothing of it is an entry. */
export interface Drafts {
  /** What an earlier page left half typed, by key. */
  texts: ReadonlyMap<string, string>;
  /** The photos it left unsaved. */
  photos: ReadonlyMap<string, Photo[]>;
  /**
   * Keeps words or photos of a form; empty words or no photos let those go, undefined both. Never fails: a form
   * works without a mirror, only a kill would lose it.
   */
  keep(key: string, kept: string | Photo[] | undefined): void;
}

/** Under this key lie the photos of a form; no form is called like that. */
const PHOTOS = 'photos of ';

/**
 * Opens the place where drafts lie. It is not localStorage, whose writes browsers hold back: five seconds at
 * least, up to a minute on a busy page, and a browser that is killed meanwhile has never heard of them.
 * @returns what is there, and the way to keep more
 */
export async function openDrafts(name = 'pinchbolt-drafts'): Promise<Drafts> {
  const db = await openDB<DraftSchema>(name, 1, {
    upgrade: (fresh) => void fresh.createObjectStore('drafts', { keyPath: 'key' }),
  });
  const left = await readableDrafts(db);
  const write = (change: Promise<unknown>) => void change.catch(() => {});
  return {
    texts: new Map(left.flatMap((one) => ('text' in one ? [[one.key, one.text]] : []))),
    photos: new Map(
      left.flatMap((one) => ('photos' in one ? [[one.key.slice(PHOTOS.length), one.photos]] : [])),
    ),
    keep(key, kept) {
      const photosKey = `${PHOTOS}${key}`;
      if (kept === '') write(db.delete('drafts', key));
      else if (typeof kept === 'string') write(db.put('drafts', { key, text: kept }));
      else if (kept?.length) write(db.put('drafts', { key: photosKey, photos: kept }));
      else write(db.delete('drafts', photosKey));
      if (kept === undefined) write(db.delete('drafts', key));
    },
  };
}

/** Every draft that can be read; one that cannot be read keeps none of the others back. */
async function readableDrafts(db: IDBPDatabase<DraftSchema>): Promise<Draft[]> {
  const all = await db.getAll('drafts').catch(() => oneByOne(db));
  return all.filter(isDraft);
}

async function oneByOne(db: IDBPDatabase<DraftSchema>): Promise<Draft[]> {
  const read: Draft[] = [];
  for (const key of await db.getAllKeys('drafts')) {
    const draft = await db.get('drafts', key).catch(() => undefined);
    if (draft) read.push(draft);
  }
  return read;
}

/** Whether something is shaped like a draft; an older or a torn one may be anything. */
function isDraft(one: Draft): boolean {
  if ('text' in one) return typeof one.text === 'string';
  const { photos } = one as { photos?: unknown };
  return Array.isArray(photos) && photos.every((photo: Photo) => photo?.buf instanceof ArrayBuffer);
}
