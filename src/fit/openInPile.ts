import { checkPile } from './checkPile.ts';
import { type KeptFinding, openFindings, partsOfFinding, topicName } from './openFindings.ts';
import { type KeptPart, pileOf } from './pileOf.ts';
import type { KeptJoint } from './topicJoints.ts';
import { unjoined } from './unjoined.ts';

/** What the logbook keeps of a bike that bears on its fit. */
export interface KeptBike {
  parts: readonly KeptPart[];
  joints: readonly KeptJoint[];
  findings: readonly (KeptFinding & { words: string })[];
}

/**
 * What the fit check of a bike's own parts leaves open, what was noted as open and never answered, and what goes
 * together without a joint of the logbook, as sentences.
 * @example openInPile({ parts: [stem, bar], joints: [], findings: [] })[0] //=> 'Bar in stem: The 26 mm bar is too thin for …'
 */
export function openInPile({ parts, joints, findings }: KeptBike): string[] {
  const pile = pileOf(parts);
  const check = checkPile(pile);
  const open = openFindings(check, pile, { joints, kept: findings });
  const judged = new Set(
    [...check.findings, ...check.toMeasure, ...check.fitting].map(({ findingId }) => findingId),
  );
  // A face may have been emptied since: what was not answered stays open all the same.
  const unanswered = findings.filter(
    ({ outcome, findingId }) =>
      outcome !== 'accepted' &&
      !judged.has(findingId) &&
      partsOfFinding(findingId).every((id) => parts.some(({ partId }) => partId === id)),
  );
  // What is open already is not named again.
  const together = check.findings.filter((one) => one.outcome === 'fits-with' && !open.includes(one));
  const alone = unjoined([...check.fitting, ...together], pile, joints);
  return [
    ...open.map(({ topic, because }) => `${topicName(topic)}: ${because}`),
    ...unanswered.map(({ words }) => words),
    ...(alone.length > 0 ? [`No joint is logged where these meet: ${alone.join('; ')}`] : []),
  ];
}
