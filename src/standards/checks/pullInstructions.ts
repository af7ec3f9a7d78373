import type { PullFigure } from './pullFigure.ts';
import { recheckInstructions } from './recheckSchedule.ts';
import { pullTitles } from './recheckTitles.ts';

/** What a re-check by torque asks for, by the figure there is. Common practice, no source. */
export const pullInstructions: Record<PullFigure, { title: string; words: string }> = {
  target: recheckInstructions.retorque,
  applied: {
    title: pullTitles.applied,
    words:
      'No target is logged. Pull slowly in the tightening direction up to the torque that was applied and no further, without loosening first. Note whether the bolt moved and how far, and look for the figure of the makers.',
  },
  none: {
    title: pullTitles.none,
    words:
      'No torque is logged for it, so there is nothing to pull to. Look for the figure first: printed on either part, or from their makers. Until then judge by hand whether it is tight and nothing shifts, and log what you found.',
  },
};
