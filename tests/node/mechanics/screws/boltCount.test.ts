import { expect, test } from 'vitest';
import { boltCount } from '../../../../src/mechanics/screws/boltCount.ts';

test.each([
  [[{ count: 2 }, { count: 4 }], 6],
  [[{ count: 1 }], 1],
  [[], 0],
])('%j together are %i', (fasteners, bolts) => {
  expect(boltCount(fasteners)).toBe(bolts);
});
