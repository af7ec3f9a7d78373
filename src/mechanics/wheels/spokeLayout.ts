import { inRange, wholeInRange } from '../range.ts';
import { crossingAngleDeg } from './lacing.ts';

export type WheelSideName = 'left' | 'drive';

/** How the spokes of a wheel are laid, whatever their lengths. */
export interface LacingPlan {
  drilling: 'even' | 'two-to-one' | 'paired';
  leftSpokes: number;
  driveSpokes: number;
  leftCrosses: number;
  driveCrosses: number;
  /** the side of spoke 1 */
  firstSide: WheelSideName;
  /** between the two rim holes of a pair, both of one side, degrees; paired rims only */
  pairGapDeg?: number;
  /** whether the spokes of a pair lean toward each other at the hub, or apart; uneven rim holes only */
  pairsLean?: 'together' | 'apart';
}

/** One spoke of a laid wheel. Angles from the valve hole, clockwise as seen from the drive side. */
export interface LaidSpoke {
  /** from 1, in the order of the rim holes */
  spoke: number;
  side: WheelSideName;
  rimDeg: number;
  hubDeg: number;
  /** between its two holes, 0 to 180 */
  crossingDeg: number;
  /** where its hub end lies, seen from the rim hole: 1 clockwise, −1 the other way, 0 radial */
  lean: 1 | -1 | 0;
  /** its place in the usual order of lacing: every second spoke of the first side, then of the other, then the rest */
  round: 1 | 2 | 3 | 4;
}

/** The sides of the rim holes, spoke 1 first, as far as they repeat. */
function sidePattern({ drilling, firstSide, leftSpokes, driveSpokes }: LacingPlan): WheelSideName[] {
  const other = firstSide === 'left' ? 'drive' : 'left';
  if (drilling === 'even') return [firstSide, other];
  if (drilling === 'paired') return [firstSide, firstSide, other, other];
  const many = leftSpokes > driveSpokes ? 'left' : 'drive';
  return firstSide === many ? [firstSide, firstSide, other] : [firstSide, other, other];
}

/** Angle of every rim hole: even all round, or each two of one side closer together. */
function rimAngles(plan: LacingPlan, spokes: number): number[] {
  const stepDeg = 360 / spokes;
  const even = Array.from({ length: spokes }, (_, at) => (at + 0.5) * stepDeg);
  if (plan.drilling !== 'paired') return even;
  const gapDeg = inRange('pairGapDeg', plan.pairGapDeg ?? stepDeg, 0.5, 2 * stepDeg);
  // The middles of the pairs stay evenly spaced.
  return even.map((_, at) => (Math.floor(at / 2) * 2 + 1) * stepDeg + (at % 2 === 0 ? -1 : 1) * (gapDeg / 2));
}

/** Angle from `from` on to `to`, −180 to 180. */
const turnDeg = (from: number, to: number): number => ((((to - from + 180) % 360) + 360) % 360) - 180;

/**
 * Every spoke of a wheel with its two holes. Both spokes beside the valve lean away from it, so that a pump finds
 * room. Hub holes are evenly spaced in each flange; each flange stands as its rim holes want it.
 * @param plan spokes 4 to 36 a side, crosses 0 to 9; crossed sides have an even number
 * @returns the spokes in the order of the rim holes
 * @throws RangeError when the spokes do not divide or cannot be laced
 * Source: geometry; derived here. The order of lacing is common practice, no source.
 * @example spokeLayout({ drilling: 'even', leftSpokes: 18, driveSpokes: 18, leftCrosses: 3, driveCrosses: 3, firstSide: 'left' })[0] //=> spoke 1, left, rim 5°, hub 65°, 60°
 */
export function spokeLayout(plan: LacingPlan): LaidSpoke[] {
  const spokes = plan.leftSpokes + plan.driveSpokes;
  const pattern = sidePattern(plan);
  wholeInRange('groups of spokes', spokes / pattern.length, 1, 36);
  const angles = rimAngles(plan, spokes);
  const counts = { left: 0, drive: 0 };
  const sides = angles.map((_, at) => pattern[at % pattern.length] as WheelSideName);
  const places = sides.map((side) => counts[side]++);
  if (counts.left !== plan.leftSpokes) throw new RangeError('the spokes do not divide so');
  const firstRim = { left: angles[sides.indexOf('left')]!, drive: angles[sides.indexOf('drive')]! };
  return angles.map((rimDeg, at) => {
    const side = sides[at] as WheelSideName;
    const place = places[at] as number;
    const holes = side === 'left' ? plan.leftSpokes : plan.driveSpokes;
    const crosses = side === 'left' ? plan.leftCrosses : plan.driveCrosses;
    const evenDeg = crossingAngleDeg(crosses, holes);
    if (crosses > 0) wholeInRange('half the spokes of a crossed side', holes / 2, 2, 18);
    const lean = crosses === 0 ? 0 : leanOf(plan, place);
    const hubDeg = evenHoleDeg(plan, side, firstRim[side], place, holes) + lean * evenDeg;
    return {
      ...{ spoke: at + 1, side, rimDeg, hubDeg, lean, crossingDeg: Math.abs(turnDeg(rimDeg, hubDeg)) },
      round: roundOf(side === plan.firstSide, lean, place),
    };
  });
}

/** The spokes of each side lean in turn; on uneven rims the pair leans together or apart at the hub. */
function leanOf({ drilling, pairsLean = 'together' }: LacingPlan, place: number): 1 | -1 {
  const first = place % 2 === 0;
  return (drilling === 'even' || pairsLean === 'together') === first ? 1 : -1;
}

/** Where the hub hole of a radial spoke lies: at its rim hole, or where that would be were the rim holes even. */
function evenHoleDeg(
  plan: LacingPlan,
  side: WheelSideName,
  firstRimDeg: number,
  place: number,
  holes: number,
): number {
  const spacingDeg = 360 / holes;
  const gapDeg = pairGapOf(plan, side);
  const shiftDeg = gapDeg === undefined ? 0 : (spacingDeg - gapDeg) / 2;
  return firstRimDeg - shiftDeg + place * spacingDeg;
}

/** Angle between the two rim holes of a pair of this side; undefined where its holes are even. */
function pairGapOf(plan: LacingPlan, side: WheelSideName): number | undefined {
  const spokes = plan.leftSpokes + plan.driveSpokes;
  if (plan.drilling === 'paired') return plan.pairGapDeg ?? 360 / spokes;
  if (plan.drilling === 'even') return undefined;
  const many = plan.leftSpokes > plan.driveSpokes ? 'left' : 'drive';
  return side === many ? 360 / spokes : undefined;
}

function roundOf(first: boolean, lean: 1 | -1 | 0, place: number): LaidSpoke['round'] {
  const leading = lean === 0 ? place % 2 === 0 : lean === 1;
  if (leading) return first ? 1 : 2;
  return first ? 3 : 4;
}
