import type { Entry, Id } from '../journal/entries.ts';
import { keepPhotoLine } from './keepPhotoLine.ts';
import type { Content, HeldMirror, Level } from './mirror.ts';
import { journalBatches, photosNamed, type Source } from './source.ts';

/** By how much the mirror is known to differ since it was compared. */
export interface Slack {
  /** How many more entries and photos the mirror holds than the logbook. */
  entries: number;
  photos: number;
  /** The entries that the logbook lacks. */
  missing: ReadonlySet<Id>;
}

export const inStep: Slack = { entries: 0, photos: 0, missing: new Set() };

/** How far it has come, and by how much the mirror differs from there on. */
export interface CaughtUp {
  level: Level;
  slack: Slack;
}

/**
 * Adds what was written since the mirror was last level with the journal. Costs as much as what is new.
 * @param now clock, ms UTC
 * @param slack by how much the mirror is known to differ
 * @returns undefined where it differs otherwise: compare then
 */
export async function catchUp(
  held: HeldMirror,
  source: Source,
  now: () => number,
  slack: Slack = inStep,
): Promise<CaughtUp | undefined> {
  const begun = await held.level();
  if (!begun) return undefined;
  const seq = begun.upTo === undefined ? 0 : await source.seqUnder(begun.upTo);
  if (seq === undefined) return undefined;
  if ((await source.counts(seq)).entries !== begun.entries - slack.entries) return undefined;
  const at: CaughtUp = { level: begun, slack };
  for await (const lines of journalBatches(source, seq)) {
    const entries = lines.map(({ entry }) => entry);
    // What the removal took out is to leave the mirror as well.
    if (entries.some(({ type }) => type === 'demo-removed')) return undefined;
    await addBatch(held, source, at, { entries, atMs: now() });
  }
  const { photos } = await source.counts();
  return photos === at.level.photos - at.slack.photos ? at : undefined;
}

/** Adds a batch of the journal to the mirror, but for what came back into the logbook and lies in the mirror already. */
async function addBatch(
  held: HeldMirror,
  source: Source,
  at: CaughtUp,
  { entries, atMs }: { entries: readonly Entry[]; atMs: number },
): Promise<void> {
  const missing = new Set(at.slack.missing);
  const fresh = entries.filter(({ id }) => !missing.delete(id));
  const back = entries.length - fresh.length;
  const contents: Content[] = [];
  let photos = 0;
  for (const entry of fresh) {
    for (const photoId of photosNamed(entry)) {
      const kept = await keepPhotoLine(held, source, photoId);
      if (!kept || kept.known) continue;
      contents.push({ photo: kept.photo });
      photos += 1;
    }
    contents.push({ entry });
  }
  at.slack = { ...at.slack, entries: at.slack.entries - back, missing };
  at.level = {
    upTo: entries.at(-1)?.id as Id,
    entries: at.level.entries + fresh.length,
    photos: at.level.photos + photos,
    atMs,
  };
  await held.add([...contents, { level: at.level }]);
}
