/**
 * Argument checks of the formulas: a wrong call stops at once and says which argument it was. No newton, millimetre or
 * megapascal of a workshop lies outside these two, and inside them no product of a formula can overflow into nonsense.
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
