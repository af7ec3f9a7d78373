import type { BetweenKind } from '../journal/entries.ts';

/** What lies between, in words. */
export const betweenNames: Record<BetweenKind, string> = {
  dry: 'Dry',
  grease: 'Grease',
  'assembly-paste': 'Assembly paste',
  'anti-seize': 'Anti-seize',
  threadlocker: 'Threadlocker',
  'retaining-compound': 'Retaining compound',
  adapter: 'Adapter',
  shim: 'Shim',
  spacer: 'Spacer',
  washer: 'Washer',
  other: 'Something else',
};
