import { expect, test } from 'vitest';
import type { Face } from '../../../../src/fit/faces/face.ts';
import type { PartRow } from '../../../../src/journal/rows.ts';
import { wheelDoubts } from '../../../../src/practice/wheel/wheelDoubts.ts';
import { figuresOfWheel } from '../../../../src/practice/wheel/wheelFigures.ts';
import { dishedRear, mm, sideOf } from '../../../fixtures/wheels/someWheels.ts';

const partOf = (kind: Face['kind'], nominal: Record<string, number>): PartRow =>
  ({ faces: [{ faceId: 'f', kind, standard: null, nominal, measured: {} }] }) as unknown as PartRow;

const doubtsOf = (wheel: typeof dishedRear, ...parts: PartRow[]) => {
  const answer = figuresOfWheel(wheel);
  if (answer.is !== 'known') throw new Error(answer.is);
  return wheelDoubts(answer.figures, parts).map(({ doubt }) => doubt);
};

// The handbook's list of traps: what is easily typed in the wrong place.
test('the example: the bead seat of 406 typed as rim diameter', () =>
  expect(doubtsOf({ ...dishedRear, erds: [mm(406)] }, partOf('rim-seat', { beadSeatMm: 406 }))).toEqual([
    'erd-is-bead-seat',
  ]));

test('half the hub width, or the whole spacing of the flanges, typed as one flange', () => {
  const hub = partOf('hub-spacing', { spacingMm: 110 });
  const wide = (mm: number) => ({ ...dishedRear, leftSide: sideOf(18, 3, 45, mm) });
  expect(doubtsOf(wide(55), hub)).toEqual(['flange-is-half-width']);
  expect(doubtsOf(wide(54), hub)).toEqual(['flange-is-half-width']);
});

test('a true wheel raises no doubt', () =>
  expect(
    doubtsOf(
      dishedRear,
      partOf('rim-seat', { beadSeatMm: 406 }),
      partOf('hub-spacing', { spacingMm: 135 }),
      partOf('rim-holes', { holesCount: 36 }),
    ),
  ).toEqual([]));

test('rim diameters more than a millimetre apart, and holes that were counted otherwise', () => {
  expect(doubtsOf({ ...dishedRear, erds: [mm(384), mm(385.4)] })).toEqual(['erd-uneven']);
  expect(doubtsOf(dishedRear, partOf('rim-holes', { holesCount: 32 }))).toEqual(['holes-miscounted']);
});
