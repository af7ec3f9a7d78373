import type { LaidSpoke } from './spokeLayout.ts';

/** One spoke in the order in which a wheel is laced. */
export interface LacingStep {
  spoke: LaidSpoke;
  /** from 1, clockwise as seen from the drive side, counted from the hole of this side's first spoke */
  hubHole: number;
  /** the first spoke of its round: what is special about the round is said there */
  opensRound: boolean;
  /** from 1 */
  inRound: number;
  ofRound: number;
  /** the head lies outside the flange, so the spoke runs along its inner face */
  headOutside: boolean;
  /** crossings of its own side that it meets; the last one it goes under */
  crosses: number;
}

/**
 * Every spoke in the usual order of lacing, the key spoke first: the spokes of each flange that lean one way, heads
 * outside, then the others.
 * @param layout from `spokeLayout`
 * @param crosses spokes that each crosses, by side
 * Source: common practice, no source.
 * @example lacingOrder(layout, { left: 3, drive: 3 })[0]?.spoke.spoke //=> 1
 */
export function lacingOrder(
  layout: readonly LaidSpoke[],
  crosses: Record<LaidSpoke['side'], number>,
): LacingStep[] {
  const sorted = layout.toSorted((a, b) => a.round - b.round || a.spoke - b.spoke);
  const countOf = (round: number) => layout.filter((spoke) => spoke.round === round).length;
  let inRound = 0;
  return sorted.map((spoke, at) => {
    const opensRound = spoke.round !== sorted[at - 1]?.round;
    inRound = opensRound ? 1 : inRound + 1;
    return {
      spoke,
      hubHole: hubHoleOf(layout, sorted, spoke),
      ...{ opensRound, inRound, ofRound: countOf(spoke.round) },
      headOutside: spoke.round <= 2,
      crosses: crosses[spoke.side],
    };
  });
}

function hubHoleOf(layout: readonly LaidSpoke[], sorted: readonly LaidSpoke[], spoke: LaidSpoke): number {
  const holes = layout.filter(({ side }) => side === spoke.side).length;
  const first = sorted.find(({ side }) => side === spoke.side) as LaidSpoke;
  const apart = ((((spoke.hubDeg - first.hubDeg) % 360) + 360) % 360) / (360 / holes);
  return (Math.round(apart) % holes) + 1;
}
