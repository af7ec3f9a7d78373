import type { Photo } from '../journal/commands.ts';
import type { Entry, Id } from '../journal/entries.ts';
import { catchUp, inStep, type Slack } from './catchUp.ts';
import { type Compared, compare } from './compare.ts';
import { keepMarkOf } from './followMark.ts';
import { readMark } from './mark.ts';
import { type HeldMirror, type Mirror, type MirroredPhoto, sha256Hex } from './mirror.ts';
import type { Source } from './source.ts';

/** How the second copy stands. */
export interface CopyState {
  /**
   * `none`: the browser has no place for one. `failed`: it could not be written. `unread`: the logbook cannot be read,
   * so it stays as it is.
   */
  is: 'opening' | 'none' | 'level' | 'failed' | 'unread';
  entries: number;
  photos: number;
  /** When it was last written, ms UTC. */
  writtenAtMs?: number;
  /** Entries and photos that were there and are no more in the logbook. */
  missing: { entries: number; photos: number };
  why?: string;
}

/** What the second copy holds, to be read out. */
export interface CopyHeld {
  entries: Entry[];
  photos: MirroredPhoto[];
  /** Lines that could not be read. */
  unreadable: number;
  /** When it was last level with the logbook, ms UTC; absent where no line says so. */
  writtenAtMs?: number;
  /** Entries that the mark knows of and that are not in it. */
  lacking: number;
  photo(one: MirroredPhoto): Promise<Photo | undefined>;
}

export interface Restored {
  entries: number;
  photos: number;
  /** Photos of the second copy whose bytes are not as they were. */
  photosLost: number;
}

/** The second copy of the logbook on the phone itself. */
export interface SecondCopy {
  state(): CopyState;
  onState(listener: (state: CopyState) => void): () => void;
  /** Brings it level with the logbook; several calls at once are one. */
  follow(): Promise<void>;
  /** Compares all of it with the logbook; undefined where there is none. */
  compare(): Promise<(Compared & { differingPhotos: MirroredPhoto[] }) | undefined>;
  read(): Promise<CopyHeld | undefined>;
  /**
   * Brings back out of the second copy what the logbook lacks, all of those entries at once or none, and what no longer
   * says what it said.
   */
  restore(onProgress: (share: number) => void): Promise<Restored>;
  /**
   * Where the store does not open or cannot be read: deletes it and fills a new one with all that the second copy holds.
   * @returns undefined when the store can be used after all: then nothing was deleted
   */
  beginAnew(onProgress: (share: number) => void): Promise<Restored | undefined>;
  /** A new logbook is wanted: the second copy and the mark go by what the store holds now. */
  startOver(): Promise<void>;
}

export interface SecondCopyOptions {
  source: Source;
  /** Opens the mirror; undefined where the browser has no place for one. */
  mirror: () => Promise<Mirror | undefined>;
  now: () => number;
  ofDemo: (id: Id) => boolean;
}

const nothing = { entries: 0, photos: 0 };
const NO_COPY = 'there is no second copy';

