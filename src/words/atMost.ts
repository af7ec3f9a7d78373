import { bareNumber } from '../mechanics/numberText.ts';
import { type PressureUnit, pressureFromBar, unitLabel } from '../mechanics/units.ts';

/**
 * A pressure limit in a unit, cut off and never rounded up.
 * @param bar the limit, bar, ≥ 0
 * @example atMost(2.75, '[psi]') //=> '39 psi'
 */
export function atMost(bar: number, unit: PressureUnit): string {
  const perOne = unit === 'bar' ? 100 : 1;
  const value = Math.floor(pressureFromBar(bar, unit) * perOne + 1e-6) / perOne;
  return `${bareNumber(value)} ${unitLabel[unit]}`;
}
