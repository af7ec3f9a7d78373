import type { Id } from '../journal/entries.ts';
import { keepMark } from './keepMark.ts';
import { type LogbookMark, readMark } from './mark.ts';
import type { Source } from './source.ts';

/** Clocks are set; a removal a little older than the mark still explains it. */
const CLOCK_MS = 86_400_000;

/** The one that keeps the mark and tells by it how many entries are gone. */
export interface MarkKeeper {
  /**
   * The mark rises with the logbook. Only what was taken out on purpose lowers it: what is lost stays to be told.
   * @param entries how many there are
   * @returns how many it knows of that are gone
   */
  gone(entries: number): Promise<number>;
  /** The mark goes by an empty logbook from now on. */
  beginAnew(): Promise<void>;
}

/** How far the journal was read since a mark was written. */
interface ReadSince {
  mark: string;
  seq: number;
  takenOut: number;
  last?: Id;
}

/** @param now clock, ms UTC */
export function keepMarkOf(source: Source, now: () => number): MarkKeeper {
  let since: ReadSince | undefined;

  async function beginAt(mark: LogbookMark | undefined, text: string): Promise<ReadSince> {
    const last = mark?.lastId;
    const seq = last === undefined ? undefined : await source.seqUnder(last);
    if (last === undefined || seq === undefined) return { mark: text, seq: 0, takenOut: 0 };
    return { mark: text, seq, takenOut: 0, last };
  }

  /** The last entry, and how many lines left with the demo since the mark; each line is read once a start. */
  async function readOn(mark: LogbookMark | undefined): Promise<ReadSince> {
    const text = JSON.stringify(mark ?? null);
    if (since?.mark !== text) since = await beginAt(mark, text);
    for (;;) {
      const lines = await source.linesAfter(since.seq);
      const end = lines.at(-1);
      if (!end) return since;
      for (const { entry } of lines)
        if (entry.type === 'demo-removed' && entry.writtenAtMs >= (mark?.atMs ?? 0) - CLOCK_MS)
          since.takenOut += entry.lines;
      since.last = end.entry.id;
      since.seq = end.seq;
    }
  }

  async function write(entries: number, lastId: Id | undefined): Promise<void> {
    // Nothing is written down on a first day.
    if (entries === 0 && !(await readMark())) return;
    await keepMark({ entries, ...(lastId === undefined ? {} : { lastId }), atMs: now() });
  }

  return {
    async gone(entries) {
      const before = await readMark();
      const { last, takenOut } = await readOn(before);
      const gone = Math.max(0, (before?.entries ?? 0) - entries - takenOut);
      if (gone === 0) await write(entries, last);
      return gone;
    },
    beginAnew: () => write(0, undefined),
  };
}
