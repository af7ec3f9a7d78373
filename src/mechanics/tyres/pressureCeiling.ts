import { positive } from '../range.ts';
import type { Working } from '../working.ts';

/** Straight-side rims: 5 bar for road use, whatever the tyre says. Tyre maker's page. */
export const STRAIGHT_SIDE_BAR = 5;
/** 40 psi, rounded down: a workshop's limit for a tyre not made to run without a tube, also while seating it. */
export const NOT_MARKED_TUBELESS_BAR = 2.75;

export interface PressureParts {
  /** What is printed on the tyre, bar. */
  tyreMaxBar?: number;
  tyreWidthMm: number;
  /** One figure, or the rim maker's table; a wide tyre pulls harder at the rim, so the table cannot be scaled. */
  rimMax?: number | readonly { readonly tyreMm: number; readonly maxBar: number }[];
  /** Rim without a hook. */
  straightSide: boolean;
  markedTubeless: boolean;
  /** Run without a tube. */
  withoutTube: boolean;
}

export type CeilingGround = 'tyre' | 'rim' | 'straight-side' | 'not-marked-tubeless';
export type CeilingRefusal =
  | 'no-limit-printed'
  | 'straight-side-needs-a-tubeless-tyre'
  | 'tyre-wider-than-the-rim-table';

/** A ceiling is never rounded up. */
const floorToHundredth = (bar: number): number => Math.floor(bar * 100 + 1e-9) / 100;

/** The rim's figure for the tyre's width, or for the next wider one it knows. */
function rimBar(rimMax: PressureParts['rimMax'], tyreWidthMm: number): number | null | undefined {
  if (rimMax === undefined) return undefined;
  if (typeof rimMax === 'number') return rimMax;
  const wider = [...rimMax].sort((a, b) => a.tyreMm - b.tyreMm).find((row) => row.tyreMm >= tyreWidthMm);
  return wider ? wider.maxBar : null;
}

/**
 * The highest pressure a tyre and rim may see: the lowest of all limits that apply.
 * @returns bar, rounded down to hundredths, and which limit decided; or why no ceiling can be given
 * @throws RangeError when a figure is not positive
 * Source: tyre maker's page on straight-side rims; a workshop page on tyres not marked tubeless.
 * @example pressureCeiling({ tyreMaxBar: 4.5, rimMax: 3.8, tyreWidthMm: 47, straightSide: false,
 *   markedTubeless: true, withoutTube: true }) //=> ceilingBar 3.8, decidedBy 'rim'
 */
export function pressureCeiling(
  parts: PressureParts,
):
  | { ok: true; ceilingBar: number; decidedBy: CeilingGround; working: Working }
  | { ok: false; reason: CeilingRefusal } {
  const { tyreMaxBar, tyreWidthMm, straightSide, markedTubeless, withoutTube } = parts;
  positive({ tyreWidthMm, ...(tyreMaxBar === undefined ? {} : { tyreMaxBar }) });
  // Plain straight-side rims are for stiff beads only; a folding or stretchy bead walks off.
  if (straightSide && !markedTubeless) return { ok: false, reason: 'straight-side-needs-a-tubeless-tyre' };
  if (tyreMaxBar === undefined) return { ok: false, reason: 'no-limit-printed' };
  const rim = rimBar(parts.rimMax, tyreWidthMm);
  if (rim === null) return { ok: false, reason: 'tyre-wider-than-the-rim-table' };
  if (rim !== undefined) positive({ rimMaxBar: rim });

  const limits: [CeilingGround, number][] = [['tyre', tyreMaxBar]];
  if (rim !== undefined) limits.push(['rim', rim]);
  if (straightSide) limits.push(['straight-side', STRAIGHT_SIDE_BAR]);
  if (withoutTube && !markedTubeless) limits.push(['not-marked-tubeless', NOT_MARKED_TUBELESS_BAR]);
  const [decidedBy, lowest] = limits.reduce((least, limit) => (limit[1] < least[1] ? limit : least));
  const ceilingBar = floorToHundredth(lowest);
  return {
    ok: true,
    ceilingBar,
    decidedBy,
    working: {
      result: ceilingBar,
      unit: 'bar',
      formula: 'the lowest limit, rounded down',
      inputs: limits.map(([name, value]) => ({ name, value, unit: 'bar' })),
      source: 'lowest of the printed limits; straight-side 5 bar; 40 psi without tubeless marking',
      known: 'seen',
    },
  };
}

/**
 * Lowest pressure a tyre is meant for, bar.
 * Source: encyclopedia text on ISO 5775: 300 kPa up to 25 mm, 200 kPa on the road, 150 kPa off it.
 * @example lowestPressureBar(47, true) //=> 1.5
 */
export function lowestPressureBar(tyreWidthMm: number, offRoad: boolean): number {
  positive({ tyreWidthMm });
  if (tyreWidthMm <= 25) return 3;
  return offRoad ? 1.5 : 2;
}

/**
 * Straight-side rims ask for a width too.
 * @returns the rules broken; empty when none is
 * Source: tyre maker's page (28 mm and up); press report (25 mm inside: 29 mm and up).
 * @example straightSideWidthBreaks(28, 25) //=> ['under-29-on-25']
 */
export function straightSideWidthBreaks(
  tyreWidthMm: number,
  rimInnerMm: number,
): ('under-28' | 'under-29-on-25')[] {
  positive({ tyreWidthMm, rimInnerMm });
  const breaks: ('under-28' | 'under-29-on-25')[] = [];
  if (tyreWidthMm < 28) breaks.push('under-28');
  if (rimInnerMm >= 25 && tyreWidthMm < 29) breaks.push('under-29-on-25');
  return breaks;
}
