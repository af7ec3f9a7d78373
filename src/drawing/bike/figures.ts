/** How a bar is bent. */
export const barShapes = ['flat', 'riser', 'swept', 'drop'] as const;
export type BarShape = (typeof barShapes)[number];

/** What is known of one bike from the side, mm and counts. What is left out is not known and drawn dashed. */
export interface BikeFigures {
  /** Diameter of a wheel over its tyre, and the width of the tyre. */
  frontWheelMm?: number;
  frontTyreMm?: number;
  rearWheelMm?: number;
  rearTyreMm?: number;
  /** From the middle of the crank spindle to an axle, straight. */
  toFrontAxleMm?: number;
  toRearAxleMm?: number;
  /** Middle of the spindle above the ground. */
  spindleHeightMm?: number;
  /** Middle of the spindle to the top of the seat tube. */
  seatTubeMm?: number;
  /** Seatpost from the top of the seat tube to the rails. */
  postOutMm?: number;
  /** The bike has no saddle by design. */
  withoutSaddle?: boolean;
  crankMm?: number;
  ringTeeth?: number;
  sprocketTeeth?: number;
  bar?: BarShape;
  /** Middle of the grips above the ground. */
  barHeightMm?: number;
  /** Discs that are fitted. */
  frontRotorMm?: number;
  rearRotorMm?: number;
  /** Something on the bike brakes by a lever. */
  leverBrake?: boolean;
}

/** Every figure, and which of them are known of this bike. */
export interface Filled {
  of: Required<Omit<BikeFigures, 'frontRotorMm' | 'rearRotorMm'>> &
    Pick<BikeFigures, 'frontRotorMm' | 'rearRotorMm'>;
  known(...keys: (keyof BikeFigures)[]): boolean;
}

/** A rider's leg is as long on any wheel: rails stand so far from the spindle. */
const SPINDLE_TO_RAILS_MM = 680;
/** Below this a wheel counts as small: its frame is one low beam. */
export const SMALL_WHEEL_MM = 540;

/**
 * The figures of a bike, with a usual one wherever its own is not known. Wheels take after each other.
 * Usual figures are what a common city bike has; from memory, no source.
 * @param known what is known, mm and counts
 * @returns all figures, and a question for which are known
 * @example filled({ rearWheelMm: 500 }).of.frontWheelMm //=> 500
 */
export function filled(known: BikeFigures): Filled {
  const rearWheelMm = known.rearWheelMm ?? known.frontWheelMm ?? 700;
  const frontWheelMm = known.frontWheelMm ?? known.rearWheelMm ?? 700;
  const withoutSaddle = known.withoutSaddle ?? false;
  const small = rearWheelMm < SMALL_WHEEL_MM;
  const seatTubeMm = known.seatTubeMm ?? (withoutSaddle ? 150 : small ? 340 : 520);
  const usual = {
    frontWheelMm,
    rearWheelMm,
    frontTyreMm: known.rearTyreMm ?? 40,
    rearTyreMm: known.frontTyreMm ?? 40,
    toFrontAxleMm: 600,
    toRearAxleMm: small ? 400 : 435,
    spindleHeightMm: 285,
    seatTubeMm,
    postOutMm: Math.max(60, SPINDLE_TO_RAILS_MM - seatTubeMm),
    withoutSaddle,
    crankMm: 170,
    ringTeeth: withoutSaddle ? 20 : 42,
    sprocketTeeth: 17,
    bar: 'flat' as const,
    barHeightMm: withoutSaddle ? 930 : known.bar === 'drop' ? 940 : 1010,
    leverBrake: true,
  };
  return {
    of: { ...usual, ...known },
    known: (...keys) => keys.every((key) => known[key] !== undefined),
  };
}
