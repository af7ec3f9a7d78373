import * as fc from 'fast-check';
import { max, mean, min, std } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  countWithin,
  judgeBalance,
  type TensionSpread,
  tensionSpread,
} from '../../../../src/mechanics/wheels/spokeTension.ts';
import { allSpokesN, evenSpokesN, oddSpokesN } from '../../../fixtures/spokeTensions.ts';

function spreadOf(readingsN: readonly number[]): TensionSpread {
  const answer = tensionSpread(readingsN);
  if (!answer.ok) throw new Error(answer.reason);
  return answer.spread;
}

test('1000 and 1100 N: mean 1050, 4.76 % either way', () => {
  const spread = spreadOf([1000, 1100]);
  expect(spread.meanN).toBe(1050);
  expect(spread.mostAbovePercent).toBeCloseTo(4.762, 3);
  expect(spread.mostBelowPercent).toBeCloseTo(-4.762, 3);
});

describe('36 measured spokes, open data of a dissertation on bicycle wheels', () => {
  const spread = spreadOf(allSpokesN);
  // [computed] regression rows from that data.
  test.each([
    ['meanN', 1066.54, 2],
    ['deviationN', 33.37, 2],
    ['leastN', 990.1, 6],
    ['mostN', 1146.4, 6],
    ['mostAbovePercent', 7.49, 2],
    ['mostBelowPercent', -7.17, 2],
  ] as const)('%s %s', (figure, value, digits) => expect(spread[figure]).toBeCloseTo(value, digits));
  test('33 within 5 %, all within 10 %', () => {
    expect([countWithin(spread, 5), countWithin(spread, 10)]).toEqual([33, 36]);
  });
  test('spokes leaving the flange inside and outside differ a little: 1060 and 1073 N', () => {
    expect(spreadOf(oddSpokesN).meanN).toBeCloseTo(1060.23, 2);
    expect(spreadOf(evenSpokesN).meanN).toBeCloseTo(1072.85, 2);
  });
  test('the wheel counts as even, limits of the same dissertation', () =>
    expect(judgeBalance(spread)).toBe('even'));
  test('mathjs, a general mathematics library, finds the same statistics', () => {
    expect(spread.meanN).toBeCloseTo(mean(allSpokesN) as number, 9);
    expect(spread.deviationN).toBeCloseTo(std(allSpokesN, 'unbiased') as unknown as number, 9);
    expect(spread.leastN).toBe(min(allSpokesN));
    expect(spread.mostN).toBe(max(allSpokesN));
  });
});

test.each([
  [[1000, 1040], 'very-even'],
  [[1000, 1190], 'even'],
  [[1000, 1400], 'serviceable'],
  [[600, 1400], 'uneven'],
] as const)('%j is %s', (readingsN, word) => expect(judgeBalance(spreadOf(readingsN))).toBe(word));

test('one reading has no scatter', () => {
  expect(spreadOf([1000])).toMatchObject({ deviationN: null, scatterPercent: null, meanN: 1000 });
});

describe('properties', () => {
  const readings = fc.array(fc.double({ min: 1, max: 3000, noNaN: true }), { minLength: 2, maxLength: 48 });
  test('deviations cancel out, and the order of reading does not matter', () => {
    fc.assert(
      fc.property(readings, (readingsN) => {
        const spread = spreadOf(readingsN);
        expect(spread.awayPercent.reduce((sum, percent) => sum + percent, 0)).toBeCloseTo(0, 6);
        const backward = spreadOf([...readingsN].reverse());
        expect(backward.meanN).toBeCloseTo(spread.meanN, 9);
        expect(backward.deviationN).toBeCloseTo(spread.deviationN!, 6);
      }),
    );
  });
  test('the unit does not matter to the balance', () => {
    fc.assert(
      fc.property(readings, (readingsN) => {
        const inKgf = spreadOf(readingsN.map((n) => n / 9.80665));
        expect(inKgf.scatterPercent).toBeCloseTo(spreadOf(readingsN).scatterPercent!, 8);
      }),
    );
  });
  test('any finite list gets statistics or a named reason, never NaN', () => {
    const anything = fc.array(fc.double({ noDefaultInfinity: true, noNaN: true }), { maxLength: 40 });
    fc.assert(
      fc.property(anything, (readingsN) => {
        const answer = tensionSpread(readingsN);
        if (!answer.ok) return;
        const { awayPercent, ...rest } = answer.spread;
        for (const value of [...awayPercent, ...Object.values(rest)])
          expect(value === null || Number.isFinite(value)).toBe(true);
      }),
    );
  });
});

test.each([
  ['no-readings', []],
  ['negative-reading', [1000, -5]],
  ['not-a-number', [1000, Number.NaN]],
  ['all-slack', [0, 0, 0]],
] as const)('%s: %j', (reason, readingsN) => expect(tensionSpread(readingsN)).toEqual({ ok: false, reason }));

test('a limit that is no number is refused', () =>
  expect(() => countWithin(spreadOf([1000, 1100]), Number.NaN)).toThrow(RangeError));
