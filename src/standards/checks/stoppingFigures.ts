import type { StopFigure } from '../../mechanics/brakes/stopping.ts';
import type { Sourced } from '../known.ts';

export interface StoppingRow extends StopFigure, Sourced {
  readonly id: string;
  readonly bike: 'city' | 'mountain' | 'racing' | 'any';
  readonly brakes: 'both' | 'rear';
  readonly wet: boolean;
}

const press = {
  source: 'press report on bicycle brake tests, figures of the European standards',
  known: 'seen',
} as const;
const remembered = { source: 'EN 1476x braking tables, from memory', known: 'memory' } as const;

const row = (
  bike: StoppingRow['bike'],
  brakes: StoppingRow['brakes'],
  wet: boolean,
  fromKmh: number,
  withinM: number,
  sourced: Sourced,
): StoppingRow => ({
  id: `${bike}-${brakes}-${wet ? 'wet' : 'dry'}`,
  bike,
  brakes,
  wet,
  fromKmh,
  withinM,
  ...sourced,
});

/** Stopping distances of the standards for bikes in commerce: a yardstick, not a test for the road. */
export const stoppingFigures: readonly StoppingRow[] = [
  row('city', 'both', false, 25, 7, press),
  row('mountain', 'both', false, 25, 6, press),
  row('racing', 'both', false, 25, 6, press),
  row('city', 'rear', false, 25, 15, remembered),
  row('mountain', 'rear', false, 25, 10, remembered),
  row('racing', 'rear', false, 25, 12, remembered),
  row('any', 'both', true, 16, 5, remembered),
  row('any', 'rear', true, 16, 10, remembered),
];

/** Above about this mean deceleration a bicycle goes over its front wheel, m/s². */
export const overturningMps2 = { ...press, value: 6 } as const;
