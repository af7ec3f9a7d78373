import type { LaidSpoke, WheelSideName } from '../../mechanics/wheels/spokeLayout.ts';
import {
  type Balance,
  judgeBalance,
  type TensionSpread,
  tensionSpread,
} from '../../mechanics/wheels/spokeTension.ts';

/** A spoke with its tension and how far it lies from the mean of its side. */
export interface ReadSpoke {
  spoke: number;
  side: WheelSideName;
  tensionN: number;
  awayPercent: number;
  overLimit: boolean;
}

/** How evenly one side is tensioned. */
export interface SideBalance {
  spread: TensionSpread;
  balance: Balance;
  tightest: ReadSpoke;
  slackest: ReadSpoke;
}

export interface WheelBalance {
  sides: Partial<Record<WheelSideName, SideBalance>>;
  spokes: ReadSpoke[];
  /** spokes above what the rim maker allows on any one of them */
  over: ReadSpoke[];
}

/**
 * Balance of each side by itself, from one walk round the wheel.
 * @param layout which side each spoke is on
 * @param tensionsN spoke 1 first; null where a spoke was not read
 * @param limitN most on any single spoke
 * @returns a side without readings, or all slack, is left out
 * @example wheelBalance(layout, tensionsN, 1200).sides.left?.balance //=> 'even'
 */
export function wheelBalance(
  layout: readonly LaidSpoke[],
  tensionsN: readonly (number | null)[],
  limitN: number | undefined,
): WheelBalance {
  const sides: WheelBalance['sides'] = {};
  const spokes: ReadSpoke[] = [];
  for (const side of ['left', 'drive'] as const) {
    const read = layout.flatMap((spoke, at) => {
      const tensionN = tensionsN[at];
      return spoke.side === side && typeof tensionN === 'number' ? [{ spoke: spoke.spoke, tensionN }] : [];
    });
    const answer = tensionSpread(read.map(({ tensionN }) => tensionN));
    if (!answer.ok) continue;
    const { spread } = answer;
    const all = read.map(({ spoke, tensionN }, at) => ({
      ...{ spoke, side, tensionN, awayPercent: spread.awayPercent[at] as number },
      overLimit: limitN !== undefined && tensionN > limitN,
    }));
    spokes.push(...all);
    const byTension = all.toSorted((a, b) => a.tensionN - b.tensionN);
    sides[side] = {
      ...{ spread, balance: judgeBalance(spread) },
      ...{ slackest: byTension[0] as ReadSpoke, tightest: byTension.at(-1) as ReadSpoke },
    };
  }
  spokes.sort((a, b) => a.spoke - b.spoke);
  return { sides, spokes, over: spokes.filter(({ overLimit }) => overLimit) };
}
