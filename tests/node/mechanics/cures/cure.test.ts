import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CureConditions, type CureTime, cureTime } from '../../../../src/mechanics/cures/cure.ts';
import { cureGrid } from '../../../../src/standards/screws/cureGrid.ts';
import { lockerRow, lockers } from '../../../../src/standards/screws/lockers.ts';

const tight: CureConditions = {
  grade: lockerRow('medium'),
  surfaces: ['steel', 'steel'],
  gapMm: 0.05,
  temperatureC: 22,
  primer: false,
  nearDiscBrake: false,
};
const cure = (change: Partial<CureConditions> = {}): CureTime => {
  const result = cureTime(cureGrid, { ...tight, ...change });
  if (!result.ok) throw new Error(result.reason);
  return result;
};

describe('example of the docstring', () => {
  test('steel on steel at 22 °C', () => {
    const { rideHours, fullHours, waitHours } = cure();
    expect(rideHours.mid).toBeCloseTo(3, 9);
    expect(fullHours?.mid).toBeCloseTo(24, 9);
    expect(waitHours).toBe(24);
  });
});

describe('what slows it down', () => {
  test('the slower surface decides, whichever side it is on', () => {
    const one = cure({ surfaces: ['steel', 'zinc-plate'] });
    expect(one.rideHours).toEqual(cure({ surfaces: ['zinc-plate', 'steel'] }).rideHours);
    expect(one.rideHours).toEqual(cure({ surfaces: ['zinc-plate', 'zinc-plate'] }).rideHours);
    expect(one.drags).toEqual(['passive-surface']);
    expect(one.advice).toEqual(['use-primer']);
  });

  // Adhesives handbook: zinc and cadmium plate, bright plating, chromates, some anodised films inhibit the cure.
  test.each(['zinc-plate', 'stainless', 'anodised'])(
    '%s counts as passive (adhesives handbook)',
    (surface) => {
      const result = cure({ surfaces: ['steel', surface] });
      expect(result.drags).toContain('passive-surface');
      expect(result.waitHours).toBeGreaterThanOrEqual(72);
    },
  );
  test.each(['steel', 'brass'])('%s counts as active (summary of data sheets)', (surface) =>
    expect(cure({ surfaces: ['steel', surface] }).drags).toEqual([]),
  );

  test('primer takes the place of the surface', () => {
    const primed = cure({ surfaces: ['zinc-plate', 'anodised'], primer: true });
    expect(primed.rideHours.hi).toBeLessThan(cure({ surfaces: ['zinc-plate', 'anodised'] }).rideHours.lo);
    expect(primed.drags).toEqual([]);
    expect(primed.fullHours).not.toBeNull();
  });

  test.each(['zinc-plate', 'anodised'])(
    '%s does not get to full strength without primer (grid, from memory)',
    (surface) => expect(cure({ surfaces: ['steel', surface] }).fullHours).toBeNull(),
  );

  test('12 °C: at least twice as long (rule of thumb, from memory)', () => {
    const { rideHours, waitHours, drags, advice } = cure({ temperatureC: 12 });
    expect(rideHours.lo).toBeCloseTo(cure().rideHours.lo * 2, 9);
    expect(drags).toEqual(['cold']);
    expect(advice).toEqual(['warm-the-joint']);
    expect(waitHours).toBe(72);
  });

  test('heat beyond the grid is not credited', () =>
    expect(cure({ temperatureC: 80 }).rideHours).toEqual(cure({ temperatureC: 40 }).rideHours));

  test('the wait asked for covers the slow end of the band', () => {
    const slow = cure({ surfaces: ['anodised', 'steel'], temperatureC: 8, gapMm: 0.2 });
    expect(slow.waitHours).toBeGreaterThan(72);
    expect(slow.waitHours).toBe(Math.ceil(slow.rideHours.hi));
    expect(slow.drags).toEqual(['passive-surface', 'cold', 'wide-gap']);
  });
});

