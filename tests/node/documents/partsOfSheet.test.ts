import { expect, test } from 'vitest';
import { partsOfSheet } from '../../../src/documents/partsOfSheet.ts';
import { builtBike } from './builtBike.ts';

test('a bike without joints speaks of no part', () => {
  expect(partsOfSheet({ joints: [] })).toEqual([]);
});

test('the parts that meet in a joint, and the one a target stands on', async () => {
  const { asBuilt, clock, logbook } = await builtBike();
  expect(partsOfSheet(await asBuilt(clock.nowMs))).toEqual(['p1', 'p2', 'p2']);
  logbook.close();
});
