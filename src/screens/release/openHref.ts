import type { Id, OpenItem } from '../../journal/entries.ts';
import { hrefOf } from '../route.ts';

/** Where an open item is mended. @example openHref({ what: 'step-open', … }, 'b1') //=> '#/plan/b1' */
export function openHref({ what, jointId, partId }: OpenItem, bikeId: Id): string | undefined {
  if (what === 'recheck-overdue') return hrefOf({ at: 'rechecks', bikeId });
  if (what === 'unsealed' && jointId) return hrefOf({ at: 'seal', jointId });
  if (what === 'step-open' || what === 'step-skipped') return hrefOf({ at: 'plan', bikeId });
  if (jointId) return hrefOf({ at: 'joint', jointId });
  if (partId) return hrefOf({ at: 'part', partId });
  if (what === 'fit-finding') return hrefOf({ at: 'fit', bikeId });
  if (what === 'defect' || what === 'uncured') return hrefOf({ at: 'bike', bikeId });
  return undefined;
}
