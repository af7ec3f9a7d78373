import { stoppingDistanceM } from '../../mechanics/brakes/stopping.ts';
import { given } from '../../mechanics/working.ts';
import { overturningMps2, stoppingFigures } from '../../standards/checks/stoppingFigures.ts';
import type { JointFacts } from './jointFacts.ts';
import type { Saying, WorkingLine } from './line.ts';

/**
 * What bikes on sale stop in, beside the brake: a yardstick for a careful try, no test for the road.
 * @returns no line where the joint is no brake
 * @example stoppingLine({ ...facts, kind: 'caliper' }, plainly)?.id //=> 'stopping'
 */
export function stoppingLine({ kind }: JointFacts, say: Saying): WorkingLine | undefined {
  if (kind !== 'caliper') return undefined;
  const figures = stoppingFigures.filter(({ brakes, wet }) => brakes === 'both' && !wet);
  const [first] = figures;
  if (!first) return undefined;
  const withinM = figures.map((row) => row.withinM);
  const liftsM = stoppingDistanceM(first.fromKmh, overturningMps2.value);
  const [least, most] = [Math.min(...withinM), Math.max(...withinM)];
  return {
    id: 'stopping',
    label: 'Stopping distance',
    text:
      `Bikes on sale stop within ${say.number(least)} to ${say.number(most)} m from ${say.number(first.fromKmh)} km/h, ` +
      `dry, both brakes; under about ${say.number(Math.round(liftsM))} m a bike goes over its front wheel`,
    working: {
      result: liftsM,
      unit: 'm',
      formula: 's = v² / 2a',
      inputs: [
        given('v', first.fromKmh, 'km/h'),
        given('a at which the rear wheel lifts', overturningMps2.value, 'm/s²'),
      ],
      source: first.source,
      known: first.known,
    },
  };
}
