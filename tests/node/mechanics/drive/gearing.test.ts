import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cadenceRpm,
  developmentM,
  gainRatio,
  gearInches,
  gearRatio,
  speedKmh,
} from '../../../../src/mechanics/drive/gearing.ts';

// [computed] regression rows; the published values stand in tests/fixtures/outside/gearing.ts.
describe.each([
  [36, 15, 660, 170, 2.4, 62.36, 4.976, 4.659, 26.87],
  [36, 15, 584, 170, 2.4, 55.18, 4.403, 4.122, 23.78],
  [25, 9, 508, 175, 2.7778, 55.56, 4.433, 4.032, 23.94],
])(
  '%s/%s, wheel %s mm, crank %s mm',
  (ring, sprocket, wheelMm, crankMm, ratio, inches, metres, gain, kmh) => {
    const ours = gearRatio(ring, sprocket);
    test('ratio', () => expect(ours).toBeCloseTo(ratio, 4));
    test('gear inches', () => expect(gearInches(ours, wheelMm)).toBeCloseTo(inches, 2));
    test('development', () => expect(developmentM(ours, wheelMm)).toBeCloseTo(metres, 3));
    test('gain', () => expect(gainRatio(ours, wheelMm, crankMm)).toBeCloseTo(gain, 3));
    test('speed at 90 a minute', () => expect(speedKmh(developmentM(ours, wheelMm), 90)).toBeCloseTo(kmh, 2));
  },
);

test('2 m at 50 a minute is 6 km/h, and back', () => {
  expect(speedKmh(2, 50)).toBeCloseTo(6, 12);
  expect(cadenceRpm(2, 6)).toBeCloseTo(50, 12);
});

const teeth = fc.integer({ min: 6, max: 120 });
const wheelMm = fc.double({ min: 80, max: 2000, noNaN: true });

describe('properties', () => {
  test('cadence undoes speed', () => {
    const metres = fc.double({ min: 0.05, max: 30, noNaN: true });
    fc.assert(
      fc.property(metres, fc.double({ min: 0, max: 100, noNaN: true }), (m, rpm) => {
        expect(cadenceRpm(m, speedKmh(m, rpm))).toBeCloseTo(rpm, 8);
      }),
    );
  });
  test('gear inches roll one development a turn: in × 25.4 × π = m × 1000', () => {
    fc.assert(
      fc.property(teeth, teeth, wheelMm, (ring, sprocket, mm) => {
        const ratio = gearRatio(ring, sprocket);
        expect((gearInches(ratio, mm) * 25.4 * Math.PI) / 1000).toBeCloseTo(developmentM(ratio, mm), 9);
      }),
    );
  });
  test('gain ratio is the way of the road over the way of the pedal', () => {
    fc.assert(
      fc.property(teeth, teeth, wheelMm, (ring, sprocket, mm) => {
        const ratio = gearRatio(ring, sprocket);
        const pedalM = (2 * Math.PI * 170) / 1000;
        expect(gainRatio(ratio, mm, 170)).toBeCloseTo(developmentM(ratio, mm) / pedalM, 9);
      }),
    );
  });
  test('a larger ring goes further, a larger sprocket less far', () => {
    const fewer = fc.integer({ min: 6, max: 119 });
    fc.assert(
      fc.property(fewer, teeth, (less, other) => {
        expect(gearRatio(less + 1, other)).toBeGreaterThan(gearRatio(less, other));
        expect(gearRatio(other, less + 1)).toBeLessThan(gearRatio(other, less));
      }),
    );
  });
});

describe('programmer errors', () => {
  test.each([
    ['half a tooth', () => gearRatio(36.5, 15)],
    ['no teeth', () => gearRatio(36, 0)],
    ['no wheel', () => gearInches(2.4, Number.NaN)],
    ['an endless wheel', () => developmentM(2.4, Number.POSITIVE_INFINITY)],
    ['no crank', () => gainRatio(2.4, 660, 0)],
    ['pedalling backwards', () => speedKmh(5, -90)],
    ['cadence of a gear of nothing', () => cadenceRpm(0, 20)],
  ])('%s', (_, call) => expect(call).toThrow(RangeError));
});
