import type { Finding } from '../finding.ts';

/** What speaks against a choice, weightiest first. */
export interface SetCost {
  missingCount: number;
  oneWayCount: number;
  bridgeCount: number;
  openCount: number;
  /** The tie-break: grams, or parts that would have to be adjusted anew. */
  tie: number;
}

// Each step outweighs everything after it, and the sum of all stays an exact integer.
const TIE_MOST = 2 ** 24;
const COUNT_MOST = 2 ** 7;
const OPEN = TIE_MOST;
const BRIDGE = OPEN * COUNT_MOST;
const ONE_WAY = BRIDGE * COUNT_MOST;
const MISSING = ONE_WAY * COUNT_MOST;

export const noCost: SetCost = { missingCount: 0, oneWayCount: 0, bridgeCount: 0, openCount: 0, tie: 0 };

/** One number in which a missing part outweighs any change, a change any bridge, a bridge any question. */
export const weigh = ({ missingCount, oneWayCount, bridgeCount, openCount, tie }: SetCost): number =>
  missingCount * MISSING + oneWayCount * ONE_WAY + bridgeCount * BRIDGE + openCount * OPEN + Math.round(tie);

/**
 * What the findings about some parts speak against having them together; null when they cannot be together.
 * A bridge counts with its pieces, spacers and a half-link as one.
 */
export function costOf(findings: readonly Finding[]): SetCost | null {
  const cost = { ...noCost };
  for (const { outcome, bridges } of findings) {
    if (outcome === 'does-not-fit') return null;
    if (outcome === 'one-way-only') cost.oneWayCount += 1;
    if (outcome === 'not-known') cost.openCount += 1;
    if (outcome === 'fits-with') cost.bridgeCount += bridges[0]?.links.length || 1;
  }
  return cost;
}

/** The weight of what some findings tell; infinite when one of them says no. */
export function weighFindings(findings: readonly Finding[]): number {
  const cost = costOf(findings);
  return cost ? weigh(cost) : Number.POSITIVE_INFINITY;
}

/** Counted for a part that was not weighed, so that it does not win by that. */
const UNWEIGHED_G = 5000;

/** What tells equals apart: the grams of some parts, or how many of them are not adjusted yet. */
export function tieOf(
  parts: readonly { massG?: number; adjusted?: boolean }[],
  tie: 'mass' | 'adjusted',
): number {
  if (tie === 'adjusted') return parts.filter(({ adjusted }) => !adjusted).length;
  return parts.reduce((sum, { massG }) => sum + Math.round(massG ?? UNWEIGHED_G), 0);
}
