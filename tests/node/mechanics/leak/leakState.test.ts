import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LeakLaw, lawShapes } from '../../../../src/mechanics/leak/leakLaws.ts';
import { chanceLimit, leakState } from '../../../../src/mechanics/leak/leakState.ts';
import {
  dropIsProvable,
  provableDropBar,
  readingSigmaBar,
} from '../../../../src/mechanics/leak/readingError.ts';
import { afterChecksBar, atmosphereBar, atTemperatureBar } from '../../../../src/mechanics/leak/tyreAir.ts';
import { tyreVolumeL } from '../../../../src/mechanics/tyres/tyreVolume.ts';
import { holdingSet, leakOf, sealingSet, steadySet } from '../../../fixtures/leaks.ts';
import { countSyntheticLeaks, syntheticLines } from '../../../fixtures/syntheticLeaks.ts';

// Figures: the project's handbook of tyres, section 2.
describe('one temperature', () => {
  test.each([
    [2.5, 20, 5, 2.3202],
    [2.5, 20, 0, 2.2603],
    [1.8, 22, -5, 1.5426],
    [6, 20, 35, 6.3589],
    [2, 5, 20, 2.1625],
    [1.8, 5, 20, 1.9517],
    [2, 0, 20, 2.2206],
  ])('%s bar from %s to %s °C reads %s', (bar, from, to, expected) =>
    expect(Math.abs(atTemperatureBar(bar, from, to) - expected)).toBeLessThan(0.0005),
  );

  test('a cold garage is no leak', () => {
    const read = [
      atTemperatureBar(2.5, 20, 20),
      atTemperatureBar(2.3, 5, 20),
      atTemperatureBar(2.45, 17, 20),
    ];
    [2.5, 2.4787, 2.4858].forEach((bar, i) => {
      expect(read[i]).toBeCloseTo(bar, 4);
    });
  });

  test.each([
    [1000, 0.1145],
    [2000, 0.2183],
    [3000, 0.3122],
  ])('up to %s m the gauge rises by %s bar', (height, rise) =>
    expect(Math.abs(1.01325 - atmosphereBar(height) - rise)).toBeLessThan(0.0005),
  );

  test('programmer errors throw', () => {
    expect(() => atTemperatureBar(-1, 20, 20)).toThrow(RangeError);
    expect(() => atmosphereBar(20_000)).toThrow(RangeError);
    expect(() => afterChecksBar(2, 0, 30, 1)).toThrow(RangeError);
  });
});

describe('reading', () => {
  test('what a deviation is, and what a drop has to be', () => {
    expect(readingSigmaBar({ gaugeBar: 2.5, gaugeSigmaBar: 0.05 })).toBe(0.05);
    expect(readingSigmaBar({ gaugeBar: 2.5, gaugeSigmaBar: 1e-9, temperatureSigmaK: 2 })).toBeCloseTo(
      0.024,
      3,
    );
    expect(provableDropBar(0.05)).toBeCloseTo(0.1163, 4);
    expect(provableDropBar(0.05 / Math.sqrt(3))).toBeCloseTo(0.0672, 4);
  });

  test('a burp is suspected only where the drop is beyond reading', () => {
    expect(dropIsProvable(1.8, 1.62, 0.05)).toBe(true);
    expect(dropIsProvable(1.8, 1.74, 0.05)).toBe(false);
  });

  test.each([
    [28, 622, 6, 1, 5.86],
    [28, 622, 6, 5, 5.333],
    [40, 622, 2.5, 1, 2.472],
    [50, 406, 2.5, 1, 2.474],
    [50, 406, 2.5, 5, 2.371],
    [60, 622, 2.5, 1, 2.488],
  ])('%s-%s at %s bar, checked %s times with a hose of 30 mL: %s', (width, seat, bar, checks, left) =>
    expect(Math.abs(afterChecksBar(bar, tyreVolumeL(width, seat), 30, checks) - left)).toBeLessThan(0.001),
  );
});

