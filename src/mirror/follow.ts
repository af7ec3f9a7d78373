import type { Entry, Id } from '../journal/entries.ts';
import { crc32 } from './crc32.ts';
import type { Content, HeldMirror, Level, MirroredPhoto } from './mirror.ts';
import { photosNamed, type Source } from './source.ts';

/** What the mirror holds, against what the logbook holds. */
export interface Compared {
  /** Entries and photos of the mirror. */
  entries: number;
  photos: number;
  /** Entries that the mirror holds and the logbook lacks, though they were not taken out. */
  missing: Entry[];
  missingPhotos: MirroredPhoto[];
  /** Every photo of the mirror. */
  allPhotos: MirroredPhoto[];
  /** Entries that say one thing in the logbook and another in the mirror. */
  differing: Id[];
  /** Lines of the mirror that could not be read. */
  unreadable: number;
}

const ID_FIELD = /^(corrects|.*Ids?)$/;

/** Whether an entry names one of these ids, or an id of the demo. */
function names(entry: Entry, ids: ReadonlySet<Id>, ofDemo: (id: Id) => boolean): boolean {
  const named = Object.entries(entry).flatMap(([field, value]) => (ID_FIELD.test(field) ? value : []));
  return named.some((id) => typeof id === 'string' && (ids.has(id) || ofDemo(id)));
}

/** Entries that left with the demo: those that name something of it, and what corrects such a one. */
function leftWithDemo(entries: readonly Entry[], ofDemo: (id: Id) => boolean): Set<Id> {
  const left = new Set<Id>();
  for (let before = -1; before < left.size; ) {
    before = left.size;
    for (const entry of entries) if (names(entry, left, ofDemo)) left.add(entry.id);
  }
  return left;
}

const encoder = new TextEncoder();
const entrySum = (entry: Entry): number => crc32(encoder.encode(JSON.stringify({ entry })));

/** Every line of the journal, a batch at a time. */
async function* batchesOf(source: Source, fromSeq = 0) {
  for (let seq = fromSeq; ; ) {
    const lines = await source.linesAfter(seq);
    const last = lines.at(-1);
    if (!last) return;
    yield lines;
    seq = last.seq;
  }
}

/** Keeps a photo in the mirror; one that cannot be kept now is tried again at the next comparison. */
async function photoLine(held: HeldMirror, source: Source, photoId: Id) {
  const photo = await source.photoUnder(photoId);
  try {
    return photo && (await held.keepPhoto(photo));
  } catch {
    // A photo takes room; where there is none left, the lines still go on.
    return undefined;
  }
}

/** By how much the mirror is known to differ, for as long as nothing else changes. */
export interface Slack {
  entries: number;
  photos: number;
}

/**
 * Adds what was written since the mirror was last level with the journal. Costs as much as what is new.
 * @param now clock, ms UTC
 * @param slack how much more the mirror is known to hold than the logbook
 * @returns the new level; undefined where the mirror is not simply behind: compare then
 */
export async function catchUp(
  held: HeldMirror,
  source: Source,
  now: () => number,
  slack: Slack = { entries: 0, photos: 0 },
): Promise<Level | undefined> {
  const begun = await held.level();
  if (!begun) return undefined;
  const seq = begun.upTo === undefined ? 0 : await source.seqUnder(begun.upTo);
  if (seq === undefined) return undefined;
  if ((await source.counts(seq)).entries !== begun.entries - slack.entries) return undefined;
  let level = begun;
  for await (const lines of batchesOf(source, seq)) {
    // What comes back into the logbook lies in the mirror already.
    if (slack.entries > 0) return undefined;
    const contents: Content[] = [];
    let photos = level.photos;
    for (const { entry } of lines) {
      // What the removal took out is to leave the mirror as well.
      if (entry.type === 'demo-removed') return undefined;
      for (const photoId of photosNamed(entry)) {
        const kept = await photoLine(held, source, photoId);
        if (!kept || kept.known) continue;
        contents.push({ photo: kept.photo });
        photos += 1;
      }
      contents.push({ entry });
    }
    const last = lines.at(-1)?.entry.id as Id;
    level = { upTo: last, entries: level.entries + lines.length, photos, atMs: now() };
    await held.add([...contents, { level }]);
  }
  return (await source.counts()).photos === level.photos - slack.photos ? level : undefined;
}

