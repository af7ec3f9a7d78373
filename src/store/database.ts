import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Photo } from '../journal/commands.ts';
import type { Entry } from '../journal/entries.ts';
import { type Row, VIEWS_VERSION } from '../journal/rows.ts';

/** Version of the stores below. A rise needs a branch in `upgrade` and a fixture of a logbook of the version before. */
export const STORE_VERSION = 1;

/** The browser's version number holds both, so that a tab whose code makes older rows stops when newer code opens. */
const ROOM = 1000;
export const DATABASE_VERSION = STORE_VERSION * ROOM + VIEWS_VERSION;

/** Name under which the version of the views is noted. */
export const VIEWS_META = 'views-version';

export interface JournalLine {
  /** Running number, without gaps but where the demo was taken out: adding the next one proves that no other tab has. */
  seq: number;
  entry: Entry;
  /** Where the line is found again: histories and rows, see journal/facts.ts. */
  places: string[];
}

export interface Schema extends DBSchema {
  journal: { key: number; value: JournalLine; indexes: { id: string; places: string } };
  views: { key: string; value: Row; indexes: { group: string; dueAtMs: number } };
  /** Which due instants have been announced; the first to add a key has the right to announce it. */
  announced: { key: string; value: { key: string; atMs: number } };
  photos: { key: string; value: Photo };
  meta: { key: string; value: { name: string; value: unknown } };
}

export type Database = IDBPDatabase<Schema>;

export interface Watchers {
  /** Another tab wants to bring the store to a newer version; this connection is closed. */
  onNewer?(): void;
  /** The store is being deleted; this connection is closed. */
  onDeleted?(): void;
  /** There was no store; an empty one was made. */
  onMade?(): void;
  /** An older tab keeps the store from being opened. */
  onBlocked?(): void;
  /** The connection is gone: site data cleared, or the browser lost it. */
  onLost?(): void;
}

/**
 * Opens the store.
 * @throws DOMException `VersionError` when a newer version of the app has written it
 */
export function openDatabase(name: string, watchers: Watchers = {}): Promise<Database> {
  return openDB<Schema>(name, DATABASE_VERSION, {
    upgrade(db, oldVersion) {
      const oldStore = Math.floor(oldVersion / ROOM);
      if (oldStore < 1) {
        const journal = db.createObjectStore('journal', { keyPath: 'seq' });
        journal.createIndex('id', 'entry.id', { unique: true });
        journal.createIndex('places', 'places', { multiEntry: true });
        const views = db.createObjectStore('views', { keyPath: 'key' });
        views.createIndex('group', 'group');
        views.createIndex('dueAtMs', 'dueAtMs');
        db.createObjectStore('announced', { keyPath: 'key' });
        db.createObjectStore('photos', { keyPath: 'photoId' });
        const meta = db.createObjectStore('meta', { keyPath: 'name' });
        // An empty store needs no folding; the version is noted with its making.
        meta.put({ name: VIEWS_META, value: VIEWS_VERSION });
        watchers.onMade?.();
      }
    },
    blocked: () => watchers.onBlocked?.(),
    blocking(_current, next, event) {
      (event.target as IDBDatabase).close();
      if (next === null) watchers.onDeleted?.();
      else watchers.onNewer?.();
    },
    terminated: () => watchers.onLost?.(),
  });
}
