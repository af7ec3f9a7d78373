import type { Known } from '../mechanics/working.ts';

/** How well a figure is known, in words. */
export const knownWords: Record<Known, string> = {
  seen: 'Read in print',
  exact: 'Exact by definition',
  computed: 'Computed here, and tested',
  memory: 'Unverified: measure before you rely on it',
  proposal: 'Our suggestion',
};
