import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crossingAngleDeg, pairedCrossingAnglesDeg } from '../../../../src/mechanics/wheels/lacing.ts';
import {
  spokeLengthMm,
  spokeLengthSensitivity,
  spokeSpanMm,
} from '../../../../src/mechanics/wheels/spokeLength.ts';

// [computed] regression rows, invented but ordinary wheels; the published ones stand in tests/fixtures/outside/spokes.ts.
test.each([
  ['20-inch rear, left', 384, 45, 34, 3, 18, 183.649],
  ['20-inch rear, drive', 384, 45, 20, 3, 18, 181.594],
  ['20-inch front', 390, 38, 30, 3, 18, 187.329],
  ['29-inch rear disc, left', 601, 58, 35, 3, 16, 291.44],
  ['29-inch rear disc, drive', 601, 58, 21, 3, 16, 290.097],
  ['29-inch front disc, smaller flange', 601, 45, 36, 3, 16, 293.535],
  ['700C front, radial', 602, 39, 36, 0, 16, 282.493],
  ['26-inch, large flange', 540, 90, 28, 2, 16, 240.622],
  ['700C rear, 28 holes', 595, 45, 37, 2, 14, 285.117],
  ['700C rear, four crosses', 605, 45, 35, 4, 18, 300.153],
  ['small front, one cross', 380, 30, 28, 1, 10, 178.971],
])('%s: rim %s, circle %s, flange %s mm, %s crosses of %s', (_, erdMm, pcdMm, flangeMm, crosses, holes, mm) =>
  expect(spokeLengthMm({ erdMm, pcdMm, flangeMm }, crossingAngleDeg(crosses, holes))).toBeCloseTo(mm, 3),
);

test('paired holes, two crosses of 12 with pairs 15° apart: both phasings', () => {
  const side = { erdMm: 600, pcdMm: 45, flangeMm: 35 };
  const angles = pairedCrossingAnglesDeg(2, 12, 15);
  expect(spokeLengthMm(side, angles.wideDeg)).toBeCloseTo(292.919, 3);
  expect(spokeLengthMm(side, angles.narrowDeg)).toBeCloseTo(287.686, 3);
});

test('two to one, 24 spokes: 16 at two crosses with pairs one rim hole apart, 8 radial', () => {
  const angles = pairedCrossingAnglesDeg(2, 16, 15);
  const many = { erdMm: 595, pcdMm: 45, flangeMm: 18 };
  expect(spokeLengthMm(many, angles.wideDeg)).toBeCloseTo(282.442, 3);
  expect(spokeLengthMm(many, angles.narrowDeg)).toBeCloseTo(280.251, 3);
  expect(spokeLengthMm({ ...many, flangeMm: 37 }, 0)).toBeCloseTo(276.178, 3);
});

/** Known slips at the bench, each of which would pass unnoticed in a list of lengths (common practice, no source). */
test.each([
  ['all holes of the wheel taken for those of the flange', 174.892],
  ['hole circle taken for its radius', 175.915],
  ['bead seat of 406 taken for the effective diameter', 194.413],
  ['half hole forgotten', 184.949],
  ['degrees given to a cosine of radians', 214.929],
])('%s would give %s mm; ours is not that', (_, wrongMm) =>
  expect(Math.abs(spokeLengthMm({ erdMm: 384, pcdMm: 45, flangeMm: 34 }, 60) - wrongMm)).toBeGreaterThan(1),
);

const side = fc.record({
  erdMm: fc.double({ min: 300, max: 640, noNaN: true }),
  pcdMm: fc.double({ min: 20, max: 150, noNaN: true }),
  flangeMm: fc.double({ min: -10, max: 60, noNaN: true }),
});
const angle = fc.double({ min: 0, max: 120, noNaN: true });
const turn = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });

describe('properties', () => {
  test('two points in space, the wheel turned anyhow, are as far apart as the formula says', () => {
    fc.assert(
      fc.property(side, angle, turn, (wheel, degrees, phase) => {
        const alpha = (degrees * Math.PI) / 180;
        const rim = [Math.cos(phase), Math.sin(phase), 0].map((part) => (part * wheel.erdMm) / 2);
        const hub = [Math.cos(phase + alpha), Math.sin(phase + alpha)].map(
          (part) => (part * wheel.pcdMm) / 2,
        );
        const apart = Math.hypot(rim[0]! - hub[0]!, rim[1]! - hub[1]!, wheel.flangeMm);
        expect(spokeSpanMm(wheel, degrees)).toBeCloseTo(apart, 9);
      }),
    );
  });
  test('a wider crossing, a larger rim and a further flange all want a longer spoke', () => {
    fc.assert(
      fc.property(side, fc.double({ min: 0, max: 110, noNaN: true }), (wheel, degrees) => {
        const mm = spokeLengthMm(wheel, degrees);
        expect(spokeLengthMm(wheel, degrees + 1)).toBeGreaterThan(mm);
        expect(spokeLengthMm({ ...wheel, erdMm: wheel.erdMm + 1 }, degrees)).toBeGreaterThan(mm);
        const flangeMm = Math.abs(wheel.flangeMm);
        expect(spokeLengthMm({ ...wheel, flangeMm: flangeMm + 1 }, degrees)).toBeGreaterThan(mm);
      }),
    );
  });
  test('sensitivities are the slopes found by moving each measure a little', () => {
    fc.assert(
      fc.property(side, angle, (wheel, degrees) => {
        const slope = (key: 'erdMm' | 'pcdMm' | 'flangeMm') =>
          (spokeLengthMm({ ...wheel, [key]: wheel[key] + 1e-4 }, degrees) -
            spokeLengthMm({ ...wheel, [key]: wheel[key] - 1e-4 }, degrees)) /
          2e-4;
        const sensitivity = spokeLengthSensitivity(wheel, degrees);
        expect(sensitivity.perErd).toBeCloseTo(slope('erdMm'), 5);
        expect(sensitivity.perPcd).toBeCloseTo(slope('pcdMm'), 5);
        expect(sensitivity.perFlange).toBeCloseTo(slope('flangeMm'), 5);
      }),
    );
  });
});

const wheel = { erdMm: 584, pcdMm: 45, flangeMm: 34 };
test.each([
  ['no rim', () => spokeLengthMm({ ...wheel, erdMm: 0 }, 60)],
  ['a hub larger than the rim', () => spokeLengthMm({ ...wheel, pcdMm: 600 }, 60)],
  ['a flange that was not measured', () => spokeLengthMm({ ...wheel, flangeMm: Number.NaN }, 60)],
  ['half a turn and more', () => spokeLengthMm(wheel, 200)],
  ['a hole of no size', () => spokeLengthMm({ ...wheel, hubHoleMm: 0 }, 60)],
])('%s is refused', (_, call) => expect(call).toThrow(RangeError));
