import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AxlePositions, type AxleSlot, axlePositions } from '../../../../src/fit/wholes/axlePosition.ts';
import { closestAxleMm } from '../../../../src/mechanics/drive/chainDrive.ts';
import { chainPitches } from '../../../../src/mechanics/drive/chainLength.ts';
import { rigidAxlePositionsMm } from '../../../fixtures/rigidChain.ts';

function positions(...asked: Parameters<typeof axlePositions>): AxlePositions {
  const answer = axlePositions(...asked);
  if (!answer.ok) throw new Error(answer.reason);
  return answer;
}
const lengths = (found: AxlePositions) => found.stops.map((stop) => stop.pitches);

/** Every number anywhere in an answer. */
const numbersIn = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : value !== null && typeof value === 'object'
      ? Object.values(value).flatMap(numbersIn)
      : [];

const slot: AxleSlot = { frontMm: 383, rearMm: 396 };

describe('36 × 15, a slot from 383 to 396 mm (invented)', () => {
  test('with half-links: 87 and 88', () =>
    expect(lengths(positions(slot, 36, 15, { halfLink: true }))).toEqual([87, 88]));
  test('with an ordinary chain: 88 only', () => expect(lengths(positions(slot, 36, 15))).toEqual([88]));
  test('2 mm filed off the front win 86', () => {
    const filed = positions(slot, 36, 15, { halfLink: true, fileFrontMm: 2 });
    expect(filed.stops.map((stop) => [stop.pitches, stop.kind, stop.needsFiling])).toEqual([
      [86, 'even', true],
      [87, 'half-link', false],
      [88, 'even', false],
    ]);
    expect(filed.filedFrontMm).toBe(381);
    expect(filed.frontMm).toBe(383);
  });
  test('before filing it says how much is missing', () => {
    const found = positions(slot, 36, 15);
    expect(found.beyondFront).toMatchObject({ pitches: 86, kind: 'even' });
    expect(found.beyondFront?.missingMm).toBeCloseTo(1.187, 3);
    expect(found.beyondRear).toMatchObject({ pitches: 90 });
    expect(found.beyondRear?.missingMm).toBeCloseTo(11.362, 3);
  });
  test('room to both ends adds up to the slot', () => {
    const [stop] = positions(slot, 36, 15).stops;
    expect(stop!.toFrontMm).toBeCloseTo(11.59, 2);
    expect(stop!.toFrontMm + stop!.toRearMm).toBeCloseTo(13, 9);
  });
  test('88 pitches stand 1.4 mm from the rear end: half a percent of wear already outgrows the slot', () => {
    const at = (wearPercent: number) => positions(slot, 36, 15, { wearPercent }).stops[0]!;
    expect(at(0.1).outgrows).toBe('no');
    expect(at(0.3).outgrows).toBe('perhaps');
    expect(at(0.5).outgrows).toBe('yes');
    expect(at(0.5).wearToRearPercent.lo).toBeCloseTo(0.251, 3);
    expect(at(0.5).wearToRearPercent.hi).toBeCloseTo(0.357, 3);
  });
});

test('the demo track frame, 398 to 420 mm, takes 90 pitches; 92 would want a tenth of a millimetre more', () => {
  const found = positions({ frontMm: 398, rearMm: 420 }, 36, 15);
  expect(lengths(found)).toEqual([90]);
  expect(found.beyondRear?.missingMm).toBeCloseTo(0.129, 3);
  expect(lengths(positions({ frontMm: 398, rearMm: 420 }, 36, 15, { halfLink: true }))).toEqual([89, 90, 91]);
});

test('a stop right at the front end has no room for slack', () => {
  const [tight] = positions({ frontMm: 381.8, rearMm: 390 }, 36, 15).stops;
  expect(tight?.pitches).toBe(86);
  expect(tight?.slackFits).toBe(false);
  expect(positions({ frontMm: 381.6, rearMm: 390 }, 36, 15).stops[0]?.slackFits).toBe(true);
});

test('a closed end takes no length at all, and says what comes near', () => {
  const found = positions({ frontMm: 385, rearMm: 385 }, 36, 15);
  expect(found.stops).toEqual([]);
  expect(found.moves).toBeNull();
  expect(found.beyondFront?.pitches).toBe(86);
  expect(found.beyondRear?.pitches).toBe(88);
});

test('every stop is where rigid links on toothed wheels put it (tests/fixtures/rigidChain.ts)', () => {
  for (const stop of positions({ frontMm: 398, rearMm: 420 }, 36, 15, { halfLink: true }).stops) {
    const seats = rigidAxlePositionsMm(36, 15, stop.pitches, 4);
    const mean = seats.reduce((sum, mm) => sum + mm, 0) / seats.length;
    expect(Math.abs(stop.tautMm - mean)).toBeLessThan(0.005);
  }
});

const teeth = fc.record({
  ring: fc.integer({ min: 22, max: 56 }),
  sprocket: fc.integer({ min: 8, max: 24 }),
});
const travel = fc.record({
  frontMm: fc.double({ min: 330, max: 450, noNaN: true }),
  longMm: fc.double({ min: 0, max: 60, noNaN: true }),
});

