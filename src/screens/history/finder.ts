import type { Entry, Id } from '../../journal/entries.ts';
import type { HistoryLine } from '../../logbook.ts';
import { belongs, byDay, type Narrowing, type TimelineRow } from './timeline.ts';

/**
 * The lines of a history that belong to what is asked for, found page by page: a line that was looked at once is not
 * looked at again when older ones come in behind it.
 */
export class Finder {
  private looked: readonly HistoryLine[] = [];
  private found: HistoryLine[] = [];
  private rows: TimelineRow[] = [];

  /**
   * @param narrowing what is asked for
   * @param tell the sentence of an entry
   */
  constructor(
    private readonly narrowing: Narrowing,
    private readonly tell: (entry: Entry) => string,
  ) {}

  /**
   * @param lines all that was read so far, newest first
   * @param partsOf parts of a joint, as far as they are known from these lines
   * @returns the rows to show; the same array as before where nothing was added
   */
  in(lines: readonly HistoryLine[], partsOf: (jointId: Id) => readonly Id[]): TimelineRow[] {
    const last = this.looked.at(-1);
    // What a joint is made of may stand in an older line, so that newer ones have to be asked again.
    const goesOn = this.narrowing.partId === undefined && last === lines[this.looked.length - 1];
    const fresh = goesOn ? lines.slice(this.looked.length) : lines;
    const more = fresh.filter((line) => belongs(line, this.narrowing, partsOf, this.tell));
    const before = goesOn ? this.found : [];
    this.looked = lines;
    this.found = [...before, ...more];
    if (!goesOn || more.length > 0) this.rows = this.withDays(before, more, goesOn);
    return this.rows;
  }

  private withDays(before: HistoryLine[], more: HistoryLine[], goesOn: boolean): TimelineRow[] {
    if (!goesOn || before.length === 0) return byDay(more);
    // The day of the last row goes on: its heading stands there already.
    const [, ...rest] = byDay([before[before.length - 1] as HistoryLine, ...more]);
    return [...this.rows, ...rest.slice(1)];
  }
}
