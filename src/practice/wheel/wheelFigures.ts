import type { WheelAbout, WheelSideAbout } from '../../journal/aboutWheels.ts';
import type { Refused } from '../../journal/commands.ts';
import { wheelRefusal } from '../../journal/wheelGuards.ts';
import { convert, type LengthUnit, type Typed } from '../../mechanics/units.ts';
import {
  type LacingPlan,
  type LaidSpoke,
  spokeLayout,
  type WheelSideName,
} from '../../mechanics/wheels/spokeLayout.ts';
import { erdFromReadings } from '../../mechanics/wheels/spokeLengthErd.ts';
import { flangesFromRimHoles } from '../../mechanics/wheels/spokeLengthRimHoles.ts';
import type { Unmeasured } from '../../words/wheel/measureWords.ts';

/** One side of a wheel in millimetres. */
export interface SideFigures {
  spokes: number;
  crosses: number;
  pcdMm: number;
  /** flange to the plane of this side's rim holes */
  flangeMm: number;
  hubHoleMm: number;
  /** straight-pull hubs only */
  lineOffsetMm?: number;
}

/** All that the length of spokes needs. */
export interface WheelFigures {
  erdMm: number;
  /** how far the measured rim diameters lie apart, and whether that is doubtful */
  erdSpreadMm: number;
  erdDoubtful: boolean;
  layout: LaidSpoke[];
  sides: Record<WheelSideName, SideFigures>;
}

export type FiguresAnswer =
  | { is: 'known'; figures: WheelFigures }
  | { is: 'unmeasured'; asks: Unmeasured[] }
  | { is: 'refused'; refused: Refused }
  /** a figure no wheel has: a slip of the finger or of the unit */
  | { is: 'absurd' };

/** A wheel as far as its spokes are concerned. */
export type WheelSketch = Omit<WheelAbout, 'name' | 'parts'>;

export const wheelSides = ['left', 'drive'] as const satisfies readonly WheelSideName[];

/** What a side holds in the record. */
export const sideAbout = (wheel: Pick<WheelAbout, 'leftSide' | 'driveSide'>, side: WheelSideName) =>
  side === 'left' ? wheel.leftSide : wheel.driveSide;

const inMm = (length: Typed<LengthUnit> | undefined): number | undefined =>
  length && convert(length.value, length.unit, 'mm');

/** Usual hole in a flange, mm. Source: from memory. */
const USUAL_HOLE_MM = 2.6;

/**
 * How the spokes of a wheel are laid.
 * @throws RangeError when the spokes do not divide or cannot be laced
 * @example lacingPlanOf(wheel).leftSpokes //=> 18
 */
export const lacingPlanOf = (wheel: WheelSketch): LacingPlan => ({
  drilling: wheel.drilling,
  leftSpokes: wheel.leftSide.spokes,
  driveSpokes: wheel.driveSide.spokes,
  leftCrosses: wheel.leftSide.crosses,
  driveCrosses: wheel.driveSide.crosses,
  firstSide: wheel.firstSide,
  ...(wheel.pairGapDeg === undefined ? {} : { pairGapDeg: wheel.pairGapDeg }),
  ...(wheel.pairsLean === undefined ? {} : { pairsLean: wheel.pairsLean }),
});

function unmeasuredOf(wheel: WheelSketch): Unmeasured[] {
  const asks: Unmeasured[] = wheel.erds?.length ? [] : ['erd'];
  for (const side of wheelSides) {
    const { pcd, flange, lineOffset } = sideAbout(wheel, side);
    if (!pcd) asks.push(`${side}-pcd`);
    if (!flange) asks.push(`${side}-flange`);
    if (wheel.head === 'straight-pull' && !lineOffset) asks.push(`${side}-line`);
  }
  return asks;
}

/**
 * The figures of a wheel in millimetres, the flanges seen from the rim's own holes.
 * @param wheel as it is known
 * @returns the figures; or what is still to be measured, why it can be no wheel, or that a figure is absurd
 * @example figuresOfWheel(wheel).is //=> 'known'
 */
export function figuresOfWheel(wheel: WheelSketch): FiguresAnswer {
  const refused = wheelRefusal(wheel);
  if (refused) return { is: 'refused', refused };
  const asks = unmeasuredOf(wheel);
  if (asks.length > 0) return { is: 'unmeasured', asks };
  try {
    return { is: 'known', figures: figuresIn(wheel) };
  } catch (thrown) {
    if (thrown instanceof RangeError) return { is: 'absurd' };
    throw thrown;
  }
}

function figuresIn(wheel: WheelSketch): WheelFigures {
  const toEndMm = 2 * (inMm(wheel.erdToEnd) ?? 0);
  const erds = (wheel.erds ?? []).map((erd) => (inMm(erd) ?? 0) + toEndMm);
  const { meanMm, spreadMm, doubtful } = erdFromReadings(erds);
  const mm = (side: WheelSideAbout, of: 'pcd' | 'flange') => inMm(side[of]) ?? Number.NaN;
  const toDriveMm = inMm(wheel.rimOffset) ?? 0;
  const staggerMm = inMm(wheel.stagger) ?? 0;
  const moved = flangesFromRimHoles(
    { leftMm: mm(wheel.leftSide, 'flange'), driveMm: mm(wheel.driveSide, 'flange') },
    { holes: 'offset', toDriveMm },
  );
  const { leftMm, driveMm } = flangesFromRimHoles(moved, {
    holes: 'staggered',
    eachSideMm: Math.abs(staggerMm),
    toward: staggerMm < 0 ? 'other-flange' : 'own-flange',
  });
  const figuresOf = (side: WheelSideAbout, flangeMm: number): SideFigures => {
    const lineOffsetMm = inMm(side.lineOffset);
    return {
      ...{ spokes: side.spokes, crosses: side.crosses, pcdMm: mm(side, 'pcd'), flangeMm },
      hubHoleMm: inMm(wheel.hubHole) ?? USUAL_HOLE_MM,
      ...(wheel.head === 'straight-pull' && lineOffsetMm !== undefined ? { lineOffsetMm } : {}),
    };
  };
  return {
    ...{ erdMm: meanMm, erdSpreadMm: spreadMm, erdDoubtful: doubtful },
    layout: spokeLayout(lacingPlanOf(wheel)),
    sides: { left: figuresOf(wheel.leftSide, leftMm), drive: figuresOf(wheel.driveSide, driveMm) },
  };
}