/**
 * Compares the whole mirror with the whole journal and adds what it lacks. Nothing leaves it but what the removal of
 * the demo took out, and lines that cannot be read once all that was in them is there again.
 * @param ofDemo tells whether an id is one of the demo's
 */
export async function compare(
  held: HeldMirror,
  source: Source,
  { now, ofDemo }: { now: () => number; ofDemo: (id: Id) => boolean },
): Promise<Compared> {
  const sums = new Map<Id, number>();
  const photos = new Map<Id, MirroredPhoto>();
  let claimed = 0;
  const unreadable = await held.read((content, sum) => {
    if ('entry' in content) sums.set(content.entry.id, sum);
    else if ('photo' in content) photos.set(content.photo.photoId, content.photo);
    else if ('level' in content) claimed = content.level.entries;
  });
  const only = new Set(sums.keys());
  const differing: Id[] = [];
  let removedDemo = false;
  let upTo: Id | undefined;
  const level = (): Level => ({
    ...(upTo === undefined ? {} : { upTo }),
    ...{ entries: sums.size, photos: photos.size, atMs: now() },
  });
  for await (const lines of batchesOf(source)) {
    const fresh: Content[] = [];
    for (const { entry } of lines) {
      const sum = sums.get(entry.id);
      only.delete(entry.id);
      upTo = entry.id;
      if (sum === undefined) {
        if (entry.type === 'demo-removed') removedDemo = true;
        fresh.push({ entry });
      } else if (sum !== entrySum(entry)) differing.push(entry.id);
    }
    if (fresh.length > 0) await held.add(fresh);
    for (const one of fresh) if ('entry' in one) sums.set(one.entry.id, entrySum(one.entry));
  }
  const onlyPhotos = new Set(photos.keys());
  for (const photoId of await source.photoIds()) {
    onlyPhotos.delete(photoId);
    if (photos.has(photoId)) continue;
    const kept = await photoLine(held, source, photoId);
    if (!kept) continue;
    photos.set(photoId, kept.photo);
    await held.add([{ photo: kept.photo }]);
  }
  const missing = await held.entriesUnder(only);
  const left = removedDemo ? leftWithDemo(missing, ofDemo) : new Set<Id>();
  const kept = missing.filter(({ id }) => !left.has(id));
  const gone = new Set(missing.filter(({ id }) => left.has(id)).flatMap(photosNamed));
  const whole = missing.length + differing.length === 0 && sums.size >= claimed;
  const healed = unreadable > 0 && whole;
  if (left.size > 0 || healed) {
    for (const id of left) sums.delete(id);
    for (const id of gone) if (onlyPhotos.delete(id)) photos.delete(id);
    const lines = [...photos.values()].map((photo): Content => ({ photo }));
    const asWritten = new Map((await held.entriesUnder(differing)).map((one) => [one.id, one]));
    await held.startOver(
      sums.size + lines.length,
      (async function* () {
        if (kept.length > 0) yield kept.map((entry): Content => ({ entry }));
        for await (const batch of batchesOf(source))
          yield batch.map(({ entry }): Content => ({ entry: asWritten.get(entry.id) ?? entry }));
        yield [...lines, { level: level() }];
      })(),
    );
  } else await held.add([{ level: level() }]);
  return {
    ...{ entries: sums.size, photos: photos.size, differing },
    missing: kept,
    allPhotos: [...photos.values()],
    missingPhotos: [...onlyPhotos].flatMap((id) => photos.get(id) ?? []),
    unreadable: healed ? 0 : unreadable,
  };
}
