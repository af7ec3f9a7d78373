import type { Face } from '../faces/face.ts';
import type { FitOutcome, Meeting } from '../verdict.ts';
import { adapterBridges, type Bridge, oneWayBridge, spacerBridge } from './bridge.ts';
import { type Links, tableLinks } from './links.ts';
import { meet } from './meet.ts';

/** What becomes of two faces, bridges included. */
export interface FitVerdict extends Omit<Meeting, 'meets' | 'spacers' | 'oneWay'> {
  outcome: FitOutcome;
  /** Best first; empty when the faces fit or nothing helps. */
  bridges: readonly Bridge[];
}

/**
 * Do two faces mate, and if not, what bridges them?
 * Measured sizes win over printed ones; the uncertainty of the caliper is carried as a band, and where that
 * band leaves the question open the answer is `not-known` with what to measure.
 * @param links adapters to bridge with: those of the table, or these and what is at hand
 * @returns undefined when such faces never meet
 * @example mates(stemClamp286, steerer254)?.outcome //=> 'fits-with'
 */
export function mates(one: Face, other: Face, links: Links = tableLinks): FitVerdict | undefined {
  const meeting = meet(one, other);
  if (!meeting) return undefined;
  const { meets, spacers, oneWay, ...rest } = meeting;
  if (meets === 'yes') return { ...rest, outcome: 'fits', bridges: [] };
  if (meets === 'unknown') return { ...rest, outcome: 'not-known', bridges: [] };
  const bridges = [
    ...(spacers ? [spacerBridge(spacers)] : []),
    ...adapterBridges(one, other, links),
    ...oneWay.map(oneWayBridge),
  ].sort((a, b) => Number(b.reversible) - Number(a.reversible));
  const [best] = bridges;
  if (!best) return { ...rest, outcome: 'does-not-fit', bridges };
  return { ...rest, outcome: best.reversible ? 'fits-with' : 'one-way-only', bridges };
}
