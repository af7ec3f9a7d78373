import { type Band, band } from '../band.ts';
import { inRange } from '../range.ts';

/** A pitch with the tension that a gauge or a hanging weight gave for it. */
export interface KnownPitch {
  hz: number;
  tensionN: number;
}

/** Tension over the square of the pitch, as a straight line with its error. */
export interface EarCalibration {
  /** N per Hz² */
  slope: number;
  /** N that the ends of the spoke add to its pitch without any tension */
  offsetN: number;
  /** middle of the squares, their sum of squares about it, and how many there were */
  middleHz2: number;
  spreadHz4: number;
  count: number;
  /** of one known tension, N */
  errorN: number;
}

export type CalibrationByEar =
  | { ok: true; calibration: EarCalibration }
  | { ok: false; reason: 'one-tension' | 'tensions-too-close' | 'pitch-against-tension' };

/** A gauge or a weight is known no better, percent; own estimate. */
const KNOWN_PERCENT = 3;
/** The highest known tension has to be this many times the lowest; own choice. */
const APART = 1.25;
/** No calibration is better than this, percent; own estimate. */
const LEAST_PERCENT = 2;

/**
 * Calibration of one kind of spoke from at least two known tensions: the square of the pitch grows in a straight line
 * with the tension, also where the ends are clamped, so that neither length nor steel need be known.
 * @param known pitches 1 to 20 000 Hz with tensions 1 to 3000 N, of spokes of one kind, plucked alike
 * @returns the line, or why there is none
 * @throws RangeError when a figure is out of range
 * Source: T = a·f² − T₀, least squares; straight within 4 N from 400 to 1300 N against a beam model, derived for the handbook.
 * @example calibrateByEar([{ hz: 479.23, tensionN: 600 }, { hz: 597.45, tensionN: 1000 }]) //=> slope 0.003143, offset 122 N
 */
export function calibrateByEar(known: readonly KnownPitch[]): CalibrationByEar {
  const squares = known.map(({ hz }) => inRange('hz', hz, 1, 20_000) ** 2);
  const tensions = known.map(({ tensionN }) => inRange('tensionN', tensionN, 1, 3000));
  if (known.length < 2) return { ok: false, reason: 'one-tension' };
  if (Math.max(...tensions) < APART * Math.min(...tensions))
    return { ok: false, reason: 'tensions-too-close' };
  const mean = (list: number[]) => list.reduce((sum, value) => sum + value, 0) / list.length;
  const [middleHz2, middleN] = [mean(squares), mean(tensions)];
  const spreadHz4 = squares.reduce((sum, square) => sum + (square - middleHz2) ** 2, 0);
  const together = squares.reduce(
    (sum, square, at) => sum + (square - middleHz2) * (tensions[at]! - middleN),
    0,
  );
  const slope = together / spreadHz4;
  if (!(slope > 0) || !Number.isFinite(slope)) return { ok: false, reason: 'pitch-against-tension' };
  const offsetN = slope * middleHz2 - middleN;
  const away = tensions.map((tension, at) => tension - (slope * squares[at]! - offsetN));
  const scatterN = Math.sqrt(
    away.reduce((sum, newtons) => sum + newtons ** 2, 0) / Math.max(1, known.length - 2),
  );
  const errorN = Math.max(scatterN, (middleN * KNOWN_PERCENT) / 100);
  const count = known.length;
  return { ok: true, calibration: { slope, offsetN, middleHz2, spreadHz4, count, errorN } };
}

/**
 * Tension by a calibration, with its error, which grows away from the tensions that were known.
 * @param hz 1 to 20 000 Hz
 * @returns N, or null where the line falls to nothing
 * @throws RangeError when the pitch is out of range
 * Source: error of a fitted line; at least 2 %, own estimate.
 * @example calibratedTension({ slope: 0.003143, offsetN: 121.8, middleHz2: 293300, spreadHz4: 8.1e9, count: 2, errorN: 24 }, 540) //=> about 778, 795, 812 N
 */
export function calibratedTension(calibration: EarCalibration, hz: number): Band | null {
  const { slope, offsetN, middleHz2, spreadHz4, count, errorN } = calibration;
  const square = inRange('hz', hz, 1, 20_000) ** 2;
  const tensionN = slope * square - offsetN;
  if (!(tensionN > 0)) return null;
  const ofLine = errorN * Math.sqrt(1 / count + (square - middleHz2) ** 2 / spreadHz4);
  const off = Math.max(ofLine, (tensionN * LEAST_PERCENT) / 100);
  return band(Math.max(0, tensionN - off), tensionN, tensionN + off);
}
