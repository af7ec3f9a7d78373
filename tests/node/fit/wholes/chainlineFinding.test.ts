import { expect, test } from 'vitest';
import { checkPile } from '../../../../src/fit/checkPile.ts';
import { chainlineOf } from '../../../../src/fit/wholes/chainlineFinding.ts';
import { face, named, part } from '../../../fixtures/pileParts.ts';

const bike = (chainlineMm: number | undefined, slotMm?: readonly [number, number]) => [
  part('cranks', 'cranks', [
    named('spider', '104/4', chainlineMm === undefined ? {} : { nominal: { chainlineMm } }),
  ]),
  part('hub', 'rear-hub', [
    face('hub-spacing', { spacingMm: 135 }),
    named('driver-mount', '1.375x24', { nominal: { toothCentreMm: 16.5 } }),
  ]),
  part('frame', 'frame', [
    face('axle-slot', { widthMm: 10, ...(slotMm ? { nearestMm: slotMm[0], farthestMm: slotMm[1] } : {}) }),
  ]),
];

test('a 135 mm hub with its teeth 16.5 inside the end runs at 51 (worked example of a cycling forum)', () => {
  expect(chainlineOf(bike(42))).toEqual({
    ...{ frontMm: 42, rearMm: 51, offsetMm: -9, judgement: 'too-far', angleDeg: null },
  });
});

// atan(3/400) = 0.4297 degrees, right triangle.
test('the angle is taken with the axle in the middle of its slot', () => {
  expect(chainlineOf(bike(54, [390, 410]))?.angleDeg).toBeCloseTo(0.4297, 3);
});

test('without a figure there is no line, and the finding says what one meets', () => {
  expect(chainlineOf(bike(undefined))).toBeUndefined();
  const [open] = checkPile(bike(undefined)).toMeasure.filter(({ topic }) => topic === 'chainline');
  expect(open?.asks.map(({ key }) => key)).toEqual(['chainlineMm']);
  expect(open?.notes[0]).toContain('track 42');
});
