import type { SealRow } from '../../src/journal/rows.ts';
import { sealOutlook } from '../../src/practice/seal/sealOutlook.ts';

/** Runs in the page: all that the screen of a seal works out from its marks. */

type Marks = SealRow['marks'];
const HOUR_MS = 3_600_000;
const bar = (value: number) => ({ value, unit: 'bar', typed: value.toFixed(2) });

/** Readings of one tyre that loses air, each a little off, pumped up every fortieth. */
function marksOf(count: number): Marks {
  let value = 2.5;
  return Array.from({ length: count }, (_, at) => {
    const pumped = at % 40 === 39;
    value = pumped ? 2.5 : value * 0.996;
    const pressure = bar(value + 0.02 * Math.sin(at * 7.3));
    return {
      mark: pumped ? 'pumped' : 'reading',
      entryId: `${at}`,
      atMs: at * HOUR_MS,
      reading: { pressure },
    };
  }) as Marks;
}

/** What one reckoning takes, ms, round by round, after rounds that warm up. */
export function outlookMs(count: number, rounds: number): number[] {
  const marks = marksOf(count);
  const spent: number[] = [];
  for (let at = -2; at < rounds; at += 1) {
    const start = performance.now();
    const { judged } = sealOutlook(marks, 2.5);
    if (judged.rates.length < count / 2) throw new Error('readings were left out');
    if (at >= 0) spent.push(performance.now() - start);
  }
  return spent;
}
