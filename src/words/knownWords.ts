import type { Known } from '../mechanics/working.ts';

/** How well a figure is known, in words. */
export const knownWords: Record<Known, string> = {
  seen: 'Read in print',
  exact: 'Exact by definition',
  computed: 'Derived here, and tested',
  memory: 'From memory: a measurement goes before it',
  proposal: 'Our suggestion: weigh it against your own',
};
