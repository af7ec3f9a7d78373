import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseTyreSize } from '../../../../src/mechanics/tyres/tyreDesignation.ts';
import { beadSeatNames, beadSeatsMm } from '../../../../src/standards/tyres/beadSeats.ts';

const read = (text: string) => parseTyreSize(text, beadSeatNames, beadSeatsMm);

describe('example of the docstring', () => {
  test('47-584', () =>
    expect(read('47-584')).toEqual({ ok: true, widthMm: 47, beadSeatMm: 584, read: 'iso-5775' }));
});

describe('ISO 5775 marking, width - bead seat (exact)', () => {
  test.each([
    ['50-406', 50, 406],
    ['54-406', 54, 406],
    ['40-622', 40, 622],
    [' 32 – 597 ', 32, 597],
    ['110-559', 110, 559],
  ])('%s', (text, widthMm, beadSeatMm) =>
    expect(read(text)).toMatchObject({ ok: true, widthMm, beadSeatMm }),
  );
});

describe('names', () => {
  test.each([
    ['26x1.5', 559, 38],
    ['26x1 1/2', 584, 38],
    ['26 x 1 3/8', 590, 35],
    ['26x1⅜', 590, 35],
    ['26"x13/8"', 590, 35],
    ['26 x 1-1/4', 597, 32],
    ['27 x 1 1/4', 630, 32],
    ['28 × 1 1/2', 635, 38],
    ['20 x 1 3/8', 451, 35],
    ['24x1', 520, 25],
    ['12 1/2 x 2 1/4', 203, 57],
    ['700 x 28C', 622, 28],
    ['700x28c', 622, 28],
    ['29x2.0', 622, 51],
    ['27,5 x 2,2', 584, 56],
  ])('%s sits on %s (names partly from memory)', (text, beadSeatMm, widthMm) =>
    expect(read(text)).toEqual({ ok: true, beadSeatMm, widthMm, read: 'name' }),
  );

  test('26 × 1.5 and 26 × 1 1/2 are two different rims (touring-club table)', () => {
    const decimal = read('26x1.5');
    const fraction = read('26x1 1/2');
    expect(decimal.ok && fraction.ok && decimal.beadSeatMm !== fraction.beadSeatMm).toBe(true);
  });

  test('26 in names at least four bead seats here (encyclopedia: at least six exist)', () =>
    expect(new Set(beadSeatNames.filter((row) => row.wheel === '26').map((row) => row.beadSeatMm)).size).toBe(
      4,
    ));
});

describe('refusals', () => {
  test.each([
    ['', 'not-a-size'],
    ['47', 'not-a-size'],
    ['big', 'not-a-size'],
    ['26 x', 'not-a-size'],
    ['26x1.5C', 'not-a-size'],
    ['47-585', 'no-such-bead-seat'],
    ['23x1.9', 'name-not-in-table'],
    ['700x28', 'name-not-in-table'],
    ['26x1 5/8', 'name-not-in-table'],
  ])('"%s": %s', (text, reason) => expect(read(text)).toEqual({ ok: false, reason }));
});

test('every marking of a known bead seat is read back (round trip)', () => {
  fc.assert(
    fc.property(fc.integer({ min: 18, max: 125 }), fc.constantFrom(...beadSeatsMm), (widthMm, beadSeatMm) => {
      expect(read(`${widthMm}-${beadSeatMm}`)).toEqual({ ok: true, widthMm, beadSeatMm, read: 'iso-5775' });
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

test('no name stands twice', () => {
  const keys = beadSeatNames.map((row) => `${row.wheel} x ${row.width}`);
  expect(new Set(keys).size).toBe(keys.length);
});
