import { expect, test } from 'vitest';
import { magpiePile } from '../../../../src/demo/magpiePile.ts';
import { filled } from '../../../../src/drawing/bike/figures.ts';
import { figuresOf } from '../../../../src/drawing/bike/figuresOf.ts';

test('example of the docstring: a marking in a name is read', () => {
  const tyre = { partId: 't', kind: 'tyre', name: 'Front tyre, 50-406', faces: [] } as const;
  expect(figuresOf([tyre]).frontWheelMm).toBe(506);
  expect(figuresOf([tyre]).rearWheelMm).toBeUndefined();
});

test('wheels take after each other where one is not known', () => {
  expect(filled({ rearWheelMm: 500 }).of.frontWheelMm).toBe(500);
});

test('the figures of the demo bike are its own', () => {
  expect(figuresOf(magpiePile)).toEqual({
    // 584 and twice 47.
    frontWheelMm: 678,
    rearWheelMm: 678,
    frontTyreMm: 47,
    rearTyreMm: 47,
    toFrontAxleMm: 592,
    // The middle of the slot, 398 to 420.
    toRearAxleMm: 409,
    seatTubeMm: 540,
    postOutMm: 140,
    crankMm: 165,
    ringTeeth: 36,
    sprocketTeeth: 15,
    bar: 'swept',
    frontRotorMm: 180,
  });
});
