import { expect, test } from 'vitest';
import type { Entry } from '../../../../src/journal/entries.ts';
import { historyPlace } from '../../../../src/words/history/historyPlace.ts';

test.each([
  [[{ type: 'part-added', partId: 'p1', place: { on: 'shelf' } }], 'p:p1'],
  [[{ type: 'torque-applied', bikeId: 'b1', jointId: 'j1' }], 'b:b1'],
  [[{ type: 'tool-put-away', toolId: 't1' }], 't:t1'],
  [[{ type: 'settings-changed' }, { type: 'ride-logged', bikeId: 'b2' }], 'b:b2'],
  [[{ type: 'settings-changed' }], undefined],
  [[], undefined],
])('%j stands in %s', (entries, place) => {
  expect(historyPlace(entries as Entry[])).toBe(place);
});