describe('advice and refusals', () => {
  test('a gap of 0.25 mm: retaining compound instead', () => {
    expect(cure({ gapMm: 0.25 }).advice).toContain('retaining-compound');
    expect(cure({ gapMm: 0.25, grade: lockerRow('retaining') }).advice).not.toContain('retaining-compound');
  });
  test('ISO 4210-2: heat-resistant locking at disc brakes', () => {
    expect(cure({ nearDiscBrake: true }).advice).toContain('heat-resistant-grade');
    expect(cure({ nearDiscBrake: true, grade: lockerRow('high-temperature') }).advice).toEqual([]);
  });

  test.each<[string, string, Partial<CureConditions>]>([
    ['below 5 °C (own rule, no data sheet vouches)', 'not-reliable-below-5-c', { temperatureC: 4.9 }],
    [
      '0.26 mm on a threadlocker (common practice, no source)',
      'gap-wants-retaining-compound',
      { gapMm: 0.26 },
    ],
    [
      '0.40 mm on a retaining compound (from memory)',
      'gap-too-wide-for-grade',
      { gapMm: 0.4, grade: lockerRow('retaining') },
    ],
    [
      '0.06 mm on a wicking grade (from memory)',
      'gap-too-wide-for-grade',
      { gapMm: 0.06, grade: lockerRow('wicking') },
    ],
    [
      '0.762 mm = 30 mil (adhesives handbook)',
      'never-cures',
      { gapMm: 0.762, grade: lockerRow('retaining') },
    ],
    ['plastic cracks (from memory)', 'attacks-plastic', { surfaces: ['steel', 'thermoplastic'] }],
    ['carbon has no metal to start it (from memory)', 'needs-metal', { surfaces: ['carbon', 'steel'] }],
  ])('%s', (_, reason, change) =>
    expect(cureTime(cureGrid, { ...tight, ...change })).toEqual({ ok: false, reason }),
  );

  test.each([{ gapMm: -0.1 }, { gapMm: Number.NaN }, { temperatureC: Number.POSITIVE_INFINITY }])(
    'programmer error %o',
    (change) => expect(() => cureTime(cureGrid, { ...tight, ...change })).toThrow(RangeError),
  );
  test('an unknown surface is a programmer error', () =>
    expect(() => cureTime(cureGrid, { ...tight, surfaces: ['steel', 'cheese'] })).toThrow(RangeError));
});

const anyConditions = fc.record({
  grade: fc.constantFrom(...lockers),
  surfaces: fc.tuple(
    fc.constantFrom(...Object.keys(cureGrid.surfaces)),
    fc.constantFrom(...Object.keys(cureGrid.surfaces)),
  ),
  gapMm: fc.double({ min: 0, max: 1, noNaN: true }),
  temperatureC: fc.double({ min: -20, max: 60, noNaN: true }),
  primer: fc.boolean(),
  nearDiscBrake: fc.boolean(),
});

describe('properties', () => {
  test('whatever the conditions: a reason, or finite bands and a wait of 24 h or more', () => {
    fc.assert(
      fc.property(anyConditions, (conditions) => {
        const result = cureTime(cureGrid, conditions);
        if (!result.ok) return;
        expect(Number.isFinite(result.rideHours.hi)).toBe(true);
        expect(result.rideHours.lo).toBeGreaterThan(0);
        expect(result.waitHours).toBeGreaterThanOrEqual(result.drags.length > 0 ? 72 : 24);
        expect(result.waitHours).toBeGreaterThanOrEqual(result.rideHours.hi);
        if (result.fullHours) expect(result.fullHours.hi).toBeGreaterThanOrEqual(result.rideHours.hi);
      }),
    );
  });

  test('colder or looser is never quicker', () => {
    const colder = fc.double({ min: 0, max: 17, noNaN: true });
    const looser = fc.double({ min: 0, max: 0.2, noNaN: true });
    fc.assert(
      fc.property(colder, looser, (byC, byMm) => {
        const worse = cure({ temperatureC: 22 - byC, gapMm: 0.05 + byMm }).rideHours;
        const base = cure().rideHours;
        expect(worse.lo).toBeGreaterThanOrEqual(base.lo - 1e-9);
        expect(worse.hi).toBeGreaterThanOrEqual(base.hi - 1e-9);
      }),
    );
  });
});
