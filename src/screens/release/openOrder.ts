import type { Id, OpenItem } from '../../journal/entries.ts';
import { hrefOf } from '../route.ts';

/** What keeps the bike where it is comes first; then what nobody vouches for, what is not set, what was left out. */
const order: readonly OpenItem['what'][] = [
  'defect',
  'check-finding',
  'hand-tight',
  'joint-open',
  'moved-twice',
  'no-torque-source',
  'uncured',
  'unsealed',
  'step-skipped',
  'step-open',
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

/** Where an open item is mended. @example openHref({ what: 'step-open', … }, 'b1') //=> '#/plan/b1' */
export function openHref({ what, jointId }: OpenItem, bikeId: Id): string | undefined {
  if (what === 'recheck-overdue') return hrefOf({ at: 'rechecks', bikeId });
  if (what === 'unsealed' && jointId) return hrefOf({ at: 'seal', jointId });
  if (jointId) return hrefOf({ at: 'joint', jointId });
  if (what === 'step-open' || what === 'step-skipped') return hrefOf({ at: 'plan', bikeId });
  if (what === 'fit-finding') return hrefOf({ at: 'fit', bikeId });
  if (what === 'defect' || what === 'uncured') return hrefOf({ at: 'bike', bikeId });
  return undefined;
}
