import type { Entry, Id } from '../../journal/entries.ts';
import type { HistoryLine } from '../../logbook.ts';
import { entryAbout } from '../../words/history/entryAbout.ts';
import { dayWords } from '../../words/phrases.ts';
import { type EntryGroup, entryHead } from './entryHeads.ts';

export type TimelineRow = { is: 'day'; day: string } | { is: 'entry'; line: HistoryLine };

/** What the history is narrowed to. */
export interface Narrowing {
  group?: EntryGroup | undefined;
  jointId?: Id | undefined;
  partId?: Id | undefined;
  bikeId?: Id | undefined;
  /** Words that must all stand in the sentence. */
  sought: string;
}

/**
 * Whether a line belongs to what is asked for.
 * @param partsOf parts of a joint, so that a part's filter finds the work on its joints
 * @param tell the sentence of an entry
 */
export function belongs(
  line: HistoryLine,
  { group, jointId, partId, bikeId, sought }: Narrowing,
  partsOf: (jointId: Id) => readonly Id[],
  tell: (entry: Entry) => string,
): boolean {
  const { entry } = line;
  if (group !== undefined && entryHead(entry.type).group !== group) return false;
  const about = entryAbout(entry);
  if (jointId !== undefined && !about.joints.includes(jointId)) return false;
  if (bikeId !== undefined && !about.bikes.includes(bikeId)) return false;
  if (partId !== undefined && ![...about.parts, ...about.joints.flatMap(partsOf)].includes(partId))
    return false;
  const words = sought.toLocaleLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return true;
  const now = line.now;
  const text =
    `${entryHead(entry.type).word}${entry.type === 'part-changed' ? ' cut' : ''} ${tell(entry)} ${now && now !== entry ? tell(now) : ''} ${line.fixes.map(({ reason }) => reason).join(' ')}`.toLocaleLowerCase();
  return words.every((word) => text.includes(word));
}

/** Lines with a heading before each day; a day is that of the zone the entry was written in. */
export function byDay(lines: readonly HistoryLine[]): TimelineRow[] {
  let today = '';
  return lines.flatMap((line): TimelineRow[] => {
    const day = dayWords(line.entry.happenedAtMs, line.entry.zone);
    const rows: TimelineRow[] = day === today ? [] : [{ is: 'day', day }];
    today = day;
    return [...rows, { is: 'entry', line }];
  });
}

/**
 * Whether more than one phone writes into the logbook: a line is of another phone than this one.
 * @param own what this phone is called, if it has a name
 */
export const isOfSeveralPhones = (lines: readonly HistoryLine[], own: string | undefined): boolean =>
  lines.some(({ entry }) => entry.phone !== undefined && entry.phone !== own);

/** Apart by more than this, the time of writing is told beside the time it happened, ms. */
const LATE_MS = 10 * 60_000;

/** Whether an entry was written well after it happened. */
export const isWrittenLate = ({
  writtenAtMs,
  happenedAtMs,
}: Pick<Entry, 'writtenAtMs' | 'happenedAtMs'>): boolean => writtenAtMs - happenedAtMs > LATE_MS;
