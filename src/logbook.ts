import { v7 } from 'uuid';
import type { AsBuilt, DueLine, HistoryLine, HistoryMark, HistoryPage } from './journal/answers.ts';
import type { Command, Photo, Refused } from './journal/commands.ts';
import type { Entry, Id } from './journal/entries.ts';
import type { Filling } from './store/anew.ts';
import type { GivenCommand, Homes } from './store/append.ts';
import type { StoreCheck } from './store/check.ts';
import { claimDue } from './store/claim.ts';
import type { Mending } from './store/copies.ts';
import { type Database, openDatabase } from './store/database.ts';
import type { DemoRemoval } from './store/demo.ts';
import * as stored from './store/read.ts';
import { type NoQuestion, readersFor, type ViewName, type Views } from './store/views.ts';

export { openDrafts } from './store/drafts.ts';
export type {
  AsBuilt,
  DueLine,
  HistoryLine,
  HistoryMark,
  HistoryPage,
  NoQuestion,
  Photo,
  StoreCheck,
  ViewName,
  Views,
};

/** The part of the door that writes; loaded when it is first needed. */
export type Writer = typeof import('./store/writer.ts');

export type LogbookState =
  | { is: 'open' }
  /** Another tab runs a newer version; this one reads and writes no more. */
  | { is: 'newer-version' }
  /** The store was deleted while this page was open; this page reads and writes no more. */
  | { is: 'deleted' }
  /** Another tab keeps the store back. */
  | { is: 'blocked' }
  | { is: 'rebuilding'; share: number }
  | { is: 'lost'; why: string };

export interface Options {
  name?: string;
  now?: () => number;
  /** The phone's time zone, IANA name. */
  zone: () => string;
  /** What this phone is called, as it was typed; asked for each command, since it can be renamed. */
  phone?: () => string | undefined;
  loadWriter?: () => Promise<Writer>;
}

export interface Done {
  entries: Entry[];
}

/** One command of a story, and the instant it is given at. */
export interface StoryLine {
  atMs: number;
  command: Command;
  photos?: Photo[];
}

/** What a copy is written from, and what goes into the logbook out of one. */
export interface CopyDoor {
  /** Every entry as it is stored, in batches. */
  entries(): AsyncIterable<readonly Entry[]>;
  photos(): AsyncIterable<Photo>;
  entriesUnder(ids: readonly Id[]): Promise<ReadonlyMap<Id, Entry>>;
  photoUnder(photoId: Id): Promise<Photo | undefined>;
  keepPhoto(photo: Photo): Promise<void>;
  /** Lines of the journal after a number, in order, a batch at a time. */
  linesAfter(seq: number): Promise<{ seq: number; entry: Entry }[]>;
  seqUnder(entryId: Id): Promise<number | undefined>;
  /** How many entries there are, those up to a number where one is given, and how many photos. */
  counts(upToSeq?: number): Promise<{ entries: number; photos: number }>;
  photoIds(): Promise<Id[]>;
  /** What was noted on this phone under a name: no entry, and in no copy. */
  noted<T>(name: string): Promise<T | undefined>;
  /** Notes something on this phone; nothing takes the note away. */
  note(name: string, value: unknown): Promise<void>;
  /** Puts back what no longer says what it said when it was written; all of it, or nothing. */
  mend(mending: Mending): Promise<void>;
  /** Takes in all of them that are new, or nothing; tells how many were new. */
  takeIn(entries: readonly Entry[], onProgress: (share: number) => void): Promise<number>;
  /**
   * Puts a new store, filled with these, in the place of one that does not open or cannot be read.
   * @returns false when the store can be used after all: then nothing was deleted
   */
  beginAnew(filling: Filling, onProgress: (share: number) => void): Promise<boolean>;
}

export interface Logbook {
  /**
   * Carries out a command, or a list of them: all of it or none. Resolves after the commit; rejects when the store
   * could not keep it.
   */
  run(command: Command | readonly Command[], photos?: Photo[]): Promise<Done | Refused>;
  read<V extends ViewName>(view: V, ask: Views[V]['ask']): Promise<Views[V]['gives']>;
  /** Reads a view before a screen asks, so that the first drawing finds it there. */
  readAhead<V extends ViewName>(view: V, ask: Views[V]['ask']): Promise<void>;
  /** What was read ahead and is still true; nothing after the next commit. */
  peek<V extends ViewName>(view: V, ask: Views[V]['ask']): Views[V]['gives'] | undefined;
  /** Calls back after every commit, in this tab or another. Returns the way to stop. */
  watch(onChange: () => void): () => void;
  state(): LogbookState;
  onState(listener: (state: LogbookState) => void): () => void;
  /** What fell due and is this caller's to announce. */
  claimDue(): Promise<DueLine[]>;
  /**
   * Carries out a list of commands as if each were given at its own instant, all of it or none. For the demo, whose
   * days are invented; nothing else has a clock of its own.
   */
  runStory(story: readonly StoryLine[]): Promise<Done | Refused>;
  removeDemo(): Promise<DemoRemoval>;
  copies: CopyDoor;
  /** Looks whether the store holds together; also where it could not be brought up to date on opening. */
  check(): Promise<StoreCheck>;
  /** Folds every row anew from the journal. */
  sortAnew(onProgress: (share: number) => void): Promise<void>;
  /** Resolves when the store is open, or is known not to open: see `state`. */
  opened: Promise<void>;
  /** Opens a store again that did not open; resolves as `opened` does. */
  openAgain(): Promise<void>;
  now(): number;
  newId(): Id;
  close(): void;
}

