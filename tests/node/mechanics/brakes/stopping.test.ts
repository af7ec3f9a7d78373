import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  correctedDistanceM,
  meanDecelerationMps2,
  stopCompared,
  stoppingDistanceM,
} from '../../../../src/mechanics/brakes/stopping.ts';
import { overturningMps2, stoppingFigures } from '../../../../src/standards/checks/stoppingFigures.ts';

describe('examples of the docstrings', () => {
  test('25 km/h in 6 m', () => expect(meanDecelerationMps2(25, 6)).toBeCloseTo(4.0188, 4));
  test('25 km/h at 4 m/s²', () => expect(stoppingDistanceM(25, 4)).toBeCloseTo(6.03, 2));
  test('a run at 26 km/h', () => {
    const result = correctedDistanceM(6.3, 26, 25);
    expect(result.ok && result.distanceM).toBeCloseTo(5.825, 3);
  });

  test('20 km/h in 5 m beside the city figure', () =>
    expect(stopCompared({ fromKmh: 25, withinM: 7 }, 20, 5)).toBeCloseTo(0.896, 3));
});

// Regression rows, computed from figures partly from memory.
test.each([
  ['city-rear-dry', 1.608],
  ['mountain-rear-dry', 2.411],
  ['racing-rear-dry', 2.009],
  ['any-both-wet', 1.975],
  ['any-rear-wet', 0.988],
])('%s asks for %s m/s² (figure from memory, computed)', (id, expected) => {
  const figure = stoppingFigures.find((row) => row.id === id);
  expect(figure && meanDecelerationMps2(figure.fromKmh, figure.withinM)).toBeCloseTo(expected, 3);
});

test('no standard asks for a stop that overturns the bike (press report: about 6 m/s²)', () => {
  for (const { fromKmh, withinM } of stoppingFigures)
    expect(meanDecelerationMps2(fromKmh, withinM)).toBeLessThan(overturningMps2.value);
});

test('the rear brake alone is asked for less than both', () => {
  for (const rear of stoppingFigures.filter((row) => row.brakes === 'rear')) {
    const both = stoppingFigures.find(
      (row) => row.bike === rear.bike && row.wet === rear.wet && row.brakes === 'both',
    );
    expect(both?.withinM).toBeLessThan(rear.withinM);
  }
});

describe('a run at a wrong speed (EN 14766:2005: 1.5 km/h)', () => {
  test.each([
    [26.5, true],
    [23.5, true],
    [26.6, false],
    [23.4, false],
  ])('%s km/h in place of 25: counts %s', (measuredKmh, counts) =>
    expect(correctedDistanceM(6, measuredKmh, 25).ok).toBe(counts),
  );
  test('the right speed changes nothing', () => {
    const result = correctedDistanceM(6, 25, 25);
    expect(result.ok && result.distanceM).toBe(6);
  });
});

test('correcting keeps the mean deceleration', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 50, noNaN: true }),
      fc.double({ min: 23.5, max: 26.5, noNaN: true }),
      (measuredM, measuredKmh) => {
        const result = correctedDistanceM(measuredM, measuredKmh, 25);
        if (!result.ok) throw new Error(result.reason);
        expect(meanDecelerationMps2(25, result.distanceM)).toBeCloseTo(
          meanDecelerationMps2(measuredKmh, measuredM),
          9,
        );
        expect(stoppingDistanceM(25, meanDecelerationMps2(25, result.distanceM))).toBeCloseTo(
          result.distanceM,
          9,
        );
      },
    ),
  );
});
