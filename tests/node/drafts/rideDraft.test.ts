import { describe, expect, test } from 'vitest';
import { noRide, rideTyped } from '../../../src/drafts/rideDraft.ts';

describe('a ride as typed', () => {
  test('an international mile is exactly 1.609344 km', () => {
    expect(rideTyped({ ...noRide, distance: '10' }, '[mi_i]')).toEqual({ ok: true, ride: { km: 16.09344 } });
  });

  test('the unit chosen in the form goes before that of the settings', () => {
    expect(rideTyped({ ...noRide, distance: '12,5', unit: 'km' }, '[mi_i]')).toEqual({
      ok: true,
      ride: { km: 12.5 },
    });
  });

  test('what is left empty is left out, and a late ride keeps its time', () => {
    expect(rideTyped({ ...noRide, minutes: '38', noticed: ' ', atMs: 5 }, 'km')).toEqual({
      ok: true,
      ride: { minutes: 38, happenedAtMs: 5 },
    });
    expect(rideTyped(noRide, 'km')).toEqual({ ok: true, ride: {} });
  });

  test('each field that cannot be taken says so', () => {
    const typed = rideTyped({ ...noRide, minutes: 'an hour', distance: '1,2,3' }, 'km');
    expect(typed).toMatchObject({
      ok: false,
      wrong: { minutes: expect.any(String), distance: expect.any(String) },
    });
  });
});
