import type { Entry } from '../../../src/journal/entries.ts';
import type { Logbook } from '../../../src/logbook.ts';
import type { Mismatch } from './compare.ts';
import { modelAnswers } from './modelAnswers.ts';
import { field, is } from './reading.ts';

const isDemo = (id: unknown): boolean => typeof id === 'string' && id.startsWith('demo-');
const isOwn = (id: unknown): boolean => typeof id === 'string' && !id.startsWith('demo-');

/** A line of the demo's own; what was done to a bike of the person's own with a tool of the demo is the person's. */
const isOfDemo = (entry: Entry): boolean =>
  ['bikeId', 'partId'].some((name) => isDemo(field(entry, name))) ||
  (isDemo(field(entry, 'toolId')) && !isOwn(field(entry, 'bikeId')));

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
    if (is('entry-corrected')(entry))
      wrong('a correction of nothing is left', !left.has(entry.corrects), entry);
    else wrong('a line of the demo is left', isOfDemo(entry) && !own, entry);
  }
  for (const entry of all) {
    const fixes = is('entry-corrected')(entry) && !left.has(entry.corrects);
    wrong('a line of the person is gone', !isOfDemo(entry) && !fixes && !left.has(entry.id), entry);
  }
  wrong('the line that says so', later.filter(is('demo-removed')).length === 0, 'missing');
  return found;
}
