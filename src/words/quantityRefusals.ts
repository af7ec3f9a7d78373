import type { QuantityRefusal } from '../mechanics/quantity.ts';

/** Why a typed quantity cannot be taken, and what to do. */
export const quantityRefusals: Record<QuantityRefusal, string> = {
  empty: 'Type a number here too.',
  'not-a-number': 'Type digits, with a comma or a point for the decimals.',
  'not-finite': 'Type a number that has an end.',
  negative: 'Less than nothing is not possible here.',
  'two-separators': 'One comma or point is enough: leave out marks between thousands.',
  'unknown-unit': 'This unit is not known here.',
  'unit-of-another-kind': 'This unit measures something else.',
};
