import { afterEach, expect, test } from 'vitest';
import { zoneNow } from '../../../src/sensing/zoneNow.ts';

const before = process.env.TZ;
afterEach(() => {
  process.env.TZ = before;
});

test('is the zone of the phone, and the new one at once when the clock on the wall jumps', () => {
  process.env.TZ = 'Europe/Zurich';
  expect(zoneNow()).toBe('Europe/Zurich');
  process.env.TZ = 'Asia/Tokyo';
  expect(zoneNow()).toBe('Asia/Tokyo');
});
