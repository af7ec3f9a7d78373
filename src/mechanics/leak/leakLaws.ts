import { SEA_LEVEL_BAR } from './tyreAir.ts';

/**
 * Ways in which a tyre at rest loses air. For each there is a measure of the pressure that falls by the same amount in
 * every hour as long as the leak stays what it is.
 */
export type LeakLaw = 'permeation' | 'laminar' | 'orifice' | 'crack';

export interface LawShape {
  /** The measure that falls evenly. @param bar gauge pressure, > 0 */
  of(bar: number): number;
  /** Its slope: how much it changes for each bar. */
  slope(bar: number): number;
  /** The pressure for a value of the measure; 0 where the tyre is empty. */
  bar(measure: number): number;
}

const AIR = SEA_LEVEL_BAR;
/** Exponent of flow through a crack. Source: building air flow library, "near 0.65 for small crack-like openings". */
const CRACK = 0.65;

/**
 * The four laws, each with its even measure.
 * Source: permeation p' = −k·p; laminar p' = −c·p·(p + 2Pa); choked orifice P' = −k·P; crack p' = −c·p^0.65.
 * @example lawShapes.permeation.of(1) //=> 0
 */
export const lawShapes: Readonly<Record<LeakLaw, LawShape>> = {
  permeation: {
    of: Math.log,
    slope: (bar) => 1 / bar,
    bar: Math.exp,
  },
  laminar: {
    of: (bar) => Math.log(bar / (bar + 2 * AIR)),
    slope: (bar) => (2 * AIR) / (bar * (bar + 2 * AIR)),
    bar(measure) {
      const share = Math.exp(measure);
      return share >= 1 ? Number.POSITIVE_INFINITY : (2 * AIR * share) / (1 - share);
    },
  },
  orifice: {
    of: (bar) => Math.log(bar + AIR),
    slope: (bar) => 1 / (bar + AIR),
    bar: (measure) => Math.max(0, Math.exp(measure) - AIR),
  },
  crack: {
    of: (bar) => bar ** (1 - CRACK),
    slope: (bar) => (1 - CRACK) * bar ** -CRACK,
    bar: (measure) => Math.max(0, measure) ** (1 / (1 - CRACK)),
  },
};

export const leakLaws = Object.keys(lawShapes) as LeakLaw[];

/** Below this the flow of an orifice is no longer choked and its law does not hold, bar. Source: gas dynamics, P/Pa = 1.893. */
export const CHOKED_ABOVE_BAR = 0.905;
