import { partsOfSheet } from '../../../documents/partsOfSheet.ts';
import type { HandOver } from '../../../exchange/handOver.ts';
import type { Entry, Id } from '../../../journal/entries.ts';
import type { HistoryMark, Logbook } from '../../../logbook.ts';
import { zoneNow } from '../../../sensing/zoneNow.ts';
import { readNames } from '../../history/useNames.ts';

const LINES_AT_ONCE = 500;

/** Every entry of a bike that this version can read, oldest first. */
async function entriesOf(logbook: Logbook, bikeId: Id): Promise<Entry[]> {
  const entries: Entry[] = [];
  let after: HistoryMark | undefined;
  do {
    const ask = { place: `b:${bikeId}`, limit: LINES_AT_ONCE, ...(after ? { after } : {}) };
    const { lines, next } = await logbook.read('history', ask);
    entries.push(...lines.map(({ entry }) => entry));
    after = next;
  } while (after);
  return entries.reverse();
}

/** A bike as it is built now and all that was written down of it, corrections included, for its next owner. */
export async function handOverContent(logbook: Logbook, bikeId: Id): Promise<HandOver> {
  const [built, entries] = await Promise.all([
    logbook.read('as-built', { bikeId, atMs: logbook.now() }),
    entriesOf(logbook, bikeId),
  ]);
  const names = await readNames(logbook, entries, partsOfSheet(built));
  return { built, entries, zone: zoneNow(), names };
}
