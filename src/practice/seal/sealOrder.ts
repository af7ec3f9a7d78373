import type { SealMark } from '../../journal/entries.ts';

/** What a tyre is asked for on the way to holding air, in the order of the work. */
const order = [
  'seated',
  'sealant',
  'spun-and-shaken',
  'laid-left',
  'laid-right',
  'soaped',
  'reading',
  'verdict',
] as const;

export type SealAsk = (typeof order)[number];

/** The work to suggest next; `wait` while a look is still ahead, `settled` once it was judged to hold. */
export type SealNext = SealAsk | 'wait' | 'settled';

/** What of the work still counts. Some marks undo others: fresh sealant wants to be shaken round again. */
function stillCounts(marks: readonly SealMark[]): ReadonlySet<SealAsk | 'holds'> {
  const counts = new Set<SealAsk | 'holds'>();
  const forget = (...asks: (SealAsk | 'holds')[]) => {
    for (const ask of asks) counts.delete(ask);
  };
  for (const mark of marks) {
    switch (mark.mark) {
      case 'seated':
        if (mark.dry) counts.clear();
        forget('seated', 'soaped', 'reading', 'verdict', 'holds');
        // An uneven bead line is not on its seats.
        if (mark.beadLine !== 'uneven') counts.add('seated');
        break;
      case 'sealant':
        forget(...order.filter((ask) => ask !== 'seated'), 'holds');
        counts.add('sealant');
        break;
      case 'spun-and-shaken':
      case 'laid-left':
      case 'laid-right':
      case 'soaped':
        counts.add(mark.mark);
        break;
      case 'reading':
        counts.add('reading');
        forget('verdict');
        break;
      case 'pumped':
      case 'let-down':
        forget('reading');
        break;
      case 'burped':
        forget('soaped', 'reading', 'verdict', 'holds');
        break;
      case 'verdict':
        forget('holds');
        if (mark.verdict === 'holds') counts.add('holds');
        if (mark.verdict === 'still-sealing') forget('reading');
        if (mark.verdict === 'leaks') forget('soaped', 'reading');
        if (mark.verdict === 'will-not-seat') counts.clear();
        counts.add('verdict');
        break;
      case 'dry-reading':
      case 'riding':
        break;
    }
  }
  return counts;
}

/**
 * The work to suggest next on the seal of a tyre. Only a suggestion: any mark can be made at any time.
 * @param marks what was marked so far, oldest first
 * @param look whether a look was asked for: not at all, still ahead, or over
 * @param withSealant false for a tyre run with a tube
 * Source: common practice, no source: dry first, then sealant, both sides in turn, soap, and readings over time.
 * @example nextOfSeal([], 'none', true) //=> 'seated'
 */
export function nextOfSeal(
  marks: readonly SealMark[],
  look: 'none' | 'running' | 'over',
  withSealant: boolean,
): SealNext {
  const counts = stillCounts(marks);
  if (look === 'over') return 'reading';
  if (counts.has('holds')) return 'settled';
  const work = withSealant ? order.slice(0, order.indexOf('reading')) : (['seated'] satisfies SealAsk[]);
  const missing = work.find((ask) => !counts.has(ask));
  if (missing) return missing;
  if (look === 'running') return 'wait';
  return counts.has('reading') ? 'verdict' : 'reading';
}
