import type { ThreadSize } from '../../mechanics/screws/threadGeometry.ts';
import type { Sourced } from '../known.ts';
import { bicycleThreads } from './threadsBicycle.ts';
import { screwThreads } from './threadsScrew.ts';

export type Hand = 'right' | 'left';
export type BikeSide = 'drive' | 'non-drive';

export interface ThreadRow extends ThreadSize, Sourced {
  readonly id: string;
  readonly label: string;
  /** Where the trade fixes the hand by the side of the bike; every other thread is right-handed. */
  readonly hand?: Readonly<Record<BikeSide, Hand>>;
}

/** Threads met on bicycles: small screws first, then what only bicycles have. */
export const threads: readonly ThreadRow[] = [...screwThreads, ...bicycleThreads];

const byId = new Map(threads.map((row) => [row.id, row]));

/**
 * The row of one thread.
 * @throws RangeError when there is no such row
 * @example threadRow('M5').pitchMm //=> 0.8
 */
export function threadRow(id: string): ThreadRow {
  const row = byId.get(id);
  if (!row) throw new RangeError(`no such thread: ${id}`);
  return row;
}

/** Which way a thread tightens on a side of the bike. @example handOf(threadRow('9/16-20'), 'non-drive') //=> 'left' */
export const handOf = (thread: ThreadRow, side: BikeSide): Hand => thread.hand?.[side] ?? 'right';

/** One spelling for "M8 × 1,25", "m8x1.25" and "9/16 in - 20". */
const spelling = (words: string): string =>
  words
    .toLowerCase()
    .replaceAll(',', '.')
    .replace(/[\s"″]|in(ch)?(?=\W|\d|$)/g, '')
    .replace(/[×*-]/g, 'x');

const byName = new Map<string, ThreadRow>();
for (const row of threads) {
  const metric = row.id.startsWith('M') && !row.id.includes('-');
  const short = spelling(row.id.split('-')[0] ?? row.id);
  // 9/16 alone is one thread; 3/8 alone could be two, and then it is neither.
  const alone =
    threads.filter((other) => spelling(other.id.split('-')[0] ?? other.id) === short).length === 1;
  for (const name of [spelling(row.id), ...(alone ? [short] : [])]) byName.set(name, row);
  if (metric) byName.set(`m${row.diameterMm}x${row.pitchMm}`, row);
}

/**
 * The thread a person means.
 * @param words as written on a drawing or a box: "M5", "M8 × 1", "9/16", "3/8-26"
 * @returns undefined when it is not listed or could be two
 * @example threadNamed('M8 × 1,25')?.id //=> 'M8'
 */
export const threadNamed = (words: string): ThreadRow | undefined => byName.get(spelling(words));
