import { recheckInstructions } from './recheckSchedule.ts';

/** What there is to pull to: the target, for want of one what was applied, or no figure at all. */
export type PullFigure = 'target' | 'applied' | 'none';

/** What a re-check by torque asks for, by the figure there is. Common practice, no source. */
export const pullInstructions: Record<PullFigure, { title: string; words: string }> = {
  target: recheckInstructions.retorque,
  applied: {
    title: 'Pull to what was applied',
    words:
      'No target is written down. Pull slowly in the tightening direction up to the torque that was applied and no further, without loosening first. Note whether the bolt moved and how far, and look for the figure of the makers.',
  },
  none: {
    title: 'Tight by hand? No figure is known',
    words:
      'No torque is written down for it, so there is nothing to pull to. Look for the figure first: a mark on either part, or their makers. Until then judge by hand whether it is tight and nothing shifts, and log what you found.',
  },
};

/**
 * The figure there is to pull a joint to. What was applied before it was only hand-tight again does not count.
 * @example pullFigure({ targets: [{ source: 'none' }], state: 'hand-tight' }) //=> 'none'
 */
export function pullFigure(joint: {
  targets: readonly { torque?: unknown }[];
  applied?: unknown;
  state: string;
}): PullFigure {
  if (joint.targets.some(({ torque }) => torque !== undefined)) return 'target';
  return joint.state === 'torqued' && joint.applied !== undefined ? 'applied' : 'none';
}
