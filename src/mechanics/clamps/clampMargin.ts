import { type Band, scaled } from '../band.ts';
import { positive } from '../range.ts';

/** `holds` when even the low end does, `slips` when not even the high end does, `in-doubt` between. */
export type ClampVerdict = 'holds' | 'in-doubt' | 'slips';

/**
 * Slip torque over the moment asked of it.
 * @param slipNm band, N·m
 * @param demandNm moment to be held, N·m, > 0: a standard's test torque or the rider's own
 * @throws RangeError when the demand is not positive
 * @example clampMargin({ lo: 71, mid: 129, hi: 208 }, 60).verdict //=> 'holds'
 */
export function clampMargin(slipNm: Band, demandNm: number): { ratio: Band; verdict: ClampVerdict } {
  positive({ demandNm });
  const ratio = scaled(slipNm, 1 / demandNm);
  return { ratio, verdict: ratio.lo >= 1 ? 'holds' : ratio.hi < 1 ? 'slips' : 'in-doubt' };
}

export type ClampLever =
  | 'bring-to-the-marked-torque'
  | 'clean-off-grease'
  | 'grit-paste'
  | 'part-of-the-clamps-own-diameter'
  | 'bond-the-shim'
  | 'slit-the-shim'
  | 'lower-the-rise'
  | 'longer-clamp'
  | 'more-torque-than-marked';

/** What a lever does to the margin: 0.25 is a quarter more, 0 is nothing. */
export interface LeverEffect {
  lever: ClampLever;
  gain: number | 'from-nothing' | 'not-to-be-done';
}

/** The joint as it stands, and what each lever would change it to; leave out what does not apply. */
export interface ClampAsIs {
  appliedNm: number;
  markedNm?: number;
  friction: number;
  /** Friction of the same pair clean and dry, when there is grease now. */
  cleanFriction?: number;
  /** Friction with assembly paste, when both parts' makers permit it. */
  pasteFriction?: number;
  tubeMm: number;
  clampMm: number;
  /** Share of the tension a closed shim lets through, 0 to 1; leave out for a slit shim or none. */
  throughClosedShim?: number;
  momentArmMm?: number;
  /** The arm with the next lower bar or the bar rolled back. */
  lowerArmMm?: number;
}

/**
 * What would raise the margin, the strongest first; levers without effect stay in the list, because they are the ones
 * tried in vain. Going beyond the mark is listed with no figure: it breaks the clamp before it helps the grip.
 * @throws RangeError when a figure is not positive
 * Source: each gain follows from M = c·µ·ΣF·d; the choice of levers is common practice, no source.
 * @example clampLevers({ appliedNm: 4, markedNm: 5, friction: 0.16, tubeMm: 31.8, clampMm: 31.8 })[0] //=> { lever: 'bring-to-the-marked-torque', gain: 0.25 }
 */
export function clampLevers(joint: ClampAsIs): LeverEffect[] {
  const { appliedNm, markedNm, friction, cleanFriction, pasteFriction, tubeMm, clampMm } = joint;
  const { throughClosedShim, momentArmMm, lowerArmMm } = joint;
  positive({ appliedNm, friction, tubeMm, clampMm });
  const levers: LeverEffect[] = [];
  const add = (lever: ClampLever, better: number | undefined, now: number) => {
    if (better === undefined) return;
    positive({ [lever]: better });
    if (better > now) levers.push({ lever, gain: better / now - 1 });
  };
  add('bring-to-the-marked-torque', markedNm, appliedNm);
  add('clean-off-grease', cleanFriction, friction);
  add('grit-paste', pasteFriction, friction);
  if (clampMm > tubeMm) {
    add('part-of-the-clamps-own-diameter', clampMm, tubeMm);
    // Friction at the outer face then decides, on the clamp's diameter.
    add('bond-the-shim', clampMm, tubeMm);
  }
  if (throughClosedShim !== undefined && throughClosedShim < 1)
    levers.push({
      lever: 'slit-the-shim',
      gain: throughClosedShim > 0 ? 1 / throughClosedShim - 1 : 'from-nothing',
    });
  if (momentArmMm !== undefined && lowerArmMm !== undefined) {
    positive({ momentArmMm, lowerArmMm });
    if (lowerArmMm < momentArmMm)
      levers.push({ lever: 'lower-the-rise', gain: momentArmMm / lowerArmMm - 1 });
  }
  const rank = ({ gain }: LeverEffect) => (typeof gain === 'number' ? gain : Number.MAX_VALUE);
  levers.sort((a, b) => rank(b) - rank(a));
  return [
    ...levers,
    { lever: 'longer-clamp', gain: 0 },
    { lever: 'more-torque-than-marked', gain: 'not-to-be-done' },
  ];
}
