import type { PileCheck } from './checkPile.ts';
import { CONTRADICTION } from './contradictionTopic.ts';
import type { Finding } from './finding.ts';
import type { PilePart } from './pile.ts';
import { alreadyBetween, type KeptJoint } from './topicJoints.ts';

/** What is to be done about a finding, in one word: its outcome, or that its way was accepted. */
export type GroupId = Finding['outcome'] | 'accepted';

/** What became of a finding before: the way accepted, or a note that it stays open. */
export interface KeptFinding {
  findingId: string;
  outcome: string;
}

/** Only a way that was offered can be accepted; parts measured anew may take that ground away again. */
const acceptable = ({ outcome }: Pick<Finding, 'outcome'>): boolean =>
  outcome === 'fits-with' || outcome === 'one-way-only';

/** Whether a finding is settled by a way the mechanic accepted. */
export const isAccepted = (kept: readonly KeptFinding[], finding: Finding): boolean =>
  acceptable(finding) &&
  kept.some(({ findingId, outcome }) => findingId === finding.findingId && outcome === 'accepted');

/** A name for what a finding is about, from its rule. @example topicName('bar-in-stem') //=> 'Bar in stem' */
export const topicName = (topic: string): string =>
  topic.startsWith(CONTRADICTION)
    ? 'A size in doubt'
    : `${topic.charAt(0).toUpperCase()}${topic.slice(1)}`.replaceAll('-', ' ');

/** The parts a finding was about, by its id. @example partsOfFinding('bar-in-stem:bar.b~stem.c') //=> ['bar', 'stem'] */
export const partsOfFinding = (findingId: string): string[] =>
  findingId
    .slice(findingId.indexOf(':') + 1)
    .split('~')
    .map((ref) => ref.split('.')[0] ?? '');

/**
 * What is still open in a checked pile: what does not fit, what goes only with a permanent change or with
 * something between that was neither accepted nor built, and what is not known until it is measured.
 * @example openFindings(checkPile([stem, bar]), [stem, bar], { joints: [], kept: [] })[0]?.topic //=>
 * 'bar-in-stem'
 */
export function openFindings(
  { findings, toMeasure }: PileCheck,
  parts: readonly PilePart[],
  { joints, kept }: { joints: readonly KeptJoint[]; kept: readonly KeptFinding[] },
): Finding[] {
  return [...findings, ...toMeasure].filter(
    (finding) =>
      !isAccepted(kept, finding) &&
      !(finding.outcome === 'fits-with' && alreadyBetween(finding, parts, joints)),
  );
}