const CHANNEL = 'pinchbolt-commits';

/** Under which a view that was read ahead is found again. */
const aheadKey = (view: ViewName, ask: unknown): string => `${view} ${JSON.stringify(ask)}`;

/**
 * The one door to the data. It is there at once; reading and writing wait until the store is open.
 * @param options.now clock, ms UTC; tests give their own
 * @param options.loadWriter how the writing half is loaded
 */
export function logbookFor(options: Options): Logbook {
  const now = options.now ?? Date.now;
  const watchers = new Set<() => void>();
  const listeners = new Set<(state: LogbookState) => void>();
  let state: LogbookState = { is: 'open' };
  const setState = (next: LogbookState) => {
    state = next;
    for (const listener of listeners) listener(next);
  };
  const channel = new BroadcastChannel(CHANNEL);
  const ahead = new Map<string, unknown>();
  let commits = 0;
  const tell = () => {
    ahead.clear();
    commits += 1;
    for (const watcher of watchers) watcher();
  };
  const announce = () => {
    tell();
    if (!closed) channel.postMessage('committed');
  };
  let closed = false;
  channel.onmessage = tell;

  const homes: Homes = new Map();
  const { name = 'pinchbolt', zone } = options;
  const open = () =>
    openDatabase(name, {
      onNewer: () => setState({ is: 'newer-version' }),
      onDeleted: () => setState({ is: 'deleted' }),
      onMade: () => {
        // A page that had the store open before finds it gone: the site's data was cleared.
        if (hadStore) setState({ is: 'deleted' });
      },
      onBlocked: () => setState({ is: 'blocked' }),
      onLost: () => {
        database = undefined;
      },
    });
  let database: Database | undefined;
  let hadStore = false;
  async function openStore(): Promise<void> {
    try {
      database ??= await open();
      hadStore = true;
      if (options.loadWriter && !(await stored.viewsAreCurrent(database))) {
        const { rebuildIfOld } = await theWriter();
        await rebuildIfOld(database, (share) => setState({ is: 'rebuilding', share }));
      }
      if (state.is !== 'open') setState({ is: 'open' });
    } catch (thrown) {
      const newer = (thrown as DOMException)?.name === 'VersionError';
      setState(newer ? { is: 'newer-version' } : { is: 'lost', why: String(thrown) });
    }
  }

  function openAgain(): Promise<void> {
    database?.close();
    database = undefined;
    return openStore();
  }

  /** Some browsers lose the connection of a page that slept; opening it again is all that is needed. */
  async function withDatabase<T>(work: (db: Database) => Promise<T>): Promise<T> {
    await opened;
    refuseIfClosed();
    database ??= await open();
    refuseIfClosed();
    try {
      return await work(database);
    } catch (thrown) {
      const name = (thrown as DOMException)?.name;
      if (name !== 'InvalidStateError' && name !== 'UnknownError') throw thrown;
      database = await open();
      refuseIfClosed();
      return work(database);
    }
  }

  function refuseIfClosed(): void {
    if (state.is === 'newer-version') throw new Error('a newer version of the app has the logbook open');
    if (state.is === 'deleted') throw new Error('the logbook was deleted while this page was open');
  }

  let writer: Promise<Writer> | undefined;
  const theWriter = () => {
    if (!options.loadWriter) throw new Error('this door only reads');
    writer ??= options.loadWriter();
    // A chunk that failed to load is asked for again next time.
    writer.catch(() => {
      writer = undefined;
    });
    return writer;
  };

  const readers = readersFor(now, theWriter);
  const opened = openStore();

  /** One question to the store at a time, so that what is asked for slowly holds nothing up. */
  const inCopies = async <T>(work: (copies: Writer['copies'], db: Database) => Promise<T>): Promise<T> => {
    const { copies } = await theWriter();
    return withDatabase((db) => work(copies, db));
  };
  const copies: CopyDoor = {
    async *entries() {
      for (let seq = 0; ; ) {
        const { entries, last } = await inCopies((store, db) => store.entriesAfter(db, seq));
        if (entries.length === 0) return;
        yield entries;
        seq = last;
      }
    },
    async *photos() {
      for (let photoId: Id | undefined; ; ) {
        const photo = await inCopies((store, db) => store.photoAfter(db, photoId));
        if (!photo) return;
        yield photo;
        photoId = photo.photoId;
      }
    },
    entriesUnder: (ids) => inCopies((store, db) => store.entriesUnder(db, ids)),
    photoUnder: (photoId) => inCopies((store, db) => store.photoUnder(db, photoId)),
    keepPhoto: (photo) => inCopies((store, db) => store.keepPhoto(db, photo)),
    linesAfter: (seq) => inCopies((store, db) => store.linesAfter(db, seq)),
    seqUnder: (entryId) => inCopies((store, db) => store.seqUnder(db, entryId)),
    counts: (upToSeq) => inCopies((store, db) => store.counts(db, upToSeq)),
    photoIds: () => inCopies((store, db) => store.photoIds(db)),
    noted: <T>(name: string) =>
      inCopies((store, db) => store.noteOnPhone(db, name)) as Promise<T | undefined>,
    note: (name, value) => inCopies((store, db) => store.setNoteOnPhone(db, name, value)),
    async mend(mending) {
      await inCopies((store, db) => store.mend(db, mending));
      homes.clear();
      announce();
    },
    async takeIn(entries, onProgress) {
      const added = await inCopies((store, db) => store.takeIn(db, entries, onProgress));
      homes.clear();
      announce();
      return added;
    },
    async beginAnew(filling, onProgress) {
      const { beginAnew } = await theWriter();
      await openAgain();
      refuseIfClosed();
      try {
        const onBlocked = () => setState({ is: 'blocked' });
        return await beginAnew(database, name, filling, { onProgress, onBlocked });
      } finally {
        await openAgain();
        announce();
      }
    },
  };

  const around = () => ({ zone: zone(), phone: options.phone?.(), newId });

  async function run(list: readonly GivenCommand[]): Promise<Done | Refused> {
    const { append } = await theWriter();
    const result = await withDatabase((db) => append(db, homes, list, around()));
    // The hand that tapped hears of it first, then everybody who looks on.
    if ('entries' in result && result.entries.length > 0) setTimeout(announce);
    return result;
  }

  return {
    run(asked, photos = []) {
      const commands = Array.isArray(asked) ? (asked as readonly Command[]) : [asked as Command];
      const nowMs = now();
      return run(commands.map((command, at) => ({ command, nowMs, ...(at === 0 ? { photos } : {}) })));
    },
    runStory: (story) => run(story.map(({ atMs, ...asked }) => ({ ...asked, nowMs: atMs }))),
    read: (view, ask) => withDatabase((db) => readers[view](db, ask)),
    async readAhead(view, ask) {
      const before = commits;
      const value = await withDatabase((db) => readers[view](db, ask));
      if (commits === before) ahead.set(aheadKey(view, ask), value);
    },
    peek: <V extends ViewName>(view: V, ask: Views[V]['ask']) =>
      ahead.get(aheadKey(view, ask)) as Views[V]['gives'] | undefined,
    watch(onChange) {
      watchers.add(onChange);
      return () => watchers.delete(onChange);
    },
    state: () => state,
    onState(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    claimDue: () => withDatabase((db) => claimDue(db, now())),
    async removeDemo() {
      const { removeDemo } = await theWriter();
      const result = await withDatabase((db) => removeDemo(db, { nowMs: now(), ...around() }));
      announce();
      return result;
    },
    copies,
    check: async () => {
      const { checkStore } = await theWriter();
      return withDatabase(checkStore);
    },
    async sortAnew(onProgress) {
      const { sortAnew } = await theWriter();
      await withDatabase((db) => sortAnew(db, onProgress));
      announce();
    },
    opened,
    openAgain,
    now,
    newId,
    close() {
      closed = true;
      channel.close();
      database?.close();
      database = undefined;
    },
  };
}

/** The worker's narrow door: what is due, and the right to announce it. It is small, because a worker is. */
export async function openDue(
  now: () => number = Date.now,
): Promise<Pick<Logbook, 'claimDue' | 'close'> & { overdue(): Promise<DueLine[]> }> {
  const db = await openDatabase('pinchbolt');
  return {
    claimDue: () => claimDue(db, now()),
    overdue: () => stored.due(db, now()),
    close: () => db.close(),
  };
}

/** RFC 9562 UUID, version 7: sorts by creation and needs no server to hand it out. */
function newId(): Id {
  return v7();
}
