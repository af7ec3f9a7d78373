import { inRange } from '../range.ts';

/** Everything a threadless steerer passes through, from the crown race seat up, mm. */
export interface SteererStack {
  /** headset below the head tube */
  lowerStackMm: number;
  headTubeMm: number;
  /** headset above the head tube, its top cover included */
  upperStackMm: number;
  spacersMm: number;
  /** height of the stem's clamp on the steerer */
  stemClampMm: number;
}

/** The cap must press the stack and never the tube, so the tube ends this far below. Source: builder's blog, worked example. */
export const CAP_GAP_MM = 3;

/**
 * Steerer from the crown race seat to the top, for a given stack.
 * @param stack each part 0 to 400 mm
 * @param capGapMm how far the tube ends below the stack's top, mm, 0 to 10
 * @returns mm
 * @throws RangeError when a part is out of range or the stack holds nothing
 * Source: builder's blog, worked example.
 * @example steererLengthMm({ lowerStackMm: 10.9, headTubeMm: 110.2, upperStackMm: 16.5, spacersMm: 25.3, stemClampMm: 40 }) //=> 199.9
 */
export function steererLengthMm(stack: SteererStack, capGapMm = CAP_GAP_MM): number {
  inRange('capGapMm', capGapMm, 0, 10);
  const parts = Object.entries(stack).map(([name, mm]) => inRange(name, mm, 0, 400));
  const topMm = parts.reduce((sum, mm) => sum + mm, 0);
  return inRange('steerer length', topMm - capGapMm, 1, 1000);
}

/** What an existing steerer means for a stack. */
export interface SteererSpare {
  /** steerer too long by, mm: stack it up with spacers, or saw; negative: too short */
  spareMm: number;
  /** steerer inside the stem's clamp, mm, at most the clamp's height */
  insideStemMm: number;
}

/**
 * How a steerer that is already there suits a stack.
 * @param steererMm crown race seat to the top, mm, 50 to 600
 * @throws RangeError when an argument is out of range
 * Source: `steererLengthMm` solved for the rest.
 * @example steererSpare(160, stack).spareMm //=> −39.9 for the stack of `steererLengthMm`
 */
export function steererSpare(steererMm: number, stack: SteererStack, capGapMm = CAP_GAP_MM): SteererSpare {
  inRange('steererMm', steererMm, 50, 600);
  const wantedMm = steererLengthMm(stack, capGapMm);
  const stemFootMm = wantedMm + capGapMm - stack.stemClampMm;
  return {
    spareMm: steererMm - wantedMm,
    insideStemMm: Math.max(0, Math.min(stack.stemClampMm, steererMm - stemFootMm)),
  };
}
