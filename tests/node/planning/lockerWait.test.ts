import { describe, expect, test } from 'vitest';
import { type LockerPut, lockerWait, surfacesBySpeed } from '../../../src/planning/lockerWait.ts';
import { cureGrid } from '../../../src/standards/screws/cureGrid.ts';

const DAY_MS = 86_400_000;
const usual: LockerPut = {
  grade: 'medium',
  surface: 'steel',
  primer: false,
  temperatureC: 22,
  nearDiscBrake: false,
};

describe('the wait for a threadlocker', () => {
  test('medium on steel at 22 °C: a day (full cure within 24 h: encyclopedia article on thread-locking fluid)', () => {
    expect(lockerWait(usual)).toMatchObject({ ok: true, waitMs: DAY_MS });
  });
  test('never shorter than the longer end of the ride time, on any surface and with or without primer', () => {
    for (const surface of surfacesBySpeed)
      for (const primer of [false, true]) {
        const wait = lockerWait({ ...usual, surface, primer });
        if (wait.ok) expect(wait.waitMs).toBeGreaterThanOrEqual(wait.cure.rideHours.hi * 3_600_000);
        else expect(['attacks-plastic', 'needs-metal']).toContain(wait.reason);
      }
  });
  test('cold and passive surfaces wait longer (common practice, no source)', () => {
    const slow = lockerWait({ ...usual, surface: 'anodised', temperatureC: 10 });
    expect(slow.ok && slow.waitMs).toBeGreaterThan(DAY_MS);
    expect(lockerWait({ ...usual, temperatureC: 0 })).toEqual({
      ok: false,
      reason: 'not-reliable-below-5-c',
    });
  });
  test('plastic is refused (common practice, no source: it cracks)', () => {
    expect(lockerWait({ ...usual, surface: 'thermoplastic' })).toEqual({
      ok: false,
      reason: 'attacks-plastic',
    });
  });
  test('surfaces are offered from quick to slow, all of them, and what does not cure comes last', () => {
    expect([...surfacesBySpeed].sort()).toEqual(Object.keys(cureGrid.surfaces).sort());
    const hours = surfacesBySpeed.map((surface) => {
      const wait = lockerWait({ ...usual, surface });
      return wait.ok ? wait.cure.rideHours.mid : Number.POSITIVE_INFINITY;
    });
    expect(hours).toEqual([...hours].sort((a, b) => a - b));
  });
});
