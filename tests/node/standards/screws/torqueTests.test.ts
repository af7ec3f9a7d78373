import { expect, test } from 'vitest';
import { jointTests } from '../../../../src/standards/screws/torqueTests.ts';

// TBIS 4210-5:2016 (text of ISO 4210-5): city, young adult, mountain, racing.
test.each([
  ['bar-in-stem', [60, 60, 80, 60]],
  ['stem-on-steerer', [40, 40, 50, 40]],
  ['stem-forward-bend', [2000, 2000, 2600, 2300]],
])('%s: %j', (id, loads) => {
  const { byUse } = jointTests.find((row) => row.id === id)!;
  expect([byUse.city, byUse['young-adult'], byUse.mountain, byUse.racing]).toEqual(loads);
});

test('every test has an id of its own and a positive load for each use', () => {
  expect(new Set(jointTests.map((row) => row.id)).size).toBe(jointTests.length);
  for (const { byUse, id } of jointTests)
    for (const load of Object.values(byUse)) expect(load, id).toBeGreaterThan(0);
});
