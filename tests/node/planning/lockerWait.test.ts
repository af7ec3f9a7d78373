import { describe, expect, test } from 'vitest';
import {
  helpWords,
  type LockerPut,
  lockerHelp,
  lockerWait,
  surfacesBySpeed,
} from '../../../src/planning/lockerWait.ts';
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

describe('[T11] a cure that is too long to wait for', () => {
  const cold: LockerPut = { ...usual, surface: 'anodised', temperatureC: 8 };

  test('the example of the description', () =>
    expect(lockerHelp({ ...usual, temperatureC: 22 })).toBeUndefined());

  test('says what makes it short, and how long it takes then', () => {
    const now = lockerWait(cold);
    const helps = lockerHelp(cold) ?? [];
    expect(helps.length).toBeGreaterThan(0);
    let least = now.ok ? now.cure.waitHours : 0;
    expect(least).toBeGreaterThan(72);
    for (const { how, waitHours } of helps) {
      const then = lockerWait({
        ...cold,
        ...(how === 'primer' ? {} : { temperatureC: 22 }),
        ...(how === 'warm' ? {} : { primer: true }),
      });
      expect(then.ok && then.cure.waitHours).toBe(waitHours);
      expect(waitHours).toBeLessThanOrEqual(least / 2);
      expect(helpWords[how]).toMatch(/22 °C|primer/);
      least = waitHours;
    }
  });

  test('is never told where nothing cures, nor where a day or three will do', () => {
    expect(lockerHelp({ ...cold, temperatureC: 0 })).toBeUndefined();
    for (const surface of surfacesBySpeed) {
      const wait = lockerWait({ ...usual, surface });
      expect([surface, lockerHelp({ ...usual, surface }) !== undefined]).toEqual([
        surface,
        wait.ok && wait.cure.waitHours > 72,
      ]);
    }
  });
});
