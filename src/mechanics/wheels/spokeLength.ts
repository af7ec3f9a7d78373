import { inRange } from '../range.ts';

/** One side of a wheel, as measured. */
export interface WheelSide {
  /** effective rim diameter: across the ends the spokes shall have, mm */
  erdMm: number;
  /** circle of the spoke holes in this flange, mm */
  pcdMm: number;
  /** middle of this flange to the plane of this side's rim holes, along the axle, mm */
  flangeMm: number;
  /** spoke hole in the flange, mm; 2.6 unless measured (usual size, from memory) */
  hubHoleMm?: number;
}

const usualHubHoleMm = 2.6;

/**
 * Rim end to hub hole centre in a straight line: the geometry every other spoke figure rests on.
 * @param side rim 100 to 800 mm, hole circle 10 to 400 mm and smaller than the rim, flange −150 to 150 mm
 * @param crossingDeg angle between the spoke's two holes seen along the axle, degrees, 0 to 180
 * @returns mm
 * @throws RangeError when a figure is out of range
 * Source: law of cosines, and Pythagoras along the axle.
 * @example spokeSpanMm({ erdMm: 384, pcdMm: 45, flangeMm: 34 }, 60) //=> 184.949…
 */
export function spokeSpanMm({ erdMm, pcdMm, flangeMm }: WheelSide, crossingDeg: number): number {
  inRange('erdMm', erdMm, 100, 800);
  inRange('pcdMm', pcdMm, 10, Math.min(400, erdMm - 20));
  inRange('flangeMm', flangeMm, -150, 150);
  inRange('crossingDeg', crossingDeg, 0, 180);
  const [rim, hub] = [erdMm / 2, pcdMm / 2];
  const across = 2 * rim * hub * Math.cos((crossingDeg * Math.PI) / 180);
  return Math.sqrt(rim ** 2 + hub ** 2 + flangeMm ** 2 - across);
}

/**
 * Length of an ordinary spoke, from the inside of its elbow. The elbow hangs on the edge of the flange hole, so
 * half a hole comes off. Geometry without load: stretch and rim come on top (`spokeLengthCorrections`).
 * @param side as for `spokeSpanMm`; hub hole 1.5 to 5 mm
 * @param crossingDeg degrees, 0 to 180; from `crossingAngleDeg` or `holeAngleDeg`
 * @returns mm
 * @throws RangeError when a figure is out of range
 * Source: spoke length formula of wheelbuilding notes, checked against two published examples.
 * @example spokeLengthMm({ erdMm: 384, pcdMm: 45, flangeMm: 34 }, 60) //=> 183.649…
 */
export function spokeLengthMm(side: WheelSide, crossingDeg: number): number {
  const holeMm = inRange('hubHoleMm', side.hubHoleMm ?? usualHubHoleMm, 1.5, 5);
  return spokeSpanMm(side, crossingDeg) - holeMm / 2;
}

/** How much the length changes per millimetre of error in each measure, mm/mm. */
export interface LengthSensitivity {
  perErd: number;
  perPcd: number;
  perFlange: number;
}

/**
 * Which measurement is worth repeating: a millimetre of rim diameter is half a millimetre of spoke, one of flange
 * position next to nothing.
 * @throws RangeError when a figure is out of range
 * Source: derivatives of `spokeSpanMm`.
 * @example spokeLengthSensitivity({ erdMm: 384, pcdMm: 45, flangeMm: 34 }, 60).perErd //=> 0.488…
 */
export function spokeLengthSensitivity(side: WheelSide, crossingDeg: number): LengthSensitivity {
  const spanMm = spokeSpanMm(side, crossingDeg);
  const cos = Math.cos((crossingDeg * Math.PI) / 180);
  const [rim, hub] = [side.erdMm / 2, side.pcdMm / 2];
  return {
    perErd: (rim - hub * cos) / (2 * spanMm),
    perPcd: (hub - rim * cos) / (2 * spanMm),
    perFlange: side.flangeMm / spanMm,
  };
}
