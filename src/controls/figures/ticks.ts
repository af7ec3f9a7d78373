/**
 * Round values for an axis: steps of 1, 2 or 5 times a power of ten.
 * @param low lower end of what is shown
 * @param high upper end, above `low`
 * @param about how many steps are wanted, 1 or more
 * @returns values from the last round one at or below `low` to the first at or above `high`
 * @throws RangeError when the ends are not finite or not in order
 * @example ticks(0, 5.4, 4) //=> [0, 2, 4, 6]
 */
export function ticks(low: number, high: number, about: number): number[] {
  if (!(Number.isFinite(low) && Number.isFinite(high) && low < high && about >= 1))
    throw new RangeError('ticks: needs low < high and at least one step');
  const roughly = (high - low) / about;
  const power = 10 ** Math.floor(Math.log10(roughly));
  const step = ([1, 2, 5].find((factor) => factor * power >= roughly * 0.999) ?? 10) * power;
  const places = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const from = Math.floor(low / step + 1e-9);
  const to = Math.ceil(high / step - 1e-9);
  // Counting steps and rounding once keeps 0.1 + 0.2 off the axis.
  return Array.from({ length: to - from + 1 }, (_, index) => Number(((from + index) * step).toFixed(places)));
}
