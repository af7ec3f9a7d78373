import { contradictionFindings } from './contradictions.ts';
import type { Finding } from './finding.ts';
import type { Links } from './links.ts';
import { findingsBetween } from './pairFindings.ts';
import type { PilePart } from './pile.ts';
import { chainlineFindings } from './wholes/chainlineFinding.ts';
import { teethFindings } from './wholes/leastTeeth.ts';

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

/** One number in which a missing part outweighs any change, a change any bridge, a bridge any question. */
export const weigh = ({ missingCount, oneWayCount, bridgeCount, openCount, tie }: SetCost): number =>
  missingCount * MISSING + oneWayCount * ONE_WAY + bridgeCount * BRIDGE + openCount * OPEN + Math.round(tie);

/** The counts inside a weight. */
export function unweigh(weight: number): SetCost {
  const part = (unit: number, most: number): number => Math.floor(weight / unit) % most;
  return {
    missingCount: Math.floor(weight / MISSING),
    oneWayCount: part(ONE_WAY, COUNT_MOST),
    bridgeCount: part(BRIDGE, COUNT_MOST),
    openCount: part(OPEN, COUNT_MOST),
    tie: weight % TIE_MOST,
  };
}

function weighFindings(findings: readonly Finding[]): number {
  const cost = { missingCount: 0, oneWayCount: 0, bridgeCount: 0, openCount: 0, tie: 0 };
  for (const { outcome, bridges } of findings) {
    if (outcome === 'does-not-fit') return Number.POSITIVE_INFINITY;
    if (outcome === 'one-way-only') cost.oneWayCount += 1;
    if (outcome === 'not-known') cost.openCount += 1;
    if (outcome === 'fits-with') cost.bridgeCount += bridges[0]?.links.length || 1;
  }
  return weigh(cost);
}

/** What a choice costs by itself. */
export const weighAlone = (parts: readonly PilePart[]): number =>
  weighFindings([...teethFindings(parts), ...contradictionFindings(parts)]);

/** What two choices cost together; a part cannot be in two places. */
export function weighTogether(one: readonly PilePart[], other: readonly PilePart[], links: Links): number {
  if (one.some(({ partId }) => other.some((part) => part.partId === partId))) return Number.POSITIVE_INFINITY;
  const all = [...one, ...other];
  return weighFindings([
    ...one.flatMap((a) => other.flatMap((b) => findingsBetween(a, b, all, links))),
    // Left unmeasured, a chainline is an open question of every set alike and tells none apart.
    ...chainlineFindings(all).filter(({ outcome }) => outcome !== 'not-known'),
  ]);
}
