import { sheetLines } from '../../../documents/sheetLines.ts';
import type { ArchiveContent } from '../../../exchange/archive/writeArchive.ts';
import type { AsBuilt } from '../../../journal/answers.ts';
import type { Id } from '../../../journal/entries.ts';
import type { Logbook } from '../../../logbook.ts';
import { type Names, partCalled } from '../../../words/history/names.ts';

/** Names of the parts a sheet speaks of; those that have left the bike are asked for one by one. */
async function namesFor(logbook: Logbook, { joints, parts }: AsBuilt): Promise<Names> {
  const called = new Map<Id, string>(
    parts.map(({ partId, name, label }) => [partId, partCalled(name, label)]),
  );
  const spoken = joints.flatMap(({ partIds, between, targets }) => [
    ...partIds,
    ...between.flatMap(({ partId }) => partId ?? []),
    ...targets.flatMap(({ partId }) => partId ?? []),
  ]);
  for (const partId of new Set(spoken)) {
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
  const { timeZone: zone } = Intl.DateTimeFormat().resolvedOptions();
  return {
    entries: logbook.copies.entries(),
    photos: logbook.copies.photos(),
    sheets: (async function* () {
      for (const { bikeId, name } of await logbook.read('bikes', {})) {
        const built = await logbook.read('as-built', { bikeId, atMs: madeAtMs });
        yield { bikeName: name, lines: sheetLines(built, { zone, names: await namesFor(logbook, built) }) };
      }
    })(),
    madeAtMs,
  };
}
