import { type Filled, SMALL_WHEEL_MM } from './figures.ts';
import { away, partWay, type Spot } from './shape.ts';

const SEAT_DEG = 107;
/** The steering axis; 90° is upright, more leans back. */
export const STEER_DEG = 108;
/** The axle lies so far in front of the steering axis. */
const FORK_OFFSET_MM = 45;
const ABOVE_TYRE_MM = 45;
/** With the front axle farther off, the front wheel is steered over a rod and something is carried between. */
const LONG_MM = 850;
/** Where a rider reaches the bar, in front of the spindle. */
const REACH_MM = 430;

/** The corners of a bike seen from its right, the ground at y = 0 and up negative; x = 0 is the spindle. */
export interface Corners {
  kind: 'diamond' | 'beam' | 'low' | 'long';
  rearAxle: Spot;
  frontAxle: Spot;
  spindle: Spot;
  seatTop: Spot;
  rails: Spot;
  /** Lower and upper end of the head tube that the bar turns in. */
  headLow: Spot;
  headTop: Spot;
  /** Lower end of the head of the front wheel; the same as `headLow` unless the bike is a long one. */
  crown: Spot;
  /** Top of the stem, where the bar is clamped. */
  clamp: Spot;
  rearRadius: number;
  frontRadius: number;
}

/** The leg of a right-angled triangle beside a known one; nothing where the long side is too short. */
const leg = (slant: number, rise: number): number => Math.sqrt(Math.max(0, slant ** 2 - rise ** 2));

/** Where everything stands. Angles are usual ones, from memory; lengths are the bike's own where known. */
export function cornersOf({ of }: Filled): Corners {
  const rearRadius = of.rearWheelMm / 2;
  const frontRadius = of.frontWheelMm / 2;
  const spindle = { x: 0, y: -of.spindleHeightMm };
  const rearAxle = { x: -leg(of.toRearAxleMm, of.spindleHeightMm - rearRadius), y: -rearRadius };
  const frontAxle = { x: leg(of.toFrontAxleMm, of.spindleHeightMm - frontRadius), y: -frontRadius };
  const seatTop = away(spindle, of.seatTubeMm, SEAT_DEG);
  const rails = away(seatTop, of.withoutSaddle ? 0 : of.postOutMm, SEAT_DEG);
  const behind = away(frontAxle, FORK_OFFSET_MM, STEER_DEG + 90);
  const crown = away(behind, frontRadius + ABOVE_TYRE_MM, STEER_DEG);
  const long = of.toFrontAxleMm > LONG_MM;
  const headLow = long ? { x: REACH_MM, y: spindle.y - 220 } : crown;
  const small = of.rearWheelMm < SMALL_WHEEL_MM;
  const kind = long ? 'long' : of.withoutSaddle ? 'low' : small ? 'beam' : 'diamond';
  // A level top tube on large wheels; a short head on small ones.
  const head = kind === 'diamond' ? Math.max(90, Math.min(200, headLow.y - seatTop.y)) : 115;
  const headTop = away(headLow, head, STEER_DEG);
  const rise = Math.max(30, (of.barHeightMm + headTop.y) / Math.sin((STEER_DEG * Math.PI) / 180));
  const steerer = away(headTop, rise, STEER_DEG);
  const reach = kind === 'beam' || kind === 'long' ? 0 : kind === 'low' ? 110 : 70;
  const clamp = { x: steerer.x + reach, y: steerer.y };
  return {
    ...{ kind, rearAxle, frontAxle, spindle, seatTop, rails, headLow, headTop, crown, clamp },
    ...{ rearRadius, frontRadius },
  };
}

/** Middle of the head tube. */
export const headMiddle = ({ headLow, headTop }: Corners): Spot => partWay(headLow, headTop, 0.5);

/** Where the brakes are marked: on their cable along the top tube, on a long bike above the front wheel. */
export const brakesMark = (at: Corners): Spot =>
  at.kind === 'long' ? { x: at.crown.x, y: at.crown.y - 60 } : partWay(at.seatTop, headMiddle(at), 0.5);
