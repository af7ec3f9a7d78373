import type { Rule } from '../bridges/rule.ts';
import { capRule } from './capRule.ts';
import { sizedRule } from './sized.ts';

const proposal = { source: 'common practice, no source: limits are our own', known: 'proposal' } as const;
const barSizes = 'bar and stem size article of a parts maker; forum thread on 25.8 and 26.0';

/** The two sizes that stems are made to share. */
const sharing = new Set([25.8, 26]);

/** Clamps of the cockpit: stem, bar, grips, levers. */
export const clampRules: readonly Rule[] = [
  sizedRule({
    topic: 'stem-on-steerer',
    hole: ['steerer-clamp', 'boreMm', 'stem clamp'],
    rod: ['steerer', 'diameterMm', 'steerer'],
    gap: [-0.1, 0.1],
    risk: 'A stem that turns takes the steering away; the clamp has to sit on the steerer over its whole height.',
    ...proposal,
  }),
  sizedRule({
    topic: 'quill-in-steerer',
    hole: ['steerer-inside', 'boreMm', 'steerer bore'],
    rod: ['quill', 'diameterMm', 'quill'],
    gap: [0, 0.3],
    risk: 'A quill that rattles, or shows its minimum-insertion line, splits the steerer or pulls out.',
    ...proposal,
  }),
  capRule,
  sizedRule({
    topic: 'bar-in-stem',
    hole: ['bar-clamp', 'boreMm', 'clamp'],
    rod: ['bar-centre', 'diameterMm', 'bar'],
    gap: [-0.1, 0.1],
    risk: 'A bar that slips throws the rider; a clamp forced over a thicker bar cracks.',
    source: barSizes,
    known: 'seen',
    special: (clamp, bar) =>
      sharing.has(clamp.nominal['boreMm'] ?? Number.NaN) &&
      sharing.has(bar.nominal['diameterMm'] ?? Number.NaN) &&
      !clamp.measured['boreMm'] &&
      !bar.measured['diameterMm']
        ? { meets: 'yes', because: 'The same stems clamp a 25.8 and a 26.0 bar.' }
        : undefined,
  }),
  sizedRule({
    topic: 'grip-on-bar',
    hole: ['grip-bore', 'boreMm', 'grip'],
    rod: ['grip-area', 'diameterMm', 'bar'],
    gap: [-0.3, 0.2],
    risk: 'A grip that turns or slides off is a fall.',
    ...proposal,
  }),
  sizedRule({
    topic: 'lever-on-bar',
    hole: ['lever-clamp', 'boreMm', 'lever clamp'],
    rod: ['grip-area', 'diameterMm', 'bar'],
    gap: [-0.1, 0.2],
    risk: 'A brake lever that turns under the hand brakes late.',
    ...proposal,
  }),
];