/** The one that keeps the second copy: it follows the logbook, compares, and brings back. */
export function keepSecondCopy({ source, mirror, now, ofDemo }: SecondCopyOptions): SecondCopy {
  const opened = mirror();
  const listeners = new Set<(state: CopyState) => void>();
  let state: CopyState = { is: 'opening', ...nothing, missing: nothing };
  let slack: Slack = inStep;
  const mark = keepMarkOf(source, now);
  const tell = (next: CopyState) => {
    state = next;
    for (const listener of listeners) listener(next);
  };

  async function followByMark(): Promise<void> {
    const gone = await mark.gone((await source.counts()).entries);
    const missing = { entries: gone, photos: 0 };
    tell({ is: 'none', ...nothing, missing });
  }

  const compared = (held: HeldMirror) => compare(held, source, { now, ofDemo });

  /** With the bytes of every photo as well. */
  async function lookThrough(held: HeldMirror): Promise<Compared & { differingPhotos: MirroredPhoto[] }> {
    const found = await compared(held);
    const differingPhotos: MirroredPhoto[] = [];
    for (const photo of found.allPhotos) {
      const here = await source.photoUnder(photo.photoId);
      if (here && (!(here.buf instanceof ArrayBuffer) || (await sha256Hex(here.buf)) !== photo.hash))
        differingPhotos.push(photo);
    }
    return { ...found, differingPhotos };
  }

  async function settle(found: Compared): Promise<void> {
    const end = found.upTo === undefined ? undefined : await source.seqUnder(found.upTo);
    // What another page wrote since then is not compared yet.
    const here = await source.counts(end ?? 0);
    const ids = new Set(found.missing.map(({ id }) => id));
    slack = { entries: found.entries - here.entries, photos: found.photos - here.photos, missing: ids };
    const gone = await mark.gone(found.entries);
    const missing = { entries: ids.size + gone, photos: found.missingPhotos.length };
    tell({ is: 'level', entries: found.entries, photos: found.photos, writtenAtMs: now(), missing });
  }

  async function followOnce(): Promise<void> {
    const copy = await opened;
    if (!copy) return followByMark();
    await copy.alone(async (held) => {
      const caughtUp = await catchUp(held, source, now, slack);
      if (!caughtUp) return settle(await compared(held));
      const { level } = caughtUp;
      slack = caughtUp.slack;
      const gone = await mark.gone(level.entries);
      const missing = { ...state.missing, entries: slack.missing.size + gone };
      tell({ is: 'level', entries: level.entries, photos: level.photos, writtenAtMs: level.atMs, missing });
    });
  }

  let running: Promise<void> | undefined;
  let again = false;
  async function followUntilLevel(): Promise<void> {
    try {
      do {
        again = false;
        await followOnce();
      } while (again);
    } catch (thrown) {
      const is = await source.counts().then(
        () => 'failed' as const,
        () => 'unread' as const,
      );
      tell({ ...state, is, why: String((thrown as Error)?.message ?? thrown) });
    } finally {
      running = undefined;
    }
  }
  function follow(): Promise<void> {
    again = running !== undefined;
    running ??= followUntilLevel();
    return running;
  }

  /** @param bytesOf how the bytes of a photo are read */
  async function readOut(held: HeldMirror, bytesOf: HeldMirror['readPhoto']): Promise<CopyHeld> {
    const entries = new Map<Id, Entry>();
    const photos = new Map<Id, MirroredPhoto>();
    let writtenAtMs: number | undefined;
    const unreadable = await held.read((content) => {
      if ('entry' in content) entries.set(content.entry.id, content.entry);
      else if ('photo' in content) photos.set(content.photo.photoId, content.photo);
      else if ('level' in content) writtenAtMs = content.level.atMs;
    });
    return {
      ...{ entries: [...entries.values()], photos: [...photos.values()], unreadable },
      ...(writtenAtMs === undefined ? {} : { writtenAtMs }),
      lacking: Math.max(0, ((await readMark())?.entries ?? 0) - entries.size),
      async photo({ hash, ...one }) {
        const buf = await bytesOf(hash);
        return buf && { ...one, buf };
      },
    };
  }

  /** Fills a new store from the mirror, which is held meanwhile: of two pages the later finds the store filled. */
  async function fillAnew(
    held: HeldMirror,
    onProgress: (share: number) => void,
  ): Promise<Restored | undefined> {
    const there = await readOut(held, held.readPhoto);
    const { entries } = there;
    if (entries.length === 0) throw new Error(NO_COPY);
    let photos = 0;
    async function* asWritten() {
      for (const one of there.photos) {
        const photo = await there.photo(one);
        if (!photo) continue;
        photos += 1;
        yield photo;
      }
    }
    const anew = await source.beginAnew({ entries, photos: asWritten() }, onProgress);
    return anew ? { entries: entries.length, photos, photosLost: there.photos.length - photos } : undefined;
  }

  return {
    state: () => state,
    onState(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    follow,
    async compare() {
      const copy = await opened;
      return copy?.alone(async (held) => {
        const found = await lookThrough(held);
        await settle(found);
        return found;
      });
    },
    async read() {
      const copy = await opened;
      return copy?.alone((held) => readOut(held, (hash) => copy.alone((again) => again.readPhoto(hash))));
    },
    async restore(onProgress) {
      const copy = await opened;
      if (!copy) throw new Error(NO_COPY);
      const { found, photosAsWritten, entriesAsWritten } = await copy.alone(async (held) => {
        const found = await lookThrough(held);
        const bent = new Set(found.differingPhotos.map(({ photoId }) => photoId));
        const photos = [...found.missingPhotos, ...found.differingPhotos];
        const photosAsWritten = await Promise.all(
          photos.map(async ({ hash, ...one }) => {
            const buf = await held.readPhoto(hash);
            return { photo: buf && { ...one, buf }, bent: bent.has(one.photoId) };
          }),
        );
        return { found, photosAsWritten, entriesAsWritten: await held.entriesUnder(found.differing) };
      });
      const there = photosAsWritten.flatMap(({ photo, bent }) => (photo ? [{ photo, bent }] : []));
      // Photos mean nothing until an entry names them, so they may come one by one.
      for (const { photo, bent } of there) if (!bent) await source.keepPhoto(photo);
      const photos = there.flatMap(({ photo, bent }) => (bent ? photo : []));
      const added = found.missing.length > 0 ? await source.takeIn(found.missing, onProgress) : 0;
      await source.mend({ entries: entriesAsWritten, photos, renumbered: added });
      await follow();
      return {
        entries: added + entriesAsWritten.length,
        photos: there.length,
        photosLost: photosAsWritten.length - there.length,
      };
    },
    async beginAnew(onProgress) {
      const copy = await opened;
      if (!copy) throw new Error(NO_COPY);
      const filled = await copy.alone((held) => fillAnew(held, onProgress));
      await follow();
      return filled;
    },
    async startOver() {
      const copy = await opened;
      await copy?.alone((held) =>
        held.startOver(
          0,
          (async function* () {
            yield [{ level: { entries: 0, photos: 0, atMs: now() } }];
          })(),
        ),
      );
      slack = inStep;
      state = { ...state, missing: nothing };
      await mark.beginAnew();
      await follow();
    },
  };
}
