import type { Entry } from '../../../src/journal/entries.ts';
import type { Logbook } from '../../../src/logbook.ts';
import type { Mismatch } from './compare.ts';
import { modelAnswers } from './modelAnswers.ts';
import { field, is } from './reading.ts';

const isDemo = (id: unknown): boolean => typeof id === 'string' && id.startsWith('demo-');
const isOwn = (id: unknown): boolean => typeof id === 'string' && !id.startsWith('demo-');

type Removal = Awaited<ReturnType<Logbook['removeDemo']>>;

/**
 * What is wrong after the demo was to be removed: it goes with all its lines unless a bike of the person's own
 * holds a part of it, or a bike of it a part of the person's own; the person's own lines stay.
 */
export function demoMismatches(all: readonly Entry[], result: Removal, later: readonly Entry[]): Mismatch[] {
  const found: Mismatch[] = [];
  const wrong = (what: string, bad: boolean, shown: unknown) => {
    if (bad) found.push({ what: `demo: ${what}`, expected: 'no', found: shown });
  };
  const model = modelAnswers(all);
  const mixed = [...model.parts].filter(
    ([id, { place }]) =>
      place.on === 'bike' && model.bikes.has(place.bikeId) && isDemo(id) !== isDemo(place.bikeId),
  );
  const borrowed = [...model.joints.values()].some(
    ({ bikeId, partIds, betweenIds }) => isOwn(bikeId) && [...partIds, ...betweenIds].some(isDemo),
  );
  if (!('removed' in result)) {
    wrong('refused although nothing is mixed', mixed.length === 0 && !borrowed, result);
    wrong('lines gone although refused', later.length !== all.length, later.length - all.length);
    return found;
  }
  wrong('removed although parts are mixed', mixed.length > 0, mixed);
  const left = new Set(later.map(({ id }) => id));
  for (const entry of later) {
    const own = isOwn(field(entry, 'partId'));
    const names = ['bikeId', 'partId', 'toolId'].some((name) => isDemo(field(entry, name)));
    if (is('entry-corrected')(entry))
      wrong('a correction of nothing is left', !left.has(entry.corrects), entry);
    else wrong('a line of the demo is left', names && !own, entry);
  }
  for (const entry of all) {
    const names = ['bikeId', 'partId', 'toolId'].some((name) => isDemo(field(entry, name)));
    const fixes = is('entry-corrected')(entry) && !left.has(entry.corrects);
    wrong('a line of the person is gone', !names && !fixes && !left.has(entry.id), entry);
  }
  wrong('the line that says so', later.filter(is('demo-removed')).length === 0, 'missing');
  return found;
}
