import type { UnsetBond } from '../planning/unsetBonds.ts';
import { whenText } from './dayText.ts';

/**
 * A bond that has not set, in a sentence.
 * @example bondWords({ jointId: 'j', name: 'Sleeve' }) //=> 'Sleeve: no compound applied yet.'
 */
export const bondWords = ({ name, sinceMs }: UnsetBond): string =>
  sinceMs === undefined
    ? `${name}: no compound applied yet.`
    : `${name}: not set yet, applied ${whenText(sinceMs)}.`;
