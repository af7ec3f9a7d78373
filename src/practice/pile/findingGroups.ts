import type { PileCheck } from '../../fit/checkPile.ts';
import type { Finding } from '../../fit/finding.ts';
import { type GroupId, isAccepted } from '../../fit/openFindings.ts';
import type { FindingRow } from '../../journal/rows.ts';

export interface FindingGroup {
  group: GroupId;
  findings: readonly Finding[];
}

/**
 * Loud first: what stops the build, what cannot be undone, what was not measured, and only then what fits.
 */
const order: readonly GroupId[] = [
  'does-not-fit',
  'one-way-only',
  'not-known',
  'fits-with',
  'accepted',
  'fits',
];

/** What became of a finding before: the way accepted, or a note that it stays open. */
export const findingRowOf = (rows: readonly FindingRow[], { findingId }: Finding): FindingRow | undefined =>
  rows.find((row) => row.findingId === findingId);

/**
 * The findings of a pile by what has to happen, empty groups left out.
 * @example findingGroups(check, []).map(({ group }) => group) //=> ['one-way-only', 'fits-with', 'fits']
 */
export function findingGroups(
  { findings, toMeasure, fitting }: PileCheck,
  rows: readonly FindingRow[],
): FindingGroup[] {
  const all = [...findings, ...toMeasure, ...fitting];
  const groupOf = (finding: Finding): GroupId => (isAccepted(rows, finding) ? 'accepted' : finding.outcome);
  return order
    .map((group) => ({ group, findings: all.filter((finding) => groupOf(finding) === group) }))
    .filter((one) => one.findings.length > 0);
}
