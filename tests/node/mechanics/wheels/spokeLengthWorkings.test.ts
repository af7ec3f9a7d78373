import { describe, expect, test } from 'vitest';
import { bracingWorking, spokeLengthWorking } from '../../../../src/mechanics/wheels/spokeLengthWorkings.ts';
import type { Working } from '../../../../src/mechanics/working.ts';

const input = (working: Working, name: string): number => {
  const value = working.inputs.find((one) => one.name === name)?.value;
  if (typeof value !== 'number') throw new Error(`${name} is not among the inputs`);
  return value;
};

const side = { erdMm: 384, pcdMm: 45, flangeMm: 34 };

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
  test('bracing angle', () => {
    const working = bracingWorking(side, 60);
    const byHand = (Math.asin(input(working, 'w') / input(working, 'Lp')) * 180) / Math.PI;
    expect(working.result).toBeCloseTo(byHand, 9);
  });
});
