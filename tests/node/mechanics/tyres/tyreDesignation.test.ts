import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseTyreSize } from '../../../../src/mechanics/tyres/tyreDesignation.ts';
import { beadSeatNames, beadSeatsMm } from '../../../../src/standards/tyres/beadSeats.ts';

const read = (text: string) => parseTyreSize(text, beadSeatNames, beadSeatsMm);

describe('example of the docstring', () => {
  test('47-584', () =>
    expect(read('47-584')).toEqual({
      ...{ ok: true, widthMm: 47, beadSeatsMm: [584], read: 'iso-5775', unusual: false },
    }));
});

describe('ISO 5775 marking, width - bead seat (exact)', () => {
  test.each([
    ['50-406', 50, 406],
    ['54-406', 54, 406],
    ['40-622', 40, 622],
    [' 32 – 597 ', 32, 597],
    ['110-559', 110, 559],
  ])('%s', (text, widthMm, beadSeatMm) =>
    expect(read(text)).toMatchObject({ ok: true, widthMm, beadSeatsMm: [beadSeatMm], unusual: false }),
  );
});

describe('names', () => {
  test.each([
    ['26x1.5', 559, 38],
    ['26x1 1/2', 584, 38],
    ['27 x 1 1/4', 630, 32],
    ['28 × 1 1/2', 635, 38],
    ['20 x 1 1/8', 451, 29],
    ['28 x 1 5/8 x 1 3/8', 622, 35],
    ['32x2.25', 686, 57],
    ['24x1', 520, 25],
    ['12 1/2 x 2 1/4', 203, 57],
    ['700 x 28C', 622, 28],
    ['700x28c', 622, 28],
    ['29x2.0', 622, 51],
    ['27,5 x 2,2', 584, 56],
  ])('%s sits on %s (names partly from memory)', (text, beadSeatMm, widthMm) =>
    expect(read(text)).toEqual({
      ok: true,
      beadSeatsMm: [beadSeatMm],
      widthMm,
      read: 'name',
      unusual: false,
    }),
  );

  // Lists of a dimensions site, a workshop and a forum; 438 and 440 from memory.
  test.each([
    ['16 x 1⅜', [337, 340, 349]],
    ['20 x 1 3/8', [438, 440, 451]],
    ['26 x 1-1/4', [597, 599]],
    ['26"x13/8"', [590, 597]],
    ['24 x 1 3/8', [540, 541]],
    ['18x1 3/8', [390, 400]],
    ['26x1.25', [559, 599]],
  ])('%s is written on rims of %j: all are given, and the number on the rim decides', (text, beadSeatsMm) =>
    expect(read(text)).toMatchObject({ ok: true, beadSeatsMm }),
  );

  test('26 × 1.5 and 26 × 1 1/2 are two different rims (touring-club table)', () => {
    const decimal = read('26x1.5');
    const fraction = read('26x1 1/2');
    expect(decimal.ok && fraction.ok && decimal.beadSeatsMm[0] !== fraction.beadSeatsMm[0]).toBe(true);
  });

  test('26 in names at least six bead seats (encyclopedia)', () =>
    expect(
      new Set(beadSeatNames.filter((row) => row.wheel === '26').map((row) => row.beadSeatMm)).size,
    ).toBeGreaterThanOrEqual(6));
});

// Real diameters that were refused, and numbers of no list: the marking is exact, so it is taken.
describe('an ISO number is taken', () => {
  test.each([254, 340, 369, 400, 438, 440, 541, 686])('%d is listed', (seat) =>
    expect(read(`37-${seat}`)).toMatchObject({ ok: true, beadSeatsMm: [seat], unusual: false }),
  );
  test.each([585, 560, 410])('%d is taken and called unusual', (seat) =>
    expect(read(`47-${seat}`)).toMatchObject({ ok: true, beadSeatsMm: [seat], unusual: true }),
  );
});

describe('refusals', () => {
  test.each([
    ['', 'not-a-size'],
    ['47', 'not-a-size'],
    ['big', 'not-a-size'],
    ['26 x', 'not-a-size'],
    ['26x1.5C', 'not-a-size'],
    ['47-999', 'no-such-bead-seat'],
    ['47-100', 'no-such-bead-seat'],
    ['23x1.9', 'name-not-in-table'],
    ['700x28', 'name-not-in-table'],
    ['26x1 5/8', 'name-not-in-table'],
  ])('"%s": %s', (text, reason) => expect(read(text)).toEqual({ ok: false, reason }));
});

test('every marking of a known bead seat is read back (round trip)', () => {
  fc.assert(
    fc.property(fc.integer({ min: 18, max: 125 }), fc.constantFrom(...beadSeatsMm), (widthMm, beadSeatMm) => {
      expect(read(`${widthMm}-${beadSeatMm}`)).toEqual({
        ...{ ok: true, widthMm, beadSeatsMm: [beadSeatMm], read: 'iso-5775', unusual: false },
      });
    }),
  );
});

test('any text gets an answer, never a NaN', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[0-9 x./-]{0,14}$/)), (text) => {
      const size = read(text);
      if (size.ok) expect(size.widthMm).toBeGreaterThan(0);
    }),
  );
});

test('no name stands twice for one bead seat', () => {
  const keys = beadSeatNames.map((row) => `${row.wheel} x ${row.width} = ${row.beadSeatMm}`);
  expect(new Set(keys).size).toBe(keys.length);
});
