import type { PullFigure } from './pullFigure.ts';
import type { InstructionKind } from './recheckSchedule.ts';

/** What a re-check asks for, in a line. Apart from the words said at the bench: a list and a notice need no more. */
export const recheckTitles: Record<InstructionKind, string> = {
  retorque: 'Pull to the target',
  'look-at-mark': 'Look at the mark, do not turn',
  headset: 'Headset play',
  spokes: 'Spokes and truth',
  'brake-bed-in': 'Bed the brake in',
  seal: 'Bead and pressure',
  inspect: 'Look it over',
};

/** The same for a re-check by torque, by the figure there is. */
export const pullTitles: Record<PullFigure, string> = {
  target: recheckTitles.retorque,
  applied: 'Pull to what was applied',
  none: 'Tight by hand? No figure is known',
};
