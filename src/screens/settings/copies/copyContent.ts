import { partsOfSheet } from '../../../documents/partsOfSheet.ts';
import { sheetLines } from '../../../documents/sheetLines.ts';
import type { ArchiveContent } from '../../../exchange/archive/writeArchive.ts';
import type { AsBuilt } from '../../../journal/answers.ts';
import type { Id } from '../../../journal/entries.ts';
import type { Logbook } from '../../../logbook.ts';
import { zoneNow } from '../../../sensing/zoneNow.ts';
import { type Names, partCalled } from '../../../words/history/names.ts';

/** Names of the parts a sheet speaks of; those that have left the bike are asked for one by one. */
async function namesFor(logbook: Logbook, built: AsBuilt): Promise<Names> {
  const { joints, parts } = built;
  const called = new Map<Id, string>(
    parts.map(({ partId, name, label }) => [partId, partCalled(name, label)]),
  );
  for (const partId of new Set(partsOfSheet(built))) {
    if (called.has(partId)) continue;
    const seen = await logbook.read('part', { partId });
    if (seen) called.set(partId, partCalled(seen.part.name, seen.part.label));
  }
  const joint = new Map(joints.map(({ jointId, name }) => [jointId, name]));
  return { bike: () => undefined, part: (id) => called.get(id), joint: (id) => joint.get(id) };
}

/** Everything that goes into a copy of the logbook, read as it is written. */
export function copyContent(logbook: Logbook): ArchiveContent {
  const madeAtMs = logbook.now();
  return {
    entries: logbook.copies.entries(),
    photos: logbook.copies.photos(),
    sheets: (async function* () {
      for (const { bikeId, name } of await logbook.read('bikes', {})) {
        const built = await logbook.read('as-built', { bikeId, atMs: madeAtMs });
        yield {
          bikeName: name,
          lines: sheetLines(built, { zone: zoneNow(), names: await namesFor(logbook, built) }),
        };
      }
    })(),
    madeAtMs,
  };
}
