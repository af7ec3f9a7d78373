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
