import { expect, test } from 'vitest';
import { ridingPace, USUAL_PACE } from '../../../src/planning/ridingPace.ts';

const DAY_MS = 86_400_000;
const ride = (day: number, km = 10) => ({ atMs: day * DAY_MS, km });

test('no ride: the usual pace, the example of its description', () =>
  expect(ridingPace([], 0)).toEqual({ ridesPerDay: 1 / 7, kmPerDay: 15 / 7 }));

test('one ride says nothing of a pace', () => expect(ridingPace([ride(9)], 10 * DAY_MS)).toBe(USUAL_PACE));

test('four rides of 10 km in eight days', () =>
  expect(ridingPace([ride(2), ride(4), ride(6), ride(9)], 10 * DAY_MS)).toEqual({
    ridesPerDay: 0.5,
    kmPerDay: 5,
  }));

test('two rides of one morning are two in a week, not in an hour', () =>
  expect(ridingPace([ride(9.9), ride(10)], 10 * DAY_MS)).toEqual({ ridesPerDay: 2 / 7, kmPerDay: 20 / 7 }));

test('rides of last year, and rides written down for tomorrow, do not count', () => {
  const rides = [ride(1), ride(300), ride(366), ride(365)];
  expect(ridingPace(rides, 365.5 * DAY_MS)).toBe(USUAL_PACE);
});

test('without a distance the usual one of a ride is taken', () =>
  expect(ridingPace([ride(0, 0), ride(9, 0)], 10 * DAY_MS)).toEqual({ ridesPerDay: 0.2, kmPerDay: 3 }));
