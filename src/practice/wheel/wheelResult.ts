import type { ForceUnit, Typed } from '../../mechanics/units.ts';
import { convert } from '../../mechanics/units.ts';
import {
  bracingAngleDeg,
  type LacedSide,
  type SideTensions,
  sideTensions,
} from '../../mechanics/wheels/bracing.ts';
import { type LacingConcern, lacings, mostCrosses } from '../../mechanics/wheels/lacingUsable.ts';
import type { WheelSideName } from '../../mechanics/wheels/spokeLayout.ts';
import {
  type LengthSensitivity,
  spokeLengthMm,
  spokeLengthSensitivity,
} from '../../mechanics/wheels/spokeLength.ts';
import { intoNippleMm } from '../../mechanics/wheels/spokeLengthCorrections.ts';
import { type StockedSpoke, stockedSpoke } from '../../mechanics/wheels/spokeLengthStock.ts';
import { straightPullLengthMm } from '../../mechanics/wheels/spokeLengthStraightPull.ts';
import { spokePieces } from './spokePieces.ts';
import {
  type FiguresAnswer,
  figuresOfWheel,
  type SideFigures,
  sideAbout,
  type WheelFigures,
  type WheelSketch,
  wheelSides,
} from './wheelFigures.ts';

/** Spokes of one side that come out alike. */
export interface LengthOfSome {
  exactMm: number;
  count: number;
  crossingDeg: number;
  /** what shops stock in steps of a millimetre, and of two */
  stocked: StockedSpoke | null;
  inTwos: StockedSpoke | null;
}

export interface SideResult {
  lengths: LengthOfSome[];
  /** nothing for straight-pull spokes */
  sensitivity: LengthSensitivity | undefined;
  /** most crossings that pass both tests; nothing where the holes are not even or the spokes have no elbow */
  mostCrosses: number | undefined;
  concerns: LacingConcern[];
  bracingDeg: number;
}

export interface WheelResult {
  sides: Record<WheelSideName, SideResult>;
  /** with the target, or 1000 N where there is none */
  tensions: SideTensions;
  targetN: number | undefined;
  /** how far tension draws the spokes of the tighter side into their nipples */
  drawnInMm: number;
}

/** Where no target was chosen. */
const ASSUMED_N = 1000;
/** Metal in a cut through a middling aluminium rim, mm². Source: a dissertation on bicycle wheels. */
const RIM_MM2 = 104;

export const inNewtons = (force: Typed<ForceUnit> | undefined): number | undefined =>
  force && convert(force.value, force.unit, 'N');

function lengthOf(figures: WheelFigures, side: SideFigures, crossingDeg: number): number {
  const { pcdMm, flangeMm, hubHoleMm, lineOffsetMm } = side;
  return lineOffsetMm === undefined
    ? spokeLengthMm({ erdMm: figures.erdMm, pcdMm, flangeMm, hubHoleMm }, crossingDeg)
    : straightPullLengthMm({
        ...{ erdMm: figures.erdMm, headCircleMm: pcdMm, lineOffsetMm, flangeMm, head: 'rim-side' },
      });
}

/** Angles closer than this are the same lacing. */
const SAME_DEG = 0.01;

function angleGroups(figures: WheelFigures, side: WheelSideName): { crossingDeg: number; count: number }[] {
  const groups: { crossingDeg: number; count: number }[] = [];
  for (const spoke of figures.layout) {
    if (spoke.side !== side) continue;
    const group = groups.find(({ crossingDeg }) => Math.abs(crossingDeg - spoke.crossingDeg) < SAME_DEG);
    if (group) group.count++;
    else groups.push({ crossingDeg: spoke.crossingDeg, count: 1 });
  }
  return groups;
}

/** A side as the balance of pulls wants it: with the mean of its angles. */
function lacedSide(figures: WheelFigures, side: WheelSideName): LacedSide {
  const { pcdMm, flangeMm, spokes, lineOffsetMm } = figures.sides[side];
  const groups = angleGroups(figures, side);
  const sum = groups.reduce((all, { crossingDeg, count }) => all + crossingDeg * count, 0);
  const straightDeg =
    lineOffsetMm === undefined ? undefined : headAngleDeg(figures.erdMm, pcdMm, lineOffsetMm);
  return { erdMm: figures.erdMm, pcdMm, flangeMm, spokes, crossingDeg: straightDeg ?? sum / spokes };
}

