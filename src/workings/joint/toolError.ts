import { toolAtSetting } from '../../mechanics/screws/wrenchFitness.ts';
import type { Known } from '../../mechanics/working.ts';
import { type ToolClassRow, toolClasses } from '../../standards/screws/toolClasses.ts';
import type { ToolFacts } from './jointFacts.ts';

/** Where a tool's kind is not known, the widest class of those with a scale. */
const UNKNOWN_SHARE = 0.06;

/** The class of a tool, where it is written down. */
export const classOf = ({ toolClass }: ToolFacts): ToolClassRow | undefined =>
  toolClasses.find((row) => row.toolClass === toolClass);

/** Smaller than any scale that is made; a figure below is a slip. */
const LEAST_SCALE_NM = 0.01;

/** The scale of a tool, where it is written down and makes sense. */
export function scaleOf({ minNm = 0, maxNm }: ToolFacts): { minNm: number; maxNm: number } | undefined {
  if (maxNm === undefined || !(maxNm >= LEAST_SCALE_NM) || !(minNm >= 0 && minNm <= maxNm)) return undefined;
  return { minNm, maxNm };
}

/**
 * The error to reckon with at a torque, as a fraction: what its papers say, else its class, else the widest
 * class; the scatter of a hand where it promises nothing there.
 * @param torqueNm N·m, > 0
 * @returns `printed`: whether its papers or a document print the figure
 * @example toolError({ name: 'small', toolClass: 'click', minNm: 2, maxNm: 24 }, 5).share //=> 0.04
 */
export function toolError(
  tool: ToolFacts | undefined,
  torqueNm: number,
): { share: number; source: string; known: Known; printed: boolean } {
  const hand = toolClasses.find(({ scatter }) => scatter !== undefined);
  const byHand = {
    share: hand?.scatter ?? 0.35,
    known: hand?.known ?? 'memory',
    printed: hand !== undefined && hand.origins > 0,
  };
  const widest = { share: UNKNOWN_SHARE, known: 'proposal', printed: false } as const;
  if (!tool) return { ...widest, source: 'no tool named, widest class taken' };
  const row = classOf(tool);
  if (row && !row.tolerance) return { ...byHand, source: row.source };
  const { maxNm, tolerancePercent } = tool;
  const papers = tolerancePercent !== undefined && tolerancePercent >= 0 && tolerancePercent < 100;
  const own = papers ? tolerancePercent / 100 : undefined;
  const tolerance = row?.tolerance ?? { upTo10Nm: UNKNOWN_SHARE, above10Nm: UNKNOWN_SHARE, usableFrom: 0.2 };
  const share = own ?? ((maxNm ?? 0) <= 10 ? tolerance.upTo10Nm : tolerance.above10Nm);
  const scale = scaleOf(tool);
  if (scale) {
    const fit = toolAtSetting({ ...scale, tolerance }, torqueNm);
    if (!fit.ok) return { ...byHand, source: 'its scale promises nothing at this torque: as by feel' };
  }
  if (own !== undefined) return { share, source: 'papers of the tool', known: 'seen', printed: true };
  return row
    ? { share, source: row.source, known: row.known, printed: row.origins > 0 }
    : { ...widest, share, source: 'kind of tool not logged, widest class taken' };
}
