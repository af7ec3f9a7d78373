import {
  type RecheckFound,
  type RecheckReason,
  type RecheckVerdict,
  readRecheck,
} from '../../mechanics/screws/recheckReading.ts';
import type { JointFacts } from './jointFacts.ts';
import { bandText, type LineVerdict, missing, type Saying, type WorkingLine } from './line.ts';

/** What a reading says of the joint. */
export const recheckVerdicts: Record<RecheckVerdict, LineVerdict> = {
  held: { tone: 'good', word: 'OK' },
  settled: { tone: 'good', word: 'Settled, pulled up' },
  loosened: { tone: 'care', word: 'Loosened: check again soon' },
  failed: { tone: 'stop', word: 'Failed: take it apart and redo it' },
};

/** What was read. */
export const recheckReasons: Record<RecheckReason, string> = {
  'reached-without-moving': 'The target was reached without movement; a stuck bolt would show the same',
  'moved-close-to-target': 'It moved close below the target, which bedding in explains',
  'moved-well-short': 'It moved well short of the target, more than bedding in explains',
  'moved-at-less-than-half': 'It moved at less than half of the target',
  'turns-freely': 'It turned freely',
  'loosening-torque-sound': 'It broke loose where a sound joint does',
  'loosening-torque-low': 'It broke loose somewhat early',
  'loosening-torque-less-than-half': 'It broke loose at less than half',
  'mark-lines-up': 'The paint mark lines up',
  'mark-has-moved': 'The paint mark has moved',
};

function asFound({ found, appliedNm }: JointFacts): RecheckFound | undefined {
  if (!found) return undefined;
  if (found.way === 'mark') return { way: 'mark', linesUp: found.outcome === 'held' };
  if (appliedNm === undefined) return undefined;
  const movedAtNm = found.outcome === 'held' ? null : (found.movedAtNm ?? null);
  const turnsFreely = found.outcome === 'turned' && found.movedAtNm === undefined;
  return { way: 'tightening', installedNm: appliedNm, movedAtNm, turnsFreely };
}

/** What the last re-check says of the joint; no line before there was one. */
export function recheckLine(facts: JointFacts, say: Saying): WorkingLine | undefined {
  if (!facts.found) return undefined;
  const line = { id: 'recheck', label: 'Last re-check' };
  const found = asFound(facts);
  if (!found)
    return {
      ...line,
      text: 'Not computed: no applied torque is logged.',
      missing: [missing('applied')],
    };
  const { verdict, reason, preloadLeft, working } = readRecheck(found);
  const left =
    preloadLeft &&
    `; ${bandText({ lo: preloadLeft.lo * 100, mid: preloadLeft.mid * 100, hi: preloadLeft.hi * 100 }, say, 0)} % of the preload seemed left`;
  return {
    ...line,
    text: `${recheckReasons[reason]}${left ?? ''}`,
    verdict: recheckVerdicts[verdict],
    ...(working ? { working } : {}),
  };
}