/** Pressure some hours after 2.50 bar that were 2.40 an hour later. */
function after(law: LeakLaw, hours: number): number {
  const { of, bar } = lawShapes[law];
  return bar(of(2.5) + (of(2.4) - of(2.5)) * hours);
}

test.each([
  ['permeation', 1.9569, 1.5318, 0.9385],
  ['laminar', 1.9811, 1.6081, 1.1126],
  ['orifice', 1.9411, 1.4711, 0.7438],
  ['crack', 1.9389, 1.4668, 0.7612],
] as const)('2.50 to 2.40 in an hour by %s: after 6, 12 and 24 h', (law, six, twelve, day) => {
  expect(after(law, 6)).toBeCloseTo(six, 3);
  expect(after(law, 12)).toBeCloseTo(twelve, 3);
  expect(after(law, 24)).toBeCloseTo(day, 3);
});

describe('what is claimed', () => {
  test('the three sets', () => {
    expect(leakState(steadySet).state).toBe('steady');
    expect(leakState(sealingSet).state).toBe('sealing');
    expect(leakState(sealingSet).perDay).toBeUndefined();
    expect(leakState(holdingSet)).toMatchObject({ state: 'holding' });
    expect(leakState(holdingSet).perDay?.atMost).toBeCloseTo(0.0283, 4);
  });

  test('[S2] two readings claim nothing', () => {
    expect(leakState(steadySet.slice(0, 2))).toMatchObject({ state: 'too-early', because: 'few' });
    expect(leakState([])).toMatchObject({ state: 'too-early', because: 'few' });
  });

  test('[S3] a laminar leak that slows by physics alone is not called sealing', () => {
    const slowing = leakOf(
      [
        [0, 2.5],
        [4, 2.1342],
        [8, 1.8438],
        [12, 1.6081],
        [24, 1.1126],
        [36, 0.8035],
      ],
      0.01,
    );
    expect(leakState(slowing).state).not.toBe('sealing');
  });

  test('an early drop that three readings do not prove is not called sealing', () => {
    expect(
      leakState(
        leakOf([
          [0, 2.5],
          [2, 2.3],
          [6, 2.25],
        ]),
      ).state,
    ).toBe('steady');
  });

  test('[S2] readings that contradict each other claim nothing', () => {
    const torn = leakOf([
      [0, 2.5],
      [2, 1.9],
      [4, 2.5],
      [6, 1.9],
      [8, 2.5],
    ]);
    expect(leakState(torn)).toMatchObject({ state: 'too-early', because: 'scatter' });
    // Chi square of 4, one in a thousand: 18.47, textbook table, from memory.
    expect(chanceLimit(4)).toBeCloseTo(18.47, 0);
  });

  test('[S3] a leak that grows is said to', () => {
    const grows = leakOf([
      [0, 2.5],
      [2, 2.47],
      [4, 2.4],
      [8, 2.1],
      [12, 1.6],
      [16, 1.0],
    ]);
    expect(leakState(grows).state).toBe('worsening');
  });

  test('no set of readings throws or gives a figure that is not finite', () => {
    const reading = fc.record({
      hours: fc.double({ min: 0, max: 2000, noNaN: true }),
      bar: fc.double({ min: 0.3, max: 10, noNaN: true }),
      sigmaBar: fc.double({ min: 0.01, max: 0.2, noNaN: true }),
      segment: fc.integer({ min: 0, max: 3 }),
    });
    fc.assert(
      fc.property(fc.array(reading, { maxLength: 20 }), (some) => {
        const sorted = some.toSorted((a, b) => a.segment - b.segment || a.hours - b.hours);
        const { perDay } = leakState(sorted);
        if (perDay) for (const value of Object.values(perDay)) expect(Number.isFinite(value)).toBe(true);
      }),
    );
  });
});

// The whole 2,000 are printed by the outside checks.
test('of 600 synthetic leaks the bands and the claims keep their word', () => {
  for (const { text, passed } of syntheticLines(countSyntheticLeaks(600, 11)))
    expect(passed, text).toBe(true);
});
