import { expect, test } from 'vitest';
import { rideAfter } from '../../../src/words/rideAfter.ts';
import { entryOf } from './history/everyEntry.ts';

test('threadlocker says from when the bike may be ridden, in the hour of the zone', () => {
  const put = { ...entryOf('locker-applied'), happenedAtMs: Date.UTC(2026, 4, 2, 21, 6), waitMs: 86_400_000 };
  // 2 May 2026 is a Saturday (ISO 8601 calendar).
  expect(rideAfter([put], 'UTC')).toBe('ride after Sun 21:06');
  expect(rideAfter([put, entryOf('torque-applied')], 'Europe/Berlin')).toBe('ride after Sun 23:06');
  expect(rideAfter([entryOf('torque-applied')], 'UTC')).toBeUndefined();
});
