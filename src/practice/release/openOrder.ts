import type { OpenItem } from '../../journal/entries.ts';

/** What forbids riding comes first; then what has no source, what is not set, what was left out. */
const order: readonly OpenItem['what'][] = [
  'defect',
  'check-finding',
  'not-fitted',
  'hand-tight',
  'joint-open',
  'moved-twice',
  'no-torque-source',
  'uncured',
  'unsealed',
  'step-skipped',
  'step-open',
  'change-open',
  'recheck-overdue',
  'fit-finding',
  'check-open',
];

/**
 * Open items in the order they are read: blocking ones first, then by how grave their kind is.
 * @example inReadingOrder([]) //=> []
 */
export function inReadingOrder(items: readonly OpenItem[]): OpenItem[] {
  const rank = ({ what, blocks }: OpenItem) => (blocks ? 0 : order.length) + order.indexOf(what);
  return items.toSorted((a, b) => rank(a) - rank(b));
}
