/**
 * Argument checks of the formulas: a wrong call throws at once and names the argument. No newton, millimetre
 * or megapascal of a workshop lies outside these two, and inside them no product of a formula can overflow
 * into nonsense.
 */
const LEAST = 1e-12;
const MOST = 1e12;

/** @throws RangeError unless every value is above zero and of this world @example positive({ torqueNm: 5 }) */
export function positive(named: Record<string, number>): void {
  for (const [name, value] of Object.entries(named))
    if (!(value >= LEAST && value <= MOST)) throw new RangeError(`${name} must be positive: ${value}`);
}

/** @throws RangeError unless every value is zero or above and of this world @example notNegative({ friction: 0 }) */
export function notNegative(named: Record<string, number>): void {
  for (const [name, value] of Object.entries(named))
    if (!(value >= 0 && value <= MOST)) throw new RangeError(`${name} must not be negative: ${value}`);
}

/** @throws RangeError unless every value is finite and of this world @example finite({ angleDeg: -90 }) */
export function finite(named: Record<string, number>): void {
  for (const [name, value] of Object.entries(named))
    if (!(Math.abs(value) <= MOST)) throw new RangeError(`${name} must be finite: ${value}`);
}

/**
 * Guards the entrance of a computation: hands the value on, or says which argument is out of bounds.
 * @param name what the caller calls it, unit included
 * @param value number to judge
 * @param lo least permitted value, itself permitted
 * @param hi greatest permitted value, itself permitted
 * @returns the value
 * @throws RangeError when the value is not finite or lies outside
 * @example inRange('slackMm', 0.3, 0, 5) //=> 0.3
 */
export function inRange(
  name: string,
  value: number,
  lo = Number.NEGATIVE_INFINITY,
  hi = Number.POSITIVE_INFINITY,
): number {
  if (!Number.isFinite(value) || value < lo || value > hi)
    throw new RangeError(`${name} must be a finite number from ${lo} to ${hi}, got ${value}`);
  return value;
}

/**
 * The same for a count: whole numbers only.
 * @throws RangeError when the value is not whole or lies outside
 * @example wholeInRange('ringTeeth', 36, 6, 120) //=> 36
 */
export function wholeInRange(name: string, value: number, lo: number, hi: number): number {
  if (!Number.isInteger(value))
    throw new RangeError(`${name} must be a whole number from ${lo} to ${hi}, got ${value}`);
  return inRange(name, value, lo, hi);
}
