import { describe, expect, test } from 'vitest';
import { wheelDiameterMm } from '../../../../src/mechanics/drive/gearingWheel.ts';

describe('designation, rule of ISO 5775-1 (public copy)', () => {
  test.each([
    [32, 597, 661],
    [23, 622, 673],
    [50, 406, 506],
    [47, 584, 678],
  ])('%s-%s is %s mm over all', (widthMm, beadSeatMm, expected) =>
    expect(wheelDiameterMm({ known: 'designation', widthMm, beadSeatMm })).toBe(expected),
  );
});

test('a rollout is a circumference, over one turn or several', () => {
  expect(wheelDiameterMm({ known: 'rollout', rolloutMm: 2000 * Math.PI })).toBeCloseTo(2000, 9);
  expect(wheelDiameterMm({ known: 'rollout', rolloutMm: 6480, turns: 3 })).toBeCloseTo(2160 / Math.PI, 9);
});

test('a measured diameter stands as it is', () =>
  expect(wheelDiameterMm({ known: 'diameter', diameterMm: 660 })).toBe(660));

test.each([
  ['no rollout', { known: 'rollout', rolloutMm: 0 }],
  ['no turn', { known: 'rollout', rolloutMm: 2000, turns: 0 }],
  ['a wheel of no size', { known: 'diameter', diameterMm: Number.NaN }],
  ['inches for millimetres', { known: 'designation', widthMm: 1.75, beadSeatMm: 406 }],
] as const)('%s is refused', (_, size) => expect(() => wheelDiameterMm(size)).toThrow(RangeError));
