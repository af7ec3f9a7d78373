import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { axleFromPitches } from '../../../../src/mechanics/drive/chainLength.ts';
import { axleMoves } from '../../../../src/mechanics/drive/chainMoves.ts';

// [computed] regression rows, 36 × 15 with 86 pitches.
test.each([
  ['linkPairMore', 12.78],
  ['ringToothMore', -3.43],
  ['ringToothLess', 3.41],
  ['sprocketToothMore', -2.97],
  ['sprocketToothLess', 2.96],
  ['halfLinkMore', 6.39],
] as const)('%s moves the axle %s mm', (change, mm) =>
  expect(axleMoves({ ringTeeth: 36, sprocketTeeth: 15 }, 86)[change]).toBeCloseTo(mm, 2),
);

test('a change that leaves the range of teeth or chains cannot be made', () => {
  expect(axleMoves({ ringTeeth: 120, sprocketTeeth: 15 }, 140).ringToothMore).toBeNull();
  expect(axleMoves({ ringTeeth: 36, sprocketTeeth: 6 }, 80).sprocketToothLess).toBeNull();
  expect(axleMoves({ ringTeeth: 36, sprocketTeeth: 15 }, 44).halfLinkLess).toBeNull();
  expect(axleMoves({ ringTeeth: 36, sprocketTeeth: 15 }, 340).linkPairMore).toBeNull();
});

describe('properties', () => {
  const ring = fc.integer({ min: 22, max: 60 });
  const sprocket = fc.integer({ min: 8, max: 24 });
  const pitches = fc.integer({ min: 80, max: 130 });
  test('more chain goes back, more teeth come forward, by believable amounts', () => {
    fc.assert(
      fc.property(ring, sprocket, pitches, (ringTeeth, sprocketTeeth, n) => {
        const moves = axleMoves({ ringTeeth, sprocketTeeth }, n);
        expect(moves.linkPairMore).toBeGreaterThan(12.7 - 1e-9);
        expect(moves.linkPairLess).toBeLessThan(-12.7 + 1e-9);
        expect(moves.halfLinkMore).toBeGreaterThan(6.35 - 1e-9);
        for (const tooth of [moves.ringToothMore, moves.sprocketToothMore]) {
          expect(tooth).toBeLessThan(-1.5);
          expect(tooth).toBeGreaterThan(-5);
        }
      }),
    );
  });
  test('putting a tooth on and taking it off again leads back', () => {
    fc.assert(
      fc.property(ring, sprocket, pitches, (ringTeeth, sprocketTeeth, n) => {
        const there = axleMoves({ ringTeeth, sprocketTeeth }, n).ringToothMore!;
        const back = axleMoves({ ringTeeth: ringTeeth + 1, sprocketTeeth }, n).ringToothLess!;
        expect(there + back).toBeCloseTo(0, 6);
      }),
    );
  });
  test('every move lands where a fresh computation lands', () => {
    fc.assert(
      fc.property(ring, sprocket, pitches, (ringTeeth, sprocketTeeth, n) => {
        const landed =
          axleFromPitches({ ringTeeth, sprocketTeeth }, n) +
          axleMoves({ ringTeeth, sprocketTeeth }, n).linkPairMore!;
        expect(landed).toBeCloseTo(axleFromPitches({ ringTeeth, sprocketTeeth }, n + 2), 8);
      }),
    );
  });
});

test('a chain that does not close on the drive is refused', () =>
  expect(() => axleMoves({ ringTeeth: 36, sprocketTeeth: 15 }, 30)).toThrow(RangeError));
