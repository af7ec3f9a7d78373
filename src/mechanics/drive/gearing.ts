import { inRange, wholeInRange } from '../range.ts';
import { TEETH } from './pitchDiameter.ts';

const MM_PER_INCH = 25.4;
/** From a child's scooter wheel to a high wheeler. */
const WHEEL_MM = { lo: 80, hi: 2000 };

const wheel = (wheelDiameterMm: number): number =>
  inRange('wheelDiameterMm', wheelDiameterMm, WHEEL_MM.lo, WHEEL_MM.hi);

/**
 * Turns of the wheel for one turn of the cranks.
 * @param ringTeeth whole number, 6 to 120
 * @param sprocketTeeth whole number, 6 to 120
 * @throws RangeError when a count is not whole or out of range
 * @example gearRatio(36, 15) //=> 2.4
 */
export function gearRatio(ringTeeth: number, sprocketTeeth: number): number {
  wholeInRange('ringTeeth', ringTeeth, TEETH.fewest, TEETH.most);
  wholeInRange('sprocketTeeth', sprocketTeeth, TEETH.fewest, TEETH.most);
  return ringTeeth / sprocketTeeth;
}

/**
 * Diameter, in inches, of the directly driven wheel that would go as far: the trade's oldest gear figure.
 * @param ratio turns of the wheel per turn of the cranks, 0.05 to 20
 * @param wheelDiameterMm outer diameter of the tyre under the rider, mm
 * @example gearInches(2.4, 660) //=> 62.36…
 */
export function gearInches(ratio: number, wheelDiameterMm: number): number {
  return (inRange('ratio', ratio, 0.05, 20) * wheel(wheelDiameterMm)) / MM_PER_INCH;
}

/**
 * Way along the road for one turn of the cranks.
 * @param ratio turns of the wheel per turn of the cranks, 0.05 to 20
 * @param wheelDiameterMm outer diameter of the tyre under the rider, mm
 * @returns metres
 * @example developmentM(2.4, 660) //=> 4.976…
 */
export function developmentM(ratio: number, wheelDiameterMm: number): number {
  return (inRange('ratio', ratio, 0.05, 20) * Math.PI * wheel(wheelDiameterMm)) / 1000;
}

/**
 * Way along the road per way of the pedal; unlike gear inches it knows the length of the crank.
 * @param ratio turns of the wheel per turn of the cranks, 0.05 to 20
 * @param wheelDiameterMm outer diameter of the tyre under the rider, mm
 * @param crankMm spindle centre to pedal centre, mm, 50 to 300
 * @example gainRatio(2.4, 660, 170) //=> 4.658…
 */
export function gainRatio(ratio: number, wheelDiameterMm: number, crankMm: number): number {
  inRange('crankMm', crankMm, 50, 300);
  return (inRange('ratio', ratio, 0.05, 20) * wheel(wheelDiameterMm)) / 2 / crankMm;
}

/**
 * Road speed at a pedalling rate.
 * @param developmentMetres way per crank turn, m, above 0 to 50
 * @param cadenceRpm crank turns a minute, 0 to 300
 * @returns km/h
 * @example speedKmh(2, 50) //=> 6
 */
export function speedKmh(developmentMetres: number, cadenceRpm: number): number {
  return (
    inRange('developmentMetres', developmentMetres, 0, 50) * inRange('cadenceRpm', cadenceRpm, 0, 300) * 0.06
  );
}

/**
 * Pedalling rate a road speed asks for.
 * @param developmentMetres way per crank turn, m, 0.05 to 50
 * @param speed road speed, km/h, 0 to 200
 * @returns crank turns a minute
 * @example cadenceRpm(2, 6) //=> 50
 */
export function cadenceRpm(developmentMetres: number, speed: number): number {
  return inRange('speed', speed, 0, 200) / inRange('developmentMetres', developmentMetres, 0.05, 50) / 0.06;
}
