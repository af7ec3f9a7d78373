import { describe, expect, test } from 'vitest';
import { exactly } from '../../../../src/mechanics/band.ts';
import { type ClampLever, clampLevers, clampMargin } from '../../../../src/mechanics/clamps/clampMargin.ts';
import { shimChain } from '../../../../src/mechanics/clamps/clampShim.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

const plain = { appliedNm: 4, markedNm: 5, friction: 0.16, tubeMm: 31.8, clampMm: 31.8 };
const gainOf = (joint: Parameters<typeof clampLevers>[0], lever: ClampLever) =>
  clampLevers(joint).find((effect) => effect.lever === lever)?.gain;

test('examples', () => {
  expect(clampMargin({ lo: 71, mid: 129, hi: 208 }, 60).verdict).toBe('holds');
  expect(clampLevers(plain)[0]).toEqual({ lever: 'bring-to-the-marked-torque', gain: 0.25 });
});

test.each([
  [71, 208, 60, 'holds'],
  [60, 208, 60, 'holds'],
  [50, 208, 60, 'in-doubt'],
  [50, 60, 60, 'in-doubt'],
  [10, 59, 60, 'slips'],
] as const)('%d to %d N·m against %d N·m %s', (lo, hi, demandNm, verdict) => {
  expect(clampMargin({ lo, mid: (lo + hi) / 2, hi }, demandNm).verdict).toBe(verdict);
});

describe('levers', () => {
  test('at the mark, clean and in its own clamp nothing is left but what does not help', () => {
    expect(clampLevers({ ...plain, appliedNm: 5 })).toEqual([
      { lever: 'longer-clamp', gain: 0 },
      { lever: 'more-torque-than-marked', gain: 'not-to-be-done' },
    ]);
  });
  test('more torque than marked is never offered with a figure', () => {
    expect(gainOf({ ...plain, appliedNm: 9 }, 'bring-to-the-marked-torque')).toBeUndefined();
    expect(gainOf(plain, 'more-torque-than-marked')).toBe('not-to-be-done');
  });
  test('cleaning, paste and a lower bar gain what the formula says', () => {
    const joint = {
      ...plain,
      friction: 0.1,
      cleanFriction: 0.16,
      pasteFriction: 0.25,
      momentArmMm: 250,
      lowerArmMm: 200,
    };
    expect(gainOf(joint, 'clean-off-grease')).toBeCloseTo(0.6, 9);
    expect(gainOf(joint, 'grit-paste')).toBeCloseTo(1.5, 9);
    expect(gainOf(joint, 'lower-the-rise')).toBeCloseTo(0.25, 9);
  });
  test('a shimmed 22.2 bar in a 25.4 clamp gains 14.4 % from a bar of the right size', () => {
    const joint = { ...plain, tubeMm: 22.2, clampMm: 25.4 };
    const gain = gainOf(joint, 'part-of-the-clamps-own-diameter');
    const shimmed = shimChain(
      [
        { name: 'bar', diameterMm: 22.2, friction: 0.16 },
        { name: 'clamp', diameterMm: 25.4, friction: 0.16 },
      ],
      1000,
    ).slipNm.lo;
    const native = shimChain([{ name: 'clamp', diameterMm: 25.4, friction: 0.16 }], 1000).slipNm.lo;
    expect(gain).toBeCloseTo(native / shimmed - 1, 9);
  });
  test('a closed shim that lets a quarter through gains threefold when slit, and from nothing when it lets nothing through', () => {
    expect(gainOf({ ...plain, throughClosedShim: 0.25 }, 'slit-the-shim')).toBe(3);
    expect(clampLevers({ ...plain, throughClosedShim: 0 })[0]).toEqual({
      lever: 'slit-the-shim',
      gain: 'from-nothing',
    });
  });
  test('the strongest comes first', () => {
    const gains = clampLevers({ ...plain, friction: 0.1, cleanFriction: 0.16, tubeMm: 25.4 })
      .map((effect) => effect.gain)
      .filter((gain) => typeof gain === 'number');
    expect(gains).toEqual([...gains].sort((a, b) => b - a));
  });
});

refusesBadNumbers({ demandNm: 'positive' }, (_, value) => clampMargin(exactly(60), value));
refusesBadNumbers(
  { appliedNm: 'positive', friction: 'positive', tubeMm: 'positive', clampMm: 'positive' },
  (name, value) => clampLevers({ ...plain, [name]: value }),
);