/** Angle at the axle between the head of a straight-pull spoke and its rim hole. */
const headAngleDeg = (erdMm: number, circleMm: number, lineMm: number): number =>
  ((Math.acos((2 * lineMm) / erdMm) - Math.acos(Math.min(1, (2 * lineMm) / circleMm))) * 180) / Math.PI;

function sideResult(figures: WheelFigures, name: WheelSideName, evenHoles: boolean): SideResult {
  const side = figures.sides[name];
  const laced = lacedSide(figures, name);
  const straight = side.lineOffsetMm !== undefined;
  const lengths = angleGroups(figures, name).map(({ crossingDeg, count }) => {
    const exactMm = lengthOf(figures, side, crossingDeg);
    return {
      exactMm,
      count,
      crossingDeg,
      stocked: stockedSpoke(exactMm, 1),
      inTwos: stockedSpoke(exactMm, 2),
    };
  });
  const tested = !straight && evenHoles;
  const all = tested ? lacings(laced, side.spokes) : [];
  return {
    lengths: straight ? [{ ...lengths[0]!, count: side.spokes }] : lengths,
    sensitivity: straight ? undefined : spokeLengthSensitivity(laced, laced.crossingDeg),
    mostCrosses: tested ? mostCrosses(laced, side.spokes) : undefined,
    concerns: all.find(({ crosses }) => crosses === side.crosses)?.concerns ?? [],
    bracingDeg: bracingAngleDeg(laced, laced.crossingDeg),
  };
}

/**
 * What is worked out of the figures of a wheel: lengths, lacing, lean and the tension of both sides.
 * @param wheel as it is known: target and thickness are read from it
 * @param figures from `figuresOfWheel`
 * @throws RangeError when a length is none a spoke can have
 * @example wheelResult(wheel, figures).sides.left.lengths[0]?.exactMm //=> 183.649…
 */
export function wheelResult(wheel: WheelSketch, figures: WheelFigures): WheelResult {
  const targetN = inNewtons(wheel.target);
  const tighterN = targetN ?? ASSUMED_N;
  const evenHoles = wheel.drilling === 'even';
  const sides = {
    left: sideResult(figures, 'left', evenHoles),
    drive: sideResult(figures, 'drive', evenHoles),
  };
  const drawn = wheelSides.map((side) =>
    intoNippleMm(
      figures.layout.length,
      tighterN,
      spokePieces(sideAbout(wheel, side), sides[side].lengths[0]?.exactMm ?? 0),
      { radiusMm: figures.erdMm / 2, areaMm2: RIM_MM2 },
    ),
  );
  return {
    sides,
    tensions: sideTensions(tighterN, lacedSide(figures, 'left'), lacedSide(figures, 'drive')),
    targetN,
    drawnInMm: Math.max(...drawn),
  };
}

export type WorkedWheel =
  | { is: 'known'; figures: WheelFigures; result: WheelResult }
  | Exclude<FiguresAnswer, { is: 'known' }>;

/**
 * Figures and what comes of them, or why there is nothing to work out.
 * @example workedWheel(wheel).is //=> 'known'
 */
export function workedWheel(wheel: WheelSketch): WorkedWheel {
  const answer = figuresOfWheel(wheel);
  if (answer.is !== 'known') return answer;
  try {
    return { ...answer, result: wheelResult(wheel, answer.figures) };
  } catch (thrown) {
    if (thrown instanceof RangeError) return { is: 'absurd' };
    throw thrown;
  }
}

/**
 * The tension each side is to have.
 * @returns undefined without a target, or where the flanges hold no rim
 * @example sideTargetsN(result)?.drive //=> 1000
 */
export function sideTargetsN({ tensions, targetN }: WheelResult): Record<WheelSideName, number> | undefined {
  return targetN !== undefined && tensions.ok ? { left: tensions.leftN, drive: tensions.driveN } : undefined;
}
