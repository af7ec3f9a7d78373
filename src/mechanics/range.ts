/** Argument checks of the formulas: a wrong call stops at once and says which argument it was. */

/** @throws RangeError unless every value is finite and > 0 @example positive({ torqueNm: 5 }) */
export function positive(named: Record<string, number>): void {
  for (const [name, value] of Object.entries(named))
    if (!(Number.isFinite(value) && value > 0)) throw new RangeError(`${name} must be positive: ${value}`);
}

/** @throws RangeError unless every value is finite and ≥ 0 @example notNegative({ friction: 0 }) */
export function notNegative(named: Record<string, number>): void {
  for (const [name, value] of Object.entries(named))
    if (!(Number.isFinite(value) && value >= 0))
      throw new RangeError(`${name} must not be negative: ${value}`);
}

/** @throws RangeError unless every value is finite @example finite({ angleDeg: -90 }) */
export function finite(named: Record<string, number>): void {
  for (const [name, value] of Object.entries(named))
    if (!Number.isFinite(value)) throw new RangeError(`${name} must be finite: ${value}`);
}
