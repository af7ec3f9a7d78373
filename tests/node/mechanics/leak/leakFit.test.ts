import { describe, expect, test } from 'vitest';
import { bendZ, intervalRates, leakLine } from '../../../../src/mechanics/leak/leakFit.ts';
import { leakForecast, levelReached } from '../../../../src/mechanics/leak/leakForecast.ts';
import { leastSquares } from '../../../../src/mechanics/leak/leastSquares.ts';
import { settlingCurve } from '../../../../src/mechanics/leak/settlingCurve.ts';
import { holdingSet, leakOf, pumpedSet, sealingSet, steadySet } from '../../../fixtures/leaks.ts';

// Every figure of this file: the project's handbook of tyres, section 2, computed there with numpy and scipy.
const line = (set: typeof steadySet) => leakLine(set, 'permeation')!;
const first4 = steadySet.slice(0, 4);

test('least squares of the docstring', () => {
  expect(
    leastSquares(
      [
        [1, 1],
        [0, 1],
      ],
      [3, 5],
      [1, 1],
    )?.factors,
  ).toEqual([expect.closeTo(3, 9), expect.closeTo(2, 9)]);
  expect(
    leastSquares(
      [
        [1, 1],
        [2, 2],
      ],
      [3, 5],
      [1, 1],
    ),
  ).toBeUndefined();
  expect(() => leastSquares([[1], [0]], [3], [1])).toThrow(RangeError);
});

test.each([
  ['steady', steadySet, 0.030636, 0.001717, 0.923886, 0.387, 4],
  ['steady, first four', first4, 0.028789, 0.004248, 0.919981, 0.093, 2],
  ['sealing, one slope', sealingSet, 0.009795, 0.001204, 0.827159, 53.44, 5],
  ['holding', holdingSet, 0.000334, 0.000515, 0.914085, 0.773, 3],
] as const)('%s: slope, deviation, height, what is left over', (_, set, k, sigma, height, left, spare) => {
  const fit = line(set);
  expect(Math.abs(-fit.slope - k)).toBeLessThan(1e-6);
  expect(Math.abs(fit.slopeSigma - sigma)).toBeLessThan(1e-6);
  expect(Math.abs(fit.start - height)).toBeLessThan(1e-6);
  expect(Math.abs(fit.chiSquare - left)).toBeLessThan(5e-3);
  expect(fit.spare).toBe(spare);
});

describe('when 1.5 bar is reached, 95 %', () => {
  test.each([
    ['steady', steadySet, 16.92, 15.57, 18.57],
    ['first four', first4, 17.87, 14.33, 24.24],
  ] as const)('%s', (_, set, at, from, to) => {
    const found = levelReached(line(set), Math.log(1.5), 1.96)!;
    expect(Math.abs(found.at! - at)).toBeLessThan(0.02);
    expect(Math.abs(found.from - from)).toBeLessThan(0.02);
    expect(Math.abs(found.to! - to)).toBeLessThan(0.02);
  });

  test('where the slope is not proven only the early end is said', () => {
    const found = levelReached(line(holdingSet), Math.log(2), 1.96)!;
    expect(Math.abs(found.from - 176.5)).toBeLessThan(0.1);
    expect(found).toEqual({ from: found.from });
  });

  test('a gauge that is off by 0.05 bar moves the hour, as the threshold does', () => {
    const at = [1.55, 1.5, 1.45].map((bar) => levelReached(line(steadySet), Math.log(bar), 1.96)!.at!);
    [15.85, 16.92, 18.03].forEach((hour, i) => {
      expect(Math.abs(at[i]! - hour)).toBeLessThan(0.02);
    });
  });

  test('[S4] all laws together say no less than the permeation law alone', () => {
    const alone = levelReached(line(steadySet), Math.log(1.5), 1.8)!;
    const all = leakForecast(steadySet, 1.5)!;
    expect(all.laws.map(({ law }) => law)).toEqual(['permeation', 'laminar', 'orifice', 'crack']);
    expect(all.from).toBeLessThanOrEqual(alone.from);
    expect(all.to).toBeGreaterThanOrEqual(alone.to!);
    expect(all.at).toBeCloseTo(alone.at!, 9);
  });

  test('below 0.905 bar no orifice is reckoned with: its flow is not choked any more', () => {
    expect(leakForecast(steadySet, 0.8)!.laws.map(({ law }) => law)).not.toContain('orifice');
  });
});

describe('segments', () => {
  test('[S1] a pump-up does not halve the leak', () => {
    expect(-line(pumpedSet).slope).toBeCloseTo(0.007064, 6);
    expect(line(pumpedSet).slopeSigma).toBeCloseTo(0.000714, 6);
  });

  test('one line through everything would', () => {
    const one = pumpedSet.map((reading) => ({ ...reading, segment: 0 }));
    // Handbook, unweighted: -0.003769.
    const hours = one.map((reading) => reading.hours);
    const ones = one.map(() => 1);
    const plain = leastSquares(
      [ones, hours],
      one.map(({ bar }) => Math.log(bar)),
      ones,
    )!;
    expect(plain.factors[1]).toBeCloseTo(-0.003769, 6);
  });

  test('weights count: unweighted, late low readings decide', () => {
    const ones = steadySet.map(() => 1);
    const plain = leastSquares(
      [ones, steadySet.map(({ hours }) => hours)],
      steadySet.map(({ bar }) => Math.log(bar)),
      ones,
    )!;
    expect(plain.factors[1]).toBeCloseTo(-0.030955, 6);
  });
});

describe('bends', () => {
  test.each([
    ['steady', steadySet, -0.54, -1.33],
    ['sealing', sealingSet, 6.45, 6.39],
    ['holding', holdingSet, -0.03, -0.04],
    [
      'a laminar leak that slows by physics alone',
      leakOf(
        [
          [0, 2.5],
          [4, 2.1342],
          [8, 1.8438],
          [12, 1.6081],
          [24, 1.1126],
          [36, 0.8035],
        ],
        0.01,
      ),
      9.47,
      0,
    ],
  ] as const)('%s', (_, set, permeation, laminar) => {
    expect(Math.abs(bendZ(set, 'permeation')! - permeation)).toBeLessThan(0.02);
    expect(Math.abs(bendZ(set, 'laminar')! - laminar)).toBeLessThan(0.02);
  });

  test('rates between neighbours', () => {
    const rates = intervalRates(sealingSet).map(({ perHour }) => perHour);
    [0.12375, 0.08697, 0.04546, 0.03616, 0.00633, 0.00162].forEach((rate, i) => {
      expect(rates[i]).toBeCloseTo(rate, 5);
    });
  });

  test('neighbours share a reading: three readings prove no sealing', () => {
    const shared = leakOf([
      [0, 2.5],
      [2, 2.3],
      [6, 2.25],
    ]);
    expect(bendZ(shared, 'permeation')).toBeCloseTo(1.817, 2);
  });
});

test('the sealing curve of the sealing set', () => {
  const fit = settlingCurve(sealingSet)!;
  const [height, stays, settles] = fit.factors as [number, number, number];
  expect(fit.staysPerHour).toBeCloseTo(0.0013, 4);
  expect(Math.exp(height)).toBeCloseTo(2.4936, 3);
  expect(-stays).toBeCloseTo(0.00132, 5);
  expect(Math.sqrt(fit.covariance[1]![1]!)).toBeCloseTo(0.00235, 5);
  expect(-settles).toBeCloseTo(0.2401, 3);
  expect(1 / fit.perX).toBeCloseTo(1.92, 1);
  expect(settlingCurve(sealingSet.slice(0, 3))).toBeUndefined();
});
