import type { Entry, Id } from '../journal/entries.ts';
import { crc32 } from './crc32.ts';
import { keepPhotoLine } from './keepPhotoLine.ts';
import { leftWithDemo } from './leftWithDemo.ts';
import type { Content, HeldMirror, Level, MirroredPhoto } from './mirror.ts';
import { journalBatches, photosNamed, type Source } from './source.ts';

/** What the mirror holds, against what the logbook holds. */
export interface Compared {
  /** The last entry of the journal; absent where it has none. */
  upTo?: Id;
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

/** The mirror as it was read: the checksum of each entry, and each photo. */
interface Stock {
  sums: Map<Id, number>;
  photos: Map<Id, MirroredPhoto>;
  /** How many entries its last line says there are. */
  claimed: number;
  unreadable: number;
}

/** What a walk along the journal found. */
interface Walked {
  /** The last entry of the journal. */
  upTo?: Id;
  /** Entries that the journal lacks. */
  only: Set<Id>;
  differing: Id[];
  /** Whether the removal of the demo was not in the mirror yet. */
  removedDemo: boolean;
}

const encoder = new TextEncoder();
const entrySum = (entry: Entry): number => crc32(encoder.encode(JSON.stringify({ entry })));

async function takeStock(held: HeldMirror): Promise<Stock> {
  const stock: Stock = { sums: new Map(), photos: new Map(), claimed: 0, unreadable: 0 };
  stock.unreadable = await held.read((content, sum) => {
    if ('entry' in content) stock.sums.set(content.entry.id, sum);
    else if ('photo' in content) stock.photos.set(content.photo.photoId, content.photo);
    else if ('level' in content) stock.claimed = content.level.entries;
  });
  return stock;
}

/** Walks along the journal and adds every entry that the mirror lacks. */
async function addEntries(held: HeldMirror, source: Source, { sums }: Stock): Promise<Walked> {
  const walked: Walked = { only: new Set(sums.keys()), differing: [], removedDemo: false };
  for await (const lines of journalBatches(source)) {
    const fresh: Entry[] = [];
    for (const { entry } of lines) {
      const sum = sums.get(entry.id);
      walked.only.delete(entry.id);
      walked.upTo = entry.id;
      if (sum === undefined) fresh.push(entry);
      else if (sum !== entrySum(entry)) walked.differing.push(entry.id);
    }
    if (fresh.length > 0) await held.add(fresh.map((entry): Content => ({ entry })));
    for (const entry of fresh) sums.set(entry.id, entrySum(entry));
    walked.removedDemo ||= fresh.some(({ type }) => type === 'demo-removed');
  }
  return walked;
}

/** Adds every photo that the mirror lacks. @returns those that the logbook lacks */
async function addPhotos(held: HeldMirror, source: Source, { photos }: Stock): Promise<Set<Id>> {
  const only = new Set(photos.keys());
  for (const photoId of await source.photoIds()) {
    only.delete(photoId);
    if (photos.has(photoId)) continue;
    const kept = await keepPhotoLine(held, source, photoId);
    if (!kept) continue;
    photos.set(photoId, kept.photo);
    await held.add([{ photo: kept.photo }]);
  }
  return only;
}

/** Writes the mirror anew: what only it holds, then the journal with each entry as it was written, then the photos. */
async function writeAnew(
  held: HeldMirror,
  source: Source,
  {
    kept,
    differing,
    photos,
    level,
  }: { kept: Entry[]; differing: Id[]; photos: MirroredPhoto[]; level: Level },
): Promise<void> {
  const asWritten = new Map((await held.entriesUnder(differing)).map((one) => [one.id, one]));
  async function* batches() {
    if (kept.length > 0) yield kept.map((entry): Content => ({ entry }));
    for await (const lines of journalBatches(source))
      yield lines.map(({ entry }): Content => ({ entry: asWritten.get(entry.id) ?? entry }));
    yield [...photos.map((photo): Content => ({ photo })), { level }];
  }
  await held.startOver(level.entries + level.photos, batches());
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
  const stock = await takeStock(held);
  const { sums, photos, unreadable } = stock;
  const { upTo, only, differing, removedDemo } = await addEntries(held, source, stock);
  const onlyPhotos = await addPhotos(held, source, stock);
  const lacked = await held.entriesUnder(only);
  const left = removedDemo ? leftWithDemo(lacked, ofDemo) : new Set<Id>();
  const missing = lacked.filter(({ id }) => !left.has(id));
  const healed = unreadable > 0 && lacked.length + differing.length === 0 && sums.size >= stock.claimed;
  for (const entry of lacked) {
    if (!left.has(entry.id)) continue;
    sums.delete(entry.id);
    for (const photoId of photosNamed(entry)) if (onlyPhotos.delete(photoId)) photos.delete(photoId);
  }
  const end = upTo === undefined ? {} : { upTo };
  const level: Level = { ...end, entries: sums.size, photos: photos.size, atMs: now() };
  const allPhotos = [...photos.values()];
  if (left.size > 0 || healed)
    await writeAnew(held, source, { kept: missing, differing, photos: allPhotos, level });
  else await held.add([{ level }]);
  return {
    ...end,
    ...{ entries: sums.size, photos: photos.size, missing, differing, allPhotos },
    missingPhotos: [...onlyPhotos].flatMap((id) => photos.get(id) ?? []),
    unreadable: healed ? 0 : unreadable,
  };
}
