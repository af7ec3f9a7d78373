import type { PullFigure } from './pullFigure.ts';
import type { InstructionKind } from './recheckSchedule.ts';

/** What a re-check asks for, in a line. Apart from the words said at the bench: a list and a notice need no more. */
export const recheckTitles: Record<InstructionKind, string> = {
  retorque: 'Torque check',
  'look-at-mark': 'Check paint mark, do not turn',
  headset: 'Headset play',
  spokes: 'Spoke tension and trueness',
  'brake-bed-in': 'Bed in the brake',
  seal: 'Bead and pressure',
  inspect: 'Inspect',
};

/** The same for a re-check by torque, by the figure there is. */
export const pullTitles: Record<PullFigure, string> = {
  target: recheckTitles.retorque,
  applied: 'Pull to what was applied',
  none: 'Hand check, no torque figure',
};

/** What earlier versions said for these, as it stands in entries of their time. */
export const formerTitles: Partial<Record<InstructionKind, readonly string[]>> = {
  retorque: ['Pull to the target', 'Tight by hand? No figure is known'],
  'look-at-mark': ['Look at the mark, do not turn'],
  spokes: ['Spokes and truth'],
  'brake-bed-in': ['Bed the brake in'],
  inspect: ['Look it over'],
};
