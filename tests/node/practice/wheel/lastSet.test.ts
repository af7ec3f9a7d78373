import { expect, test } from 'vitest';
import type { WheelRow } from '../../../../src/journal/rows.ts';
import { lastSet } from '../../../../src/practice/wheel/lastSet.ts';
import { dishedRear, sideOf } from '../../../fixtures/wheels/someWheels.ts';

const setOf = (entryId: string, spokes: number): WheelRow['readings'][number] => {
  const tensionsN = Array.from({ length: spokes }, () => 800);
  return { entryId, atMs: 0, moment: 'before', tyre: 'off', readIn: 'N', read: tensionsN, tensionsN };
};

test('the example: of two sets the later one', () =>
  expect(lastSet({ ...dishedRear, readings: [setOf('one', 36), setOf('two', 36)] })?.entryId).toBe('two'));

test('a set read before the wheel got another number of spokes is none of this wheel', () => {
  const relaced = { ...dishedRear, leftSide: sideOf(16, 3, 45, 34), driveSide: sideOf(16, 3, 45, 20) };
  expect(lastSet({ ...relaced, readings: [setOf('of 36', 36)] })).toBeUndefined();
  expect(lastSet({ ...relaced, readings: [setOf('of 32', 32), setOf('of 36', 36)] })?.entryId).toBe('of 32');
});

test('a wheel that was not read has none', () =>
  expect(lastSet({ ...dishedRear, readings: [] })).toBeUndefined());
