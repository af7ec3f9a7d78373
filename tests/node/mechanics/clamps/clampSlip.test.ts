import { describe, expect, test } from 'vitest';
import { exactly } from '../../../../src/mechanics/band.ts';
import { clampPressureMPa, clampTensionN, slipTorqueNm } from '../../../../src/mechanics/clamps/clampSlip.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

const facePlate = { kind: 'two-piece', bolts: 4 } as const;

// Regression rows, computed for this project from the textbook formula.
describe('slip torque by construction (regression)', () => {
  test.each([
    ['face plate, 22.2', facePlate, 22.2, 88.8],
    ['face plate, 25.4', facePlate, 25.4, 101.6],
    ['face plate, 31.8', facePlate, 31.8, 127.2],
    [
      'one slit, stiff, lever 2',
      { kind: 'one-slit-stiff', bolts: 2, tubeArmMm: 20, boltArmMm: 40 },
      28.6,
      114.4,
    ],
  ] as const)('%s', (_, construction, d, nm) => {
    expect(slipTorqueNm(clampTensionN(construction, 5000), 0.2, d).lo).toBeCloseTo(nm, 9);
  });
  test('one slit, flexible: 180 N·m when the band is perfect', () => {
    const tensionN = clampTensionN({ kind: 'one-slit-flexible', bolts: 2 }, 5000);
    expect(slipTorqueNm(tensionN, 0.2, 28.6).hi).toBeCloseTo(179.7, 1);
  });
  test('80 N·m on 25.4 with four bolts and friction 0.20 needs 3937 N a bolt', () => {
    expect(slipTorqueNm(clampTensionN(facePlate, 3937), 0.2, 25.4).lo).toBeCloseTo(80, 2);
  });
});

describe('facts of statics', () => {
  test('the perfect band grips π/2 times as well as two lines, a cosine 4/π times', () => {
    const { lo, mid, hi } = slipTorqueNm(1000, 0.16, 30);
    expect(hi / lo).toBeCloseTo(Math.PI / 2, 12);
    expect(mid / lo).toBeCloseTo(4 / Math.PI, 12);
  });
  test('a lever with equal arms is a two-piece clamp', () => {
    const lever = { kind: 'one-slit-stiff', bolts: 2, tubeArmMm: 20, boltArmMm: 20 } as const;
    expect(clampTensionN(lever, 5000)).toBe(clampTensionN({ kind: 'two-piece', bolts: 2 }, 5000));
  });

  test('a longer clamp presses less', () => {
    expect(clampPressureMPa(20000, 25.4, 60)).toBeLessThan(clampPressureMPa(20000, 25.4, 40));
  });
  test('no grip without friction', () => expect(slipTorqueNm(20000, 0, 25.4)).toEqual(exactly(0)));
});

refusesBadNumbers({ tensionN: 'or-zero', friction: 'or-zero', diameterMm: 'positive' }, (name, value) => {
  const args = { tensionN: 20000, friction: 0.2, diameterMm: 25.4, [name]: value };
  return slipTorqueNm(args.tensionN, args.friction, args.diameterMm);
});
refusesBadNumbers({ boltForceN: 'positive' }, (_, value) => clampTensionN(facePlate, value));
refusesBadNumbers({ tubeArmMm: 'positive', boltArmMm: 'positive' }, (name, value) =>
  clampTensionN({ kind: 'one-slit-stiff', bolts: 2, tubeArmMm: 20, boltArmMm: 40, [name]: value }, 5000),
);
refusesBadNumbers({ lengthMm: 'positive' }, (_, value) => clampPressureMPa(20000, 22.2, value));
test.each([0, 1.5, -2, Number.NaN])('%d bolts are refused', (bolts) => {
  expect(() => clampTensionN({ kind: 'two-piece', bolts }, 5000)).toThrow(/bolts/);
});
