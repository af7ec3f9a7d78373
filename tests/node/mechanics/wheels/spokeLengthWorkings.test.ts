import { describe, expect, test } from 'vitest';
import {
  bracingWorking,
  rimShrinkWorking,
  spokeLengthWorking,
  straightPullWorking,
  stretchWorking,
  tensionRatioWorking,
} from '../../../../src/mechanics/wheels/spokeLengthWorkings.ts';
import type { Working } from '../../../../src/mechanics/working.ts';

const input = (working: Working, name: string): number => {
  const value = working.inputs.find((one) => one.name === name)?.value;
  if (typeof value !== 'number') throw new Error(`${name} is not among the inputs`);
  return value;
};

const side = { erdMm: 384, pcdMm: 45, flangeMm: 34 };
const left = { ...side, spokes: 18, crossingDeg: 60 };
const drive = { ...left, flangeMm: 20 };

describe('following each formula by hand, from the inputs alone, gives the result', () => {
  test('spoke length', () => {
    const working = spokeLengthWorking(side, 60);
    const [R, r, w, alpha, h] = ['R', 'r', 'w', 'α', 'h'].map((name) => input(working, name)) as [
      number,
      number,
      number,
      number,
      number,
    ];
    const byHand = Math.sqrt(R * R + r * r + w * w - 2 * R * r * Math.cos((alpha * Math.PI) / 180)) - h / 2;
    expect(working.result).toBeCloseTo(byHand, 9);
    expect(h).toBeCloseTo(2.6, 9);
  });
  test.each([
    ['rim-side', -1],
    ['far-side', 1],
  ] as const)('straight pull, head on the %s', (head, sign) => {
    const working = straightPullWorking({
      erdMm: 601,
      headCircleMm: 50,
      lineOffsetMm: 21,
      flangeMm: 30,
      head,
    });
    const [R, rs, p, w] = ['R', 'rs', 'p', 'w'].map((name) => input(working, name)) as [
      number,
      number,
      number,
      number,
    ];
    const flat = Math.sqrt(R * R - p * p) + sign * Math.sqrt(rs * rs - p * p);
    expect(working.result).toBeCloseTo(Math.sqrt(flat * flat + w * w), 9);
    expect(working.formula).toContain(sign < 0 ? '−' : '+');
  });
  test('bracing angle', () => {
    const working = bracingWorking(side, 60);
    const byHand = (Math.asin(input(working, 'w') / input(working, 'Lp')) * 180) / Math.PI;
    expect(working.result).toBeCloseTo(byHand, 9);
  });
  test('tension ratio', () => {
    const working = tensionRatioWorking(left, drive);
    const pull = (name: string) =>
      (input(working, `n ${name}`) * input(working, `w ${name}`)) / input(working, `Lp ${name}`);
    expect(working.result).toBeCloseTo(pull('drive') / pull('left'), 9);
  });
  test('stretch', () => {
    const working = stretchWorking(1000, [{ lengthMm: 184, diameterMm: 2 }]);
    expect(working.result).toBeCloseTo(
      (input(working, 'T') * input(working, 'L')) / input(working, 'E·A'),
      9,
    );
  });
  test('rim', () => {
    const working = rimShrinkWorking(36, 1000, { radiusMm: 304, areaMm2: 104, rimGPa: 69 });
    const around = 2 * Math.PI * input(working, 'E') * 1000 * input(working, 'A');
    expect(working.result).toBeCloseTo(
      (input(working, 'R') * input(working, 'N') * input(working, 'T')) / around,
      9,
    );
  });
});
