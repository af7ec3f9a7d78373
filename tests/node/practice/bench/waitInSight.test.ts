import { expect, test } from 'vitest';
import type { PartRow } from '../../../../src/journal/rows.ts';
import { waitInSight } from '../../../../src/practice/bench/waitInSight.ts';
import { changesOfBike } from '../../../../src/practice/part/changesOfBike.ts';

const DAY_MS = 86_400_000;

test('[W5] a cure that is over leaves the screens a day later; what asks for a look stays', () => {
  expect(waitInSight('cure', 0, 2 * DAY_MS)).toBe(false);
  expect(waitInSight('cure', 0, DAY_MS - 1)).toBe(true);
  expect(waitInSight('cure', 5 * DAY_MS, DAY_MS)).toBe(true);
  expect(waitInSight('seal', 0, 40 * DAY_MS)).toBe(true);
});

test('[P5] the changes of a bike are one list, the newest first, also what came along with a part', () => {
  const part = (partId: string, ...atMs: number[]) =>
    ({ partId, changes: atMs.map((at) => ({ atMs: at })) }) as unknown as PartRow;
  expect(changesOfBike([])).toEqual([]);
  expect(
    changesOfBike([part('frame', 2, 9), part('bar', 5)]).map((one) => [one.part.partId, one.change.atMs]),
  ).toEqual([
    ['frame', 9],
    ['bar', 5],
    ['frame', 2],
  ]);
});