describe('properties', () => {
  test('no whole length is missed: counting lengths by trying each gives the same list', () => {
    fc.assert(
      fc.property(teeth, travel, fc.boolean(), ({ ring, sprocket }, { frontMm, longMm }, halfLink) => {
        const rearMm = frontMm + longMm;
        const drive = { ringTeeth: ring, sprocketTeeth: sprocket };
        const [from, to] = [chainPitches(drive, frontMm), chainPitches(drive, rearMm)];
        const tried = Array.from({ length: 300 }, (_, n) => n).filter(
          (n) => n >= from && n <= to && (halfLink || n % 2 === 0),
        );
        expect(lengths(positions({ frontMm, rearMm }, ring, sprocket, { halfLink }))).toEqual(tried);
      }),
    );
  });
  test('common practice, no source: 13 mm of travel always take an even chain, 6.5 mm one with a half-link', () => {
    fc.assert(
      fc.property(teeth, travel, ({ ring, sprocket }, { frontMm }) => {
        const even = positions({ frontMm, rearMm: frontMm + 13.1 }, ring, sprocket);
        expect(even.stops.length).toBeGreaterThanOrEqual(1);
        const half = positions({ frontMm, rearMm: frontMm + 6.6 }, ring, sprocket, { halfLink: true });
        expect(half.stops.length).toBeGreaterThanOrEqual(1);
      }),
    );
  });
  test('every stop lies in the slot, in order, and every near miss outside, with finite figures', () => {
    fc.assert(
      fc.property(
        teeth,
        travel,
        fc.double({ min: 0, max: 10, noNaN: true }),
        ({ ring, sprocket }, { frontMm, longMm }, fileFrontMm) => {
          const found = positions({ frontMm, rearMm: frontMm + longMm }, ring, sprocket, {
            halfLink: true,
            fileFrontMm,
          });
          let lastMm = 0;
          for (const stop of found.stops) {
            expect(stop.tautMm).toBeGreaterThan(lastMm);
            expect(stop.toFrontMm).toBeGreaterThanOrEqual(-1e-6);
            expect(stop.toRearMm).toBeGreaterThanOrEqual(-1e-6);
            expect(stop.wornMm.lo).toBeGreaterThan(stop.tautMm);
            lastMm = stop.tautMm;
          }
          expect(found.beyondFront?.missingMm).toBeGreaterThan(-1e-6);
          expect(found.beyondRear?.missingMm).toBeGreaterThan(-1e-6);
          expect(numbersIn(found).every(Number.isFinite)).toBe(true);
        },
      ),
    );
  });
  test('from the nearest slot taken to the farthest, any drive gets an answer or a named reason, never NaN', () => {
    const anyTeeth = fc.integer({ min: 6, max: 120 });
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(anyTeeth, anyTeeth, share, fc.boolean(), (ring, sprocket, far, atOnce) => {
        const nearMm = closestAxleMm({ ringTeeth: ring, sprocketTeeth: sprocket }) + 12.7;
        const frontMm = atOnce ? nearMm : nearMm + far * (980 - nearMm);
        const found = positions({ frontMm, rearMm: frontMm + 18 }, ring, sprocket, { halfLink: true });
        expect(found.stops.length).toBeGreaterThan(0);
        expect(numbersIn(found).every(Number.isFinite)).toBe(true);
      }),
    );
  });
  test('filing never takes a length away', () => {
    fc.assert(
      fc.property(teeth, travel, ({ ring, sprocket }, { frontMm, longMm }) => {
        const before = lengths(positions({ frontMm, rearMm: frontMm + longMm }, ring, sprocket));
        const after = lengths(
          positions({ frontMm, rearMm: frontMm + longMm }, ring, sprocket, { fileFrontMm: 5 }),
        );
        expect(after).toEqual(expect.arrayContaining(before));
      }),
    );
  });
});

test.each([
  ['swapped ends', 'slot-ends-swapped', { frontMm: 420, rearMm: 398 }, 36, 15, {}],
  ['an axle inside the ring', 'slot-too-near', { frontMm: 60, rearMm: 80 }, 36, 15, {}],
  ['a chain of a hundred metres', 'slot-too-far', { frontMm: 400, rearMm: 100_000 }, 36, 15, {}],
  ['half a tooth', 'teeth-out-of-range', { frontMm: 398, rearMm: 420 }, 36.5, 15, {}],
  ['a comma lost', 'teeth-out-of-range', { frontMm: 398, rearMm: 420 }, 36, 1500, {}],
  ['a shrinking chain', 'wear-out-of-range', { frontMm: 398, rearMm: 420 }, 36, 15, { wearPercent: -1 }],
  [
    'filing through the frame',
    'filing-out-of-range',
    { frontMm: 398, rearMm: 420 },
    36,
    15,
    { fileFrontMm: 80 },
  ],
  ['an empty field', 'not-a-number', { frontMm: Number.NaN, rearMm: 420 }, 36, 15, {}],
] as const)('%s: %s', (_, reason, where, ring, sprocket, question) =>
  expect(axlePositions(where, ring, sprocket, question)).toEqual({ ok: false, reason }),
);
