import { brakeLine } from './brakeLine.ts';
import { cureLine } from './cureLine.ts';
import type { JointFacts } from './jointFacts.ts';
import { plainly, type Saying, type WorkingLine } from './line.ts';
import { jointPreload, preloadLine } from './preload.ts';
import { useLine } from './proofLine.ts';
import { recheckLine } from './recheckLine.ts';
import { settlingLine } from './settlingLine.ts';
import { slipLines } from './slipLines.ts';
import { stoppingLine } from './stoppingLine.ts';
import { publishedLine, targetLine } from './targetLine.ts';
import { wrenchLine } from './wrenchLine.ts';

/**
 * Every figure that can be given for a joint, each with its working, in the order a hand needs them.
 * @param facts the joint as written down; what is left out is asked for
 * @param say how figures are written
 * @returns the lines; one that cannot be computed says why, and what would settle it
 * @example jointWorkings(fourM5At5Nm).map(({ id }) => id)
 *   //=> ['target', 'wrench', 'preload', 'proof', 'slip', 'rider', 'margin', 'settling', 'published']
 */
export function jointWorkings(facts: JointFacts, say: Saying = plainly): WorkingLine[] {
  const preload = jointPreload(facts);
  const screwed = facts.screws.length > 0;
  const lines: (WorkingLine | undefined)[] = [
    screwed || facts.target ? targetLine(facts, say) : undefined,
    wrenchLine(facts, say),
    ...(screwed ? [preloadLine(preload, say), useLine(preload, say)] : []),
    ...(screwed ? slipLines(facts, preload, say) : []),
    cureLine(facts, say),
    settlingLine(facts, preload, say),
    recheckLine(facts, say),
    publishedLine(facts, say),
    brakeLine(facts, say),
    stoppingLine(facts, say),
  ];
  return lines.filter((line) => line !== undefined);
}
