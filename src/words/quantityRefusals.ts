import type { QuantityRefusal } from '../mechanics/quantity.ts';

/** Why a typed quantity cannot be taken, and what to do. */
export const quantityRefusals: Record<QuantityRefusal, string> = {
  empty: 'Type a number here too.',
  'not-a-number': 'Type digits, with a comma or a point for the decimals.',
  'not-finite': 'Enter a plain number.',
  negative: 'Enter 0 or more.',
  'two-separators': 'One comma or point is enough: leave out marks between thousands.',
  'unknown-unit': 'This unit is not known. Choose one from the list.',
  'unit-of-another-kind': 'Wrong unit here. Choose one from the list.',
};
