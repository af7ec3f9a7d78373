import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { handbookAxleMm, handbookPitches } from '../../../../src/mechanics/drive/chainHandbook.ts';
import { axleFromPitches } from '../../../../src/mechanics/drive/chainLength.ts';

test('65 × 17 at 30 pitches: 102.945 pitches, machine-design textbook example (printed 102.9)', () =>
  expect(handbookPitches({ ringTeeth: 65, sprocketTeeth: 17 }, 381)).toBeCloseTo(102.945, 3));
test('65 × 17 with 104 pitches: 387.917 mm', () =>
  expect(handbookAxleMm({ ringTeeth: 65, sprocketTeeth: 17 }, 104)).toBeCloseTo(387.917, 3));

// [computed] regression rows.
test.each([
  [80, 343.452],
  [86, 381.816],
  [99, 464.787],
])('36 × 15 with %s pitches: %s mm', (pitches, axleMm) =>
  expect(handbookAxleMm({ ringTeeth: 36, sprocketTeeth: 15 }, pitches)).toBeCloseTo(axleMm, 3),
);

const drive = fc.record({
  ringTeeth: fc.integer({ min: 22, max: 52 }),
  sprocketTeeth: fc.integer({ min: 9, max: 22 }),
});
const atMm = fc.double({ min: 330, max: 480, noNaN: true });

describe('properties', () => {
  test('both directions undo each other', () => {
    fc.assert(
      fc.property(drive, atMm, (d, mm) => {
        expect(handbookAxleMm(d, handbookPitches(d, mm))).toBeCloseTo(mm, 8);
      }),
    );
  });
  test('on bicycle drives it agrees with the polygon within 0.1 mm', () => {
    fc.assert(
      fc.property(drive, atMm, (d, mm) => {
        const pitches = Math.round(handbookPitches(d, mm));
        expect(Math.abs(handbookAxleMm(d, pitches) - axleFromPitches(d, pitches))).toBeLessThan(0.1);
      }),
    );
  });
});

test.each([
  ['no distance', () => handbookPitches({ ringTeeth: 36, sprocketTeeth: 15 }, 0)],
  ['a chain shorter than the wraps', () => handbookAxleMm({ ringTeeth: 36, sprocketTeeth: 15 }, 20)],
  ['wheels too unlike for so short a chain', () => handbookAxleMm({ ringTeeth: 120, sprocketTeeth: 6 }, 64)],
])('%s is refused', (_, call) => expect(call).toThrow(RangeError));
