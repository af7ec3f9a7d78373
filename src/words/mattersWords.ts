import type { MattersBecause } from '../fit/mattersHere.ts';

/** Why a joint is safety-critical on this bike. */
export const mattersWords: Record<MattersBecause, string> = {
  'chain-brakes': 'On this bike the chain is the brake: its hub is fixed or brakes by back-pedalling.',
  'over-the-front-wheel': 'What comes loose over the front wheel can lock it.',
  'end-not-known':
    'No part tells which wheel the rack is over. It counts as a front rack until the frame or the fork is added to it.',
};
